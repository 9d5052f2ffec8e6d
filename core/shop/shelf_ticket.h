#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// Makes the ticket that cuts a piece into so many ready belts for the shelf, without an order: what
/// `burdens` proposes, made real by recordCut (and taken back by undoCut). It gives way when a customer needs
/// the width. Refuses PieceGone, UnitMixed, BadWidth, BadQuantity, PieceReserved, and TooNarrow if the piece
/// can't give them.
store::TicketId cutForShelf(const Shop& shop, store::PieceId piece, Extent width, std::int64_t belts);

/// The belts for the shelf of a planned mounting are not to be cut after all: what they would have used stays
/// with the rest; a mounting for the shelf alone is void. Refuses AlreadyCut, AlreadyDone, and NothingToCut
/// if it has none.
void giveUpForShelf(const Shop& shop, store::MountingId mounting);

/// The same inside the caller's transaction, of a mounting that is known to be such a one.
void giveUpForShelf(const Shop& shop, const store::Ticket& ticket, const store::TicketMounting& mounting);

} // namespace riband::shop
