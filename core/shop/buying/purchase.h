#pragma once

#include "core/foresight/parallel.h"
#include "core/shop/buying/cases.h"
#include "core/shop/expected.h"

namespace riband::shop {

/// What one belt of the outlook should be bought, and why (its advice).
struct PurchaseLine {
    std::size_t belt; ///< in the outlook
    foresight::BuyingAdvice advice;
    Extent width; ///< of the sleeves that are best bought
    Money each;   ///< of one; 0: not known
    int leadDays;
    int wanted;  ///< sleeves that should be bought
    int sleeves; ///< that are bought for the budget

    bool costKnown() const { return each > Money::minor(0); }
    Money cost() const { return each * sleeves; }
};

struct PurchaseList {
    std::vector<PurchaseLine> lines; ///< of every belt, in the order of the outlook
    Money wanted = Money::minor(0);  ///< what all that should be bought costs
    Money cost = Money::minor(0);    ///< what is bought
    std::optional<Money> budget;
    bool proven = true; ///< no basket for the budget keeps more sales
    /// Margin of sales that would be lost until the delivery after next and are kept: by this basket, and at
    /// most by any (minor units, expected).
    double keeps = 0, keepsAtMost = 0;
};

/// Weighs every belt, on all cores. Sleeves whose cost is not known can't be set against a budget: with one
/// they are not bought. Throws foresight::Stopped.
PurchaseList purchaseList(const BuyingOutlook& outlook, std::optional<Money> budget,
                          const foresight::Work& work = {});

/// The sleeves of the list as deliveries that are expected, one for each day on which they can be here.
/// Pure.
std::vector<Expectation> expectationsOf(const PurchaseList& list, const BuyingOutlook& outlook);

/// What a unit of width earns that is sold: price less what its rubber costs; where no price is known, as
/// much again as the rubber (docs/buying.md).
double marginOf(const BuyingBelt& belt, const foresight::BuyingAdvice& advice);

} // namespace riband::shop
