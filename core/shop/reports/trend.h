#pragma once

#include "core/shop/reports/waste.h"

namespace riband::shop {

/// One month of a trend: the share of what was used up that was lost, and between which shares it would lie
/// 19 months in 20 if only chance moved it.
struct TrendPoint {
    Period month;
    store::Scatter scatter;
    std::optional<double> lost; ///< 0.04 is 4 %; nothing where nothing was used up
    double low = 0, high = 0;
    /// Of a month with enough movements to tell.
    bool hasBand() const { return low > 0 || high < 1; }
    bool news() const { return lost && (*lost < low || *lost > high); }
};

/// The band about the months' common share. Each movement that used something up is taken for a draw from one
/// and the same shop; the share is a ratio of two sums, so its variance is that of the residuals lost - share
/// x used of all movements, over the square of what the month used (the ratio estimator: Cochran, Sampling
/// Techniques, 3rd ed., 1977, §6.4, from memory). Fewer than eight movements in a month: the band is
/// everything.
void addBands(std::vector<TrendPoint>& points);

/// The whole months up to the one that `until` ends or lies in, oldest first; of both units, read at once.
struct Trends {
    std::vector<TrendPoint> toothed, ribbed;
    const std::vector<TrendPoint>& of(Unit unit) const { return unit == Unit::Rib ? ribbed : toothed; }
};
Trends trends(const Shop& shop, Moment until, int months);

} // namespace riband::shop
