#pragma once

#include "core/foresight/buying/need.h"

namespace riband::foresight {

/// What selling a belt from sleeves of one width takes in the long run, played with drawn orders.
struct Consumption {
    double usedPerSold = 1; ///< width used up for each width sold: trim, ends, what aged
    double mountingsPerOrder = 1;
    double remnantsHeld = 0;     ///< width, on average
    double sold = 0, used = 0;   ///< width of the run
    std::vector<Remnant> rack{}; ///< at its end: a rack as it usually is

    double wasteShare() const { return 1 - 1 / usedPerSold; }
};

/// Plays up to `mostOrders` orders, twenty years at most. Two widths that are compared meet the same orders
/// if they get the same dice.
inline constexpr int mostOrders = 200;
Consumption consumptionOf(const Setting& setting, const Futures& futures, Dice dice);

} // namespace riband::foresight
