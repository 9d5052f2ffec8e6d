#pragma once

#include "ui/shop/settings_part.h"

#include <optional>

class QFormLayout;

namespace riband::ui {

class Entry;

/// What every mounting loses, of toothed belts in millimetres, of ribbed ones in ribs.
class RulesPart final : public SettingsPart {
    Q_OBJECT
public:
    explicit RulesPart(QWidget* parent = nullptr);
    QString title() const override { return tr("Cutting rules"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;

private:
    struct Fields {
        Entry *trim, *kerf, *end, *stub;
    };
    Fields addFields(QFormLayout& form, Unit unit);
    static void show(const Fields& fields, const cutting::Rules& rules);
    static std::optional<cutting::Rules> read(const Fields& fields, Unit unit);
    Fields toothed_{}, ribbed_{};
};

} // namespace riband::ui
