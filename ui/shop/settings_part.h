#pragma once

#include "core/store/settings.h"

#include <QWidget>

namespace riband::ui {

/// A part of the shop's settings on the screen.
class SettingsPart : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;
    virtual QString title() const = 0;
    virtual void show(const store::ShopSettings& settings) = 0;
    /// Puts what is typed into `settings`; false, and nothing is put, if a field is wrong.
    virtual bool write(store::ShopSettings& settings) const = 0;

signals:
    void edited();
};

} // namespace riband::ui
