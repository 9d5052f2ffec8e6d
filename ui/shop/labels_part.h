#pragma once

#include "ui/shop/settings_part.h"

class QComboBox;
class QSpinBox;

namespace riband::ui {

class Entry;

/// What labels are printed on: a roll, or sheets with so many of them, and how large they are.
class LabelsPart final : public SettingsPart {
    Q_OBJECT
public:
    explicit LabelsPart(QWidget* parent = nullptr);
    QString title() const override { return tr("Labels"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;
    QString wrong() const override;

private:
    void follow();
    QComboBox* stock_;
    Entry *width_, *height_, *left_, *top_, *across_, *down_;
    QSpinBox *columns_, *rows_;
    mutable QString misfit_; ///< what was said last to be too much for the paper
};

} // namespace riband::ui
