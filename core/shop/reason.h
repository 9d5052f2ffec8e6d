#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

/// Why this plan, compared with the smallest piece that fits; always with the figure. Pure.
Reason reasonOf(const cutting::Problem& problem, const cutting::Plan& plan);

} // namespace riband::shop
