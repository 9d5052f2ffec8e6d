#include "ui/review/period_bar.h"

#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/words.h"

#include <QAction>
#include <QComboBox>
#include <QDate>
#include <QHBoxLayout>
#include <QLocale>

namespace riband::ui {

namespace {

using std::chrono::days;
using std::chrono::months;
using std::chrono::year_month;
using std::chrono::year_month_day;

constexpr int spanCount = 5, NameWidth = 300;

QDate qtDate(Date date) { return QDate::fromString(QString::fromStdString(printDate(date)), Qt::ISODate); }

Date monthBegin(Date day, unsigned of) {
    const year_month_day date{day};
    const unsigned month = (static_cast<unsigned>(date.month()) - 1) / of * of + 1;
    return Date{date.year() / std::chrono::month{month} / 1};
}

Date plusMonths(Date first, int count) {
    const year_month_day date{first};
    return Date{(year_month{date.year(), date.month()} + months{count}) / 1};
}

} // namespace

PeriodBar::PeriodBar(Date today, QWidget* parent)
    : QWidget{parent}, today_{today}, first_{monthBegin(today, 1)}, name_{label({}, "head")},
      spans_{new QComboBox} {
    spans_->addItems({tr("Day"), tr("Week"), tr("Month"), tr("Quarter"), tr("Year")});
    spans_->setCurrentIndex(static_cast<int>(span_));
    spans_->setAccessibleName(tr("How long a period"));
    buildActions();
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2 * step);
    name_->setMinimumWidth(NameWidth);
    row->addWidget(name_);
    row->addWidget(new KeyButton{acts_[0]});
    row->addWidget(new KeyButton{acts_[1]});
    row->addWidget(spans_);
    row->addWidget(new KeyButton{acts_[2]});
    row->addStretch();
    connect(spans_, &QComboBox::currentIndexChanged, this,
            [this](int index) { setSpan(static_cast<Span>(index)); });
    showName();
}

void PeriodBar::buildActions() {
    const auto act = [this](const QString& name, const QKeySequence& key, const std::function<void()>& does) {
        auto* action = new QAction{name, this};
        action->setShortcut(key);
        connect(action, &QAction::triggered, this, does);
        acts_ << action;
    };
    act(tr("Earlier"), Qt::ALT | Qt::Key_Left, [this] { stepBy(-1); });
    act(tr("Later"), Qt::ALT | Qt::Key_Right, [this] { stepBy(1); });
    act(tr("Longer"), Qt::Key_F6,
        [this] { spans_->setCurrentIndex((spans_->currentIndex() + 1) % spanCount); });
}

Date PeriodBar::beginOf(Date day) const {
    switch (span_) {
    case Span::Day:
        return day;
    case Span::Week:
        return day - (std::chrono::weekday{day} - std::chrono::Monday);
    case Span::Month:
        return monthBegin(day, 1);
    case Span::Quarter:
        return monthBegin(day, 3);
    case Span::Year:
        break;
    }
    return monthBegin(day, 12);
}

Date PeriodBar::next(Date first, int spans) const {
    switch (span_) {
    case Span::Day:
        return first + days{spans};
    case Span::Week:
        return first + days{7 * spans};
    case Span::Month:
        return plusMonths(first, spans);
    case Span::Quarter:
        return plusMonths(first, 3 * spans);
    case Span::Year:
        break;
    }
    return plusMonths(first, 12 * spans);
}

shop::Period PeriodBar::period() const {
    return shop::soFar({Moment{first_}, Moment{next(first_, 1)}}, today_);
}

void PeriodBar::setSpan(Span span) {
    const Date last =
        std::min(today_, next(first_, 1) - days{1}); // the newest day that was looked at stays in
    span_ = span;
    first_ = beginOf(last);
    const QSignalBlocker quiet{spans_};
    spans_->setCurrentIndex(static_cast<int>(span));
    showName();
    emit changed();
}

void PeriodBar::stepBy(int spans) {
    const Date wanted = next(first_, spans);
    if (wanted > today_) return;
    first_ = wanted;
    showName();
    emit changed();
}

QString PeriodBar::spanName() const {
    const QDate first = qtDate(first_);
    switch (span_) {
    case Span::Day:
        return QLocale{}.toString(first, QLocale::LongFormat);
    case Span::Week:
        return tr("Week from %1").arg(shown(first_));
    case Span::Month:
        return QLocale{}.toString(first, QStringLiteral("MMMM yyyy"));
    case Span::Quarter:
        return tr("Quarter %1 of %2").arg((first.month() + 2) / 3).arg(first.year());
    case Span::Year:
        break;
    }
    return QString::number(first.year());
}

void PeriodBar::showName() {
    name_->setText(shop::isRunning(period(), today_) ? tr("%1, so far").arg(spanName()) : spanName());
    acts_[1]->setEnabled(next(first_, 1) <= today_);
}

} // namespace riband::ui
