#pragma once

#include "core/measure/money.h"

#include <cstdint>
#include <vector>

namespace riband::shop {

/// Spreads an amount over widths (none negative, not all nothing) in proportion, no cent lost: each running
/// sum is rounded, and a share is the difference of two of them, so every share is within one minor unit of
/// the exact one and equal widths side by side differ by at most one. Throws std::invalid_argument.
std::vector<Money> spread(Money amount, const std::vector<std::int64_t>& widths);

} // namespace riband::shop
