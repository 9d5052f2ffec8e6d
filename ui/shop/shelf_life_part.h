#pragma once

#include "ui/desk/session.h"
#include "ui/shop/settings_part.h"

#include <vector>

class QSpinBox;

namespace riband::ui {

/// How many years a body may lie, and how many an inspection adds.
class ShelfLifePart final : public SettingsPart {
    Q_OBJECT
public:
    explicit ShelfLifePart(Session& session, QWidget* parent = nullptr);
    QString title() const override { return tr("Shelf life"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;
    void keep(const shop::Shop& shop) const override;

private:
    struct Fields {
        const char* body;
        QSpinBox *years, *extension;
    };
    Session& session_;
    std::vector<Fields> fields_;
};

} // namespace riband::ui
