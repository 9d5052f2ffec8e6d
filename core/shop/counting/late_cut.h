#pragma once

#include "core/shop/counting/explain.h"
#include "core/shop/cut.h"

namespace riband::shop::counting {

// Parts of settling; inside the caller's transaction.

/// Records the cut that a proposal names (CutNotRecorded, CutFromOther, LineNotTicketed): belts to their
/// order lines, the trim where there was one, and the rest of the piece as it was counted.
store::MovementId bookLateCut(const Shop& shop, const store::StockPiece& piece, const Difference& difference,
                              const Proposal& proposal);

/// Counters a settlement and its movement, with all that this movement settled; what its pieces can't give
/// any more is void.
std::vector<Voided> takeBack(const Shop& shop, store::SettlementId settlement);

} // namespace riband::shop::counting
