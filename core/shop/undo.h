#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// Undoes a stock act by a counter-entry that names it: goods in, a cut, a split, a scrap. Refuses
/// UndoneAlready; ActStays for a miscut, a cancelled order, a belt that was taken ready, a correction (a
/// count is countered where it was settled) and an undo; AlreadyDone if a piece of it was touched since (its
/// code is the detail) or an order is closed; PieceReserved if promises could not be kept then. Goods in that
/// an expected delivery counted are expected again.
store::MovementId undo(const Shop& shop, store::MovementId movement);

/// Puts a piece back where its last move took it from. Refuses ActStays if it was never moved.
void undoMove(const Shop& shop, store::PieceId piece);

/// Why a movement can't be undone now; nothing if it can. Changes nothing.
std::optional<Refusal> whyNotUndone(const Shop& shop, store::MovementId movement);

} // namespace riband::shop
