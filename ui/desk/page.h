#pragma once

#include "core/store/people.h"

#include <QString>
#include <QWidget>

namespace riband::ui {

/// One card of the window.
class Page : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;
    virtual QString title() const = 0;
    /// Its card is there for who has this role or one above it.
    virtual store::Role least() const { return store::Role::Clerk; }
    /// What the page is for, two or three sentences; the keys are listed from its actions.
    virtual QString help() const = 0;
    /// The page came to the front, or what it shows was changed elsewhere.
    virtual void refresh() = 0;
    /// Something typed while no text field had the focus; a page without a field for it ignores it.
    virtual void typed(const QString&) {}
    /// There is a field for a belt that may be filled now: a belt found by its measures goes there.
    virtual bool wantsBelt() const { return false; }
    virtual void takeBelt(const QString&) {}
    /// What waits on this page, shown on its tab; 0 shows nothing.
    virtual int waiting() const { return 0; }

signals:
    void waitingChanged();
};

} // namespace riband::ui
