#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// Takes `belts` of a line's cut belts from the order and puts them on the shelf, inside the caller's
/// transaction: a belt that came from the shelf goes back to its own piece, and first; one that was cut
/// becomes a new ready belt. Width and cost go with it. Gives the pieces; the line's count of cut belts is
/// less by as many.
std::vector<store::PieceId> returnToShelf(const Shop& shop, const store::OrderLine& line, std::int64_t belts);

} // namespace riband::shop
