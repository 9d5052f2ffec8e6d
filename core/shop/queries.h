#pragma once

#include "core/cutting/setup.h"
#include "core/shop/shop.h"

namespace riband::shop {

/// One row of the Rack page.
struct RackRow {
    store::StockPiece piece;
    std::string belt; ///< designation
};
std::vector<RackRow> rack(const Shop& shop);

/// What a scanned or typed code names in this shop.
struct Scanned {
    std::optional<store::StockPiece> piece;
    std::optional<store::Ticket> ticket;
    std::optional<store::Order> order;
    bool any() const { return piece || ticket || order; }
};
Scanned scan(const Shop& shop, const std::string& text);

/// A mounting on the Bench: all that the person at the cutter needs.
struct BenchMounting {
    store::TicketMounting mounting;
    std::string ticket; ///< code
    std::string order;  ///< code; several, by spaces, where orders are cut together; "" for the shelf
    std::string customer;
    store::StockPiece piece;
    store::StockedBelt belt;
    std::vector<Extent> stops;      ///< each belt's own width, in the order of cutting
    std::vector<Extent> cumulative; ///< display if not zeroed again
    store::ShopCutter cutter;       ///< on which it is to be cut
    std::optional<cutting::SetUp> setUp;
    std::optional<cutting::SetUpFault> setUpFault;
    /// What each width may differ by, as far as a standard says: the customers' belts first, then the
    /// shelf's.
    struct Tolerated {
        Extent extent;
        belt::WidthTolerance tolerance;
    };
    std::vector<Tolerated> tolerances;
    /// nullptr if no standard gives one.
    const belt::WidthTolerance* toleranceOf(Extent extent) const;
    /// Of the stops, those for the shelf: cut as well since the piece is on the cutter.
    std::vector<Extent> forShelf() const;
};
/// All planned mountings, those of a cutter together, in the order that changes shafts least, from the shaft
/// and piece of the last cut on; within a shaft longest waiting first.
std::vector<BenchMounting> bench(const Shop& shop);
/// A planned mounting is cut on this cutter. Refuses AlreadyCut, AlreadyDone, NoSuchCutter.
void putOnCutter(const Shop& shop, store::MountingId mounting, store::CutterId cutter);
/// The mountings of one ticket, for its paper.
std::vector<BenchMounting> mountingsOf(const Shop& shop, store::TicketId ticket);

/// A line of an open order that wants belts which are on no ticket.
struct Missing {
    store::OrderId order;
    std::string code; ///< of the order
    store::OrderLine line;
    std::int64_t belts;
};
/// Longest waiting first.
std::vector<Missing> missing(const Shop& shop);

/// The life of a piece: its movements, oldest first.
std::vector<store::RecordedMovement> lifeOf(const Shop& shop, store::PieceId piece);

} // namespace riband::shop
