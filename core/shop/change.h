#pragma once

#include "core/shop/order.h"
#include "core/shop/queries.h"

namespace riband::shop {

/// No belt of it can be wider: the widest sleeve that is made, or that lies here. None: not known.
Extent widestBelt(const Shop& shop, store::BeltId belt);

/// What `change` would do; nothing is done. Refuses as that does. A whole sleeve that nobody was to cut is
/// opened only where what is begun gives not all of its belt.
struct ChangePlan {
    std::vector<BenchMounting> mountings;  ///< of the ticket that would be made
    std::vector<store::StockPiece> opened; ///< whole sleeves among them that nobody was to cut so far
};
ChangePlan planChange(const Shop& shop, store::LineId line, Extent extent, std::int64_t quantity);

} // namespace riband::shop
