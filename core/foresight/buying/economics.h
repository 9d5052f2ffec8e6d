#pragma once

namespace riband::foresight {

/// Sleeves bought at once that cost least a year: orders x order cost + half the lot x what a sleeve costs to
/// hold (the economic order quantity of Harris, Factory 10, 1913, in whole sleeves). At least 1, at most
/// `most`. Money in minor units, expected.
int economicLot(double sleevesPerYear, double orderCost, double holdingOfSleeve, int most);

/// A year of one belt with sleeves of one width; money in minor units, expected.
struct YearlyCost {
    double rubber = 0;   ///< sleeves used up
    double holding = 0;  ///< interest on sleeves and remnants that lie there
    double ordering = 0; ///< lines of purchase orders
    double cutting = 0;  ///< labour of mountings, as the width that it is worth
    double total() const { return rubber + holding + ordering + cutting; }
};

} // namespace riband::foresight
