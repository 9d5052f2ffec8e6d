#pragma once

#include "core/foresight/buying/advice.h"

namespace riband::foresight {

/// A sleeve of 100 mm; 2.5 mm trim, no kerf, 5 mm end, 15 mm stub; calendar days; nothing ages.
inline Setting hundredMillimetres(std::vector<Size> listed) {
    Setting setting;
    setting.sleeve = 100000;
    setting.listed = std::move(listed);
    setting.daysPerYear = 365;
    setting.ageLimitDays = 365 * 8;
    return setting;
}

/// The same order every so many days.
inline Record everyDays(double step, double days, std::vector<Line> lines) {
    Record record{.orders = {}, .days = days};
    for (double day = step / 2; day < days; day += step)
        record.orders.push_back({day, lines});
    return record;
}

/// A forecast that is given, of width a week.
inline Forecast given(double aWeek) {
    Forecast forecast;
    forecast.method = Method::Mean;
    forecast.expected = aWeek;
    return forecast;
}

} // namespace riband::foresight
