#pragma once

#include "core/shop/reports/both_ways.h"

#include <QString>

namespace riband::ui {

/// How often what was suggested was not done: "8 of 132 suggestions were not followed: other pieces 3 times,
/// belts for the shelf refused 5 times of 40."
QString followedWords(const shop::OverrideReport& report);
/// What doing otherwise came to when it was replayed: cost, saved, or no more than chance. Money for those
/// who may see it, else width.
QString verdictOf(const shop::OverrideReport& report, const shop::BothWays& played, const Currency& currency,
                  shop::Sees sees);
/// "33.333 mm ± 12.1 mm, 20.00 ± 7.00 EUR", without its sign; money for those who may see it.
QString costOf(const shop::BothWaysRow& row, const Currency& currency, shop::Sees sees);

} // namespace riband::ui
