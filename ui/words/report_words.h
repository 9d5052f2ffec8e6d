#pragma once

#include "core/measure/extent.h"
#include "core/measure/money.h"
#include "core/shop/reports/waste.h"
#include "core/store/takings.h"

#include <QString>

#include <string>

namespace riband::ui {

/// The head of a report's column on the screen, for its name in files.
QString columnWord(const std::string& name);
/// What a group without a name is, by the kind of groups: "by hand" among cutters.
QString namelessGroup(const std::string& kind);
/// A fixed word of a report's field on the screen ("V-ribbed", "dead", "cash"); others stay as they are.
QString groupWord(const std::string& field);
QString say(store::Payment kind);
/// A sum of a report, to the micrometre and the cent: from ten thousand on in groups of three digits (ISO
/// 80000-1, 2009, 7.3.1, with a small space), minus with a true minus sign. Not for fields that are read
/// back.
QString shownSum(Unit unit, std::int64_t count);
QString shownSum(Money money, const Currency& currency);
/// "2026-11-01 to 2026-11-30"
QString shownDays(const shop::Period& period);
/// The same, with "so far" where today lies in it.
QString shownPeriod(const shop::Period& period, Date today);
/// "4.3 %" of 0.043
QString shownPercent(double share);
/// "93.1"
QString shownTenths(double value);
/// With so many decimals, from ten thousand on in groups as a sum; never "−0.0".
QString shownNumber(double value, int places);

} // namespace riband::ui
