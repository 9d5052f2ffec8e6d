#pragma once

#include "core/foresight/buying/advice.h"
#include "core/shop/shop.h"

namespace riband::shop {

/// As far back as orders are read, from the end of today on.
constexpr std::chrono::days longestRecord{3 * 365};

/// A belt with all that deciding about its sleeves needs.
struct BuyingBelt {
    store::StockedBelt belt;
    foresight::BuyingCase buying; ///< its sleeves are those that are here and those that are expected
    int expected;                 ///< of them still on their way
    int here() const { return buying.sleeves - expected; }
    double millimetres; ///< of one unit of its widths
};

/// Everything that the purchase list and a replay need, read from the store at once; thinking about it needs
/// no store and may be done by another thread.
struct BuyingOutlook {
    std::vector<BuyingBelt> belts; ///< by designation; those whose sleeve is wide enough to be cut
    foresight::BuyingTerms terms;
    store::ShopSettings settings;
    Date today;
    int days = 0; ///< that orders are known of, three years at most
};

/// Demand: the lines of orders that are neither parked, quoted nor cancelled, of the last three years.
/// Supply: whole sleeves, here or expected from a supplier, and of opened pieces what is not promised; ready
/// belts are left out, they are few. `since`: of no order before, which is read more quickly; but a belt that
/// lists no width is known by all that was asked of it.
BuyingOutlook lookAtBuying(const Shop& shop, std::optional<Moment> since = std::nullopt);

} // namespace riband::shop
