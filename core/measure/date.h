#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace riband {

/// A calendar day.
using Date = std::chrono::sys_days;
/// A point in time (UTC), to the millisecond. Handed in from outside; the core has no clock.
using Moment = std::chrono::sys_time<std::chrono::milliseconds>;

/// Reads 2026-03-31, 31.3.2026 and 31/3/2026; nothing if it is no such day. Years 1970 to 9999.
std::optional<Date> readDate(std::string_view text);
/// 2026-03-31
std::string printDate(Date date);
/// Reads what printMoment prints; nothing if it is anything else.
std::optional<Moment> readMoment(std::string_view text);
/// 2026-03-31T14:05:09.250Z
std::string printMoment(Moment moment);
/// The day of a moment (UTC).
Date dayOf(Moment moment);

} // namespace riband
