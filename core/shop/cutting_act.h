#pragma once

#include "core/shop/promises.h"
#include "core/shop/yield.h"

namespace riband::shop {

/// A planned mounting while what happened at the cutter is entered, inside the caller's transaction.
class CuttingAct {
public:
    /// Refuses AlreadyCut and, if the mounting is void, AlreadyDone.
    CuttingAct(const Shop& shop, store::MountingId mounting);

    const store::Ticket ticket;
    const store::TicketMounting mounting;
    const store::StockPiece piece; ///< before the cut

    Unit unit() const { return piece.extent.unit(); }
    std::vector<std::int64_t> planned() const; ///< belts of each cut
    /// Trim, kerf and so many belts of each cut.
    Yield yieldOf(const std::vector<std::int64_t>& belts) const;
    /// Sets what is left, measured or by the figures, and whether it goes back to the rack.
    void settleRest(Yield& yield, std::optional<Extent> measured, std::optional<bool> keep) const;
    store::CutterId cutter() const; ///< on which it is cut
    Booked book(const Yield& yield, store::Act act) const;
    /// The mounting is cut: counts the belts of the lines, voids what the rest can't give any more, and
    /// settles the ticket and the orders.
    std::vector<Voided> close(store::MovementId movement, const std::vector<std::int64_t>& belts) const;

private:
    Extent leftByFigures(const Yield& yield) const;
    void demandNotPromised() const;

    const Shop& shop_;
    const store::ShopSettings settings_;
    const cutting::Rules& rules_;
};

} // namespace riband::shop
