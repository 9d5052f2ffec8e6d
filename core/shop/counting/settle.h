#pragma once

#include "core/shop/counting/findings.h"
#include "core/shop/cut.h"

namespace riband::shop {

/// What settling came to.
struct Settled {
    std::vector<store::SettlementId> settlements; ///< two where two differences explain each other
    std::optional<store::MovementId> movement;    ///< none: nothing had to be booked
    std::optional<store::PieceId> label;          ///< wants a new label
    std::vector<Voided> voided;                   ///< mountings that can't be done any more
};

/// Accepts a proposal: one transaction that books what it says and settles the difference, and the other one
/// that it explains. The proposal must still stand as things are now. Refuses AlreadyDone (settled in
/// between, or the proposal no longer fits), NeedsApproval (worth more than the limit, and neither the acting
/// person nor `approved` is an owner), PieceReserved.
Settled settle(const Shop& shop, const counting::Difference& difference, const counting::Proposal& proposal,
               std::optional<store::PersonId> approved = std::nullopt);

/// What taking a settlement back came to.
struct Countered {
    std::vector<Voided> voided; ///< mountings that can't be done any more
    /// Tickets on its pieces that were made void, then or before, and of which belts are on no ticket yet:
    /// they stay void, since their paper may be gone and their pieces promised elsewhere.
    std::vector<std::string> stayVoid;
};

/// Takes a settlement back by a counter-entry that names it, with the others that its movement settled; the
/// differences are open again. Refuses AlreadyDone (countered already, or a piece of it was used since),
/// SettledByCut (the cut that settled it is undone instead), ActStays (it put a piece back that was booked as
/// missing; or, with the piece's code, that was measured again since: the later figure would be lost).
Countered counterSettlement(const Shop& shop, store::SettlementId settlement);
/// Why a settlement can't be countered now; nothing if it can. Changes nothing.
std::optional<Refusal> whyNotCountered(const Shop& shop, store::SettlementId settlement);

namespace counting {
/// The settlements that rest on a movement are countered with it, inside the caller's transaction: a movement
/// that settled a count is never undone alone.
void counterSettlementsOf(const Shop& shop, store::MovementId movement);
} // namespace counting

} // namespace riband::shop
