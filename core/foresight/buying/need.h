#pragma once

#include "core/foresight/buying/futures.h"

namespace riband::foresight {

/// How many new sleeves some days to come open: trim, ends and what can't be used again are in it, since each
/// future is cut out by the rule of the counter, from the remnants that are there.
struct Need {
    std::vector<double> enough; ///< [n]: share of the futures in which n sleeves were enough; the last is 1
    std::vector<double> lost;   ///< [n]: width that could not be sold with n sleeves, expected; the last is 0

    /// Least number of sleeves that is enough in this share of the futures.
    int sleevesFor(double service) const;
    double enoughWith(int sleeves) const;
    double lostWith(int sleeves) const;
};

struct Remnant {
    Size size;
    double opened; ///< day, today is 0: none is above 0
};

/// Plays `runs` futures of `days`. The same dice, the same need.
Need needOf(const Setting& setting, const std::vector<Remnant>& remnants, const Futures& futures, double days,
            int runs, Dice dice);

} // namespace riband::foresight
