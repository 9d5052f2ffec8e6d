#pragma once

#include "core/shop/reports/table.h"

#include <QWidget>

namespace riband::ui {

/// One report of the Review page. It reads in a worker when it is shown (`ui/desk/reading.h`), and keeps
/// what it shows as a table, too, which the page can turn to and save.
class ReviewPart : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;
    virtual QString title() const = 0;
    /// Came to the front, the period was changed, or the shop was.
    virtual void show(const shop::Period& period) = 0;
    /// Cost and margin are the owner's alone: a part that has nothing else is not there for others.
    virtual bool onlyForOwner() const { return false; }
    /// Another person acts: what was read for the one before is shown no more.
    virtual void forget() {}
    /// Turns from the picture to the figures and back, where there is a picture.
    virtual bool hasPicture() const { return false; }
    virtual void showFigures(bool) {}
    /// Whether it tells of the period that is chosen; else of today.
    virtual bool isOfPeriod() const { return false; }
    /// The figures for a CSV file; no columns while there is nothing.
    virtual shop::ReportTable table() const { return {}; }
    virtual QString fileName() const = 0; ///< of the CSV, without its ending: "waste"
    /// Whether what was asked for stands on the screen.
    virtual bool settled() const { return true; }
    using QWidget::show;
};

} // namespace riband::ui
