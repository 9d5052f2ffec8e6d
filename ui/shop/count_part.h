#pragma once

#include "core/measure/money.h"
#include "ui/shop/settings_part.h"

class QFormLayout;
class QSpinBox;

namespace riband::ui {

class Entry;

/// How people count: what each way of measuring can tell, what needs approval, how much is counted a day.
class CountPart final : public SettingsPart {
    Q_OBJECT
public:
    explicit CountPart(QWidget* parent = nullptr);
    QString title() const override { return tr("Counting"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;

private:
    void addNumber(QFormLayout& form, const QString& name, QSpinBox* field, int least, int most);

    Currency currency_{"EUR", 2};
    Entry *calliper_, *tape_, *eye_, *approve_;
    QSpinBox *minutes_, *daysA_, *daysB_, *daysC_;
};

} // namespace riband::ui
