#pragma once

#include "ui/shop/settings_part.h"

class QComboBox;
class QLineEdit;
class QPlainTextEdit;

namespace riband::ui {

/// What stands on the papers: name, address, and the paper itself.
class NamePart final : public SettingsPart {
    Q_OBJECT
public:
    explicit NamePart(QWidget* parent = nullptr);
    QString title() const override { return tr("Name and papers"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;

private:
    QLineEdit* name_;
    QPlainTextEdit* address_;
    QComboBox* paper_;
};

} // namespace riband::ui
