#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// What every verb demands of what a person says; each throws the Refusal that fits.

[[noreturn]] void refuse(Refusal::Why why, const std::string& detail);

/// An extent to cut, buy or throw away: of the belt's unit, more than nothing, at most 100 m or 40 000 ribs.
void demandExtent(Unit unit, Extent extent);
/// 1 to 10 000 belts or sleeves at a time.
void demandQuantity(std::int64_t quantity);
/// Belts of a width: each as above, together at most 10 km, so that no price and no plan runs over.
void demandBelts(Unit unit, Extent extent, std::int64_t quantity);

} // namespace riband::shop
