#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// What is done with a piece on the rack.

/// What open tickets leave of a piece to be scrapped or divided off.
struct Spare {
    Extent most;         ///< none if they need all of it, or nothing of it may be taken apart
    std::string tickets; ///< "T7K-2 T7L-0", "" none needs it
};
Spare spareOf(const Shop& shop, const store::StockPiece& piece);

/// Throws width away with a reason, all of a piece or a part of it, and what it weighed if that was told;
/// refuses what open tickets need.
store::MovementId scrap(const Shop& shop, store::PieceId piece, Extent extent, store::ScrapReason reason,
                        const std::string& note, std::optional<std::int64_t> grams = {});

/// Puts a piece at another place; "" is nowhere.
void move(const Shop& shop, store::PieceId piece, const std::string& place);

/// One piece that was scanned, and the place that was scanned behind it.
struct Step {
    std::string piece; ///< code
    std::string place;
};
/// Many in a row, all or nothing. Refuses NoSuchPiece and PieceGone (the code is the detail).
void moveAll(const Shop& shop, const std::vector<Step>& steps);

/// Divides a sleeve or remnant into two that lie there: the new one is so wide and has a code of its own.
/// Nothing is trimmed: each pays its trim when it is put on the cutter. Refuses what open tickets need.
store::PieceId split(const Shop& shop, store::PieceId piece, Extent apart, const std::string& place);

} // namespace riband::shop
