#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

/// Why this plan, compared with the smallest piece that fits; always with the figure. Pure.
Reason reasonOf(const cutting::Problem& problem, const cutting::Plan& plan);

/// The rest goes back to the rack: it can be held again, and is good for something. Pure.
bool goesBack(const cutting::Problem& problem, Extent left);

/// With the belts for the shelf, and what the smaller piece is kept for. `learned`: nothing without a worth
/// table. `all`: the ways that were weighed, this one among them. Pure.
Reason reasonOf(const Outlook& outlook, const Future* learned, const Way& way, const std::vector<Way>& all);

} // namespace riband::shop
