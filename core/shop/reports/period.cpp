#include "core/shop/reports/waste.h"

#include <algorithm>

namespace riband::shop {

namespace {

using std::chrono::months;
using std::chrono::year_month_day;
using std::chrono::years;

/// The same day so many months earlier, the last of the month where there is none.
Date back(Date day, months count) {
    year_month_day date{day};
    date -= count;
    return date.ok() ? Date{date} : Date{date.year() / date.month() / std::chrono::last};
}

Moment back(Moment moment, months count) {
    const Date day = dayOf(moment);
    return Moment{back(day, count)} + (moment - Moment{day});
}

bool beginsMonth(Moment moment) {
    const Date day = dayOf(moment);
    return Moment{day} == moment && year_month_day{day}.day() == std::chrono::day{1};
}

/// Whole months between two that begin one.
months monthsOf(const Period& period) {
    const year_month_day first{dayOf(period.from)}, last{dayOf(period.until)};
    return (last.year() / last.month()) - (first.year() / first.month());
}

} // namespace

Period before(const Period& period) {
    if (beginsMonth(period.from) && beginsMonth(period.until))
        return {back(period.from, monthsOf(period)), period.from};
    return {period.from - (period.until - period.from), period.from};
}

Period yearBefore(const Period& period) {
    return {back(period.from, months{12}), back(period.until, months{12})};
}

Period soFar(const Period& period, Date today) {
    const Moment tomorrow{today + std::chrono::days{1}};
    return period.from < tomorrow ? Period{period.from, std::min(period.until, tomorrow)} : period;
}

bool isRunning(const Period& period, Date today) { return period.until > Moment{today}; }

} // namespace riband::shop
