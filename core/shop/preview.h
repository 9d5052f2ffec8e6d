#pragma once

#include "core/shop/past.h"

#include <string>

namespace riband::shop {

/// What other figures would come to for a belt; read from the store at once.
struct Trial {
    std::string belt; ///< designation
    Past now, then;   ///< with the figures as they are, and as proposed
    store::PreCut preCutNow, preCutThen;
};
/// Other settings, for the shop's busiest belt. Nothing while no belt was ever ordered, or the busiest can't
/// be weighed.
std::optional<Trial> trialOf(const Shop& shop, const store::ShopSettings& proposed);
/// Another entry of a belt. Nothing while it was never ordered, or can't be weighed.
std::optional<Trial> trialOf(const Shop& shop, const store::StockedBelt& proposed);

/// Orders of a trial, over all of its runs.
inline constexpr int trialOrders = 800;

/// Of invented runs of orders as they are to be expected of the belt.
struct TrialFigures {
    double waste = 0; ///< % of the rubber used up, the mean of the runs
    double mountingsPerOrder = 0;
    double remnants = 0, ready = 0; ///< that lie there, on average
    int orders = 0;
};
struct TrialOutcome {
    TrialFigures now, then;
    double lessWaste = 0; ///< points of waste that the proposed saves, the mean of the runs
    double margin = 0;    ///< half of its 95 % interval (Student's t over the runs)
    /// The runs agree on which of both wastes less.
    bool tells() const;
};
/// Plays the same orders by both, in four runs that each begin with an empty rack. Some seconds; `goOn` is
/// told the share that is done and may stop it. Pure.
std::optional<TrialOutcome> tryOut(const Trial& trial, const std::function<bool(double)>& goOn);

} // namespace riband::shop
