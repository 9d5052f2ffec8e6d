#pragma once

#include <cstdint>
#include <vector>

namespace riband::foresight {

/// A belt that should be bought: worth[n] is what n sleeves of it bring, worth[0] is 0 (minor units,
/// expected).
struct Wanted {
    std::int64_t cost; ///< of a sleeve, minor units; above 0
    std::vector<double> worth;
};

struct Basket {
    std::vector<int> sleeves; ///< of each wanted belt
    std::int64_t cost = 0;
    double worth = 0;
    double bound = 0;    ///< no basket for the budget is worth more
    bool proven = false; ///< this one is the best
};

/// The best basket for a budget: a knapsack with a choice of how many of each, solved exactly by GLPK (branch
/// and cut) unless `milliseconds` run out. The basket is recomputed in whole numbers, so it never costs more
/// than the budget. A negative budget buys nothing.
Basket bestBasket(const std::vector<Wanted>& wanted, std::int64_t budget, int milliseconds = 2000);

} // namespace riband::foresight
