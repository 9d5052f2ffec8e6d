#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// The price of one line: width price x width x belts, less the quantity step, cutting charge a belt, the
/// least price of a line, tax, and the rounding of the total. Each amount is rounded once, halves away from
/// zero.
store::LinePrice priceOf(const store::PriceRules& rules, WidthPrice price, Extent extent,
                         std::int64_t quantity);

/// Sums of lines.
store::LinePrice sumOf(const std::vector<store::LinePrice>& lines);

} // namespace riband::shop
