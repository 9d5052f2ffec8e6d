#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// The price of one line (docs/prices.md): width price x width x belts, less the quantity step, cutting
/// charge a belt, what the least price of a line adds, tax, and the rounding of the total. Each amount is
/// rounded once, halves away from zero. What the rounding of the total adds is total - net - tax. With prices
/// that include tax, the first four amounts include it and net + tax is the total.
store::LinePrice priceOf(const store::PriceRules& rules, WidthPrice price, Extent extent,
                         std::int64_t quantity);

/// Sums of lines.
store::LinePrice sumOf(const std::vector<store::LinePrice>& lines);

} // namespace riband::shop
