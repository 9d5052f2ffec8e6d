#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// A new ready belt that was cut from this piece: of its batch and as old as it; empty until it is booked.
store::PieceId addReadyFrom(const Shop& shop, const store::StockPiece& piece);

} // namespace riband::shop
