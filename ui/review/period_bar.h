#pragma once

#include "core/shop/reports/waste.h"

#include <QWidget>

#include <optional>

class QAction;
class QComboBox;
class QLabel;

namespace riband::ui {

/// The days that a review is about: a day, week, month, quarter or year that one steps through by keys.
class PeriodBar final : public QWidget {
    Q_OBJECT
public:
    enum class Span { Day, Week, Month, Quarter, Year };
    explicit PeriodBar(Date today, QWidget* parent = nullptr);

    shop::Period period() const; ///< up to today
    Date firstDay() const { return first_; }
    void setSpan(Span span);
    void stepBy(int spans); ///< never past the span of today
    /// Two actions to step and one for the next span, with their keys.
    const QList<QAction*>& acts() const { return acts_; }

signals:
    void changed();

private:
    void buildActions();
    QString spanName() const;
    void showName();
    Date next(Date first, int spans) const;
    Date beginOf(Date day) const;

    Span span_ = Span::Month;
    Date today_, first_;
    QLabel* name_;
    QComboBox* spans_;
    QList<QAction*> acts_;
};

} // namespace riband::ui
