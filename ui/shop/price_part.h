#pragma once

#include "ui/desk/session.h"
#include "ui/shop/settings_part.h"

#include <optional>

class QCheckBox;
class QSpinBox;

namespace riband::ui {

class Entry;

/// How a line is priced, over and above the belt's own price for width.
class PricePart final : public SettingsPart {
    Q_OBJECT
public:
    explicit PricePart(Session& session, QWidget* parent = nullptr);
    QString title() const override { return tr("Prices"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;

private:
    void buildView();
    bool readsMoney(const std::string& typed) const;
    /// What is typed, if the shop may go over to it.
    std::optional<Currency> typedCurrency() const;
    QString wrongCurrency(const std::string& typed) const;
    Session& session_;
    Currency kept_{"EUR", 2};
    bool hasAmounts_ = true; ///< the decimals stay then
    Entry *currency_, *charge_, *minimum_, *tax_, *steps_;
    QSpinBox* round_;
    QCheckBox* included_;
};

/// "5: 2.5, 10: 5": from 5 belts 2.5 % off, from 10 belts 5 %. Nothing if it is no such list, or not rising.
std::optional<std::vector<store::QuantityStep>> readSteps(const std::string& typed);
std::string printSteps(const std::vector<store::QuantityStep>& steps);

} // namespace riband::ui
