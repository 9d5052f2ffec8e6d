#pragma once

#include "core/shop/shop.h"

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
    /// Writes what it has beside those settings; refuses as a verb of the shop does.
    virtual void keep(const shop::Shop&) const {}
    /// Why `write` gave false, where that is not one field's fault; else "".
    virtual QString wrong() const { return {}; }

signals:
    void edited();
};

} // namespace riband::ui
