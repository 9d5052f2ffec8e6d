#pragma once

#include "core/shop/shop.h"

#include <map>
#include <vector>

namespace riband::shop {

/// What one planned mounting keeps others from taking.
struct Promise {
    store::MountingId mounting;
    store::TicketId ticket;
    std::string code; ///< of the ticket
    store::PieceId piece;
    Extent width; ///< trim, kerfs and belts
    Extent stays; ///< must be left beyond its last cut
    std::vector<store::TicketCut> cuts;
};

/// All planned mountings, read at once. The planned mountings of one piece each pay their own trim, and what
/// the most demanding of them must leave is kept free: so they can be cut in any order.
class Promises {
public:
    static Promises none() { return {}; }
    static Promises read(const Shop& shop, const store::ShopSettings& settings);
    /// The same if all belts for the shelf gave way: they do as soon as a customer needs the width.
    static Promises toCustomers(const Shop& shop, const store::ShopSettings& settings);

    void add(Promise promise);
    const std::vector<Promise>& on(store::PieceId piece) const; ///< in the order in which they were made
    const std::map<store::PieceId, std::vector<Promise>>& all() const { return byPiece_; }
    /// What more can be cut from the piece by a planner that itself leaves at least `end`.
    Extent free(const store::StockPiece& piece, Extent end) const;
    /// Whether the piece can give all that is promised of it.
    bool canBeKept(store::PieceId piece, Extent extent) const;
    /// "T7K-2 T7L-0"
    std::string codesOn(store::PieceId piece) const;
    /// So many belts of each line are on planned mountings.
    std::map<store::LineId, std::int64_t> belts() const;

private:
    std::map<store::PieceId, std::vector<Promise>> byPiece_;
};

/// The promise that a planned mounting makes.
Promise promiseOf(const store::TicketMounting& mounting, const store::Ticket& ticket,
                  const cutting::Rules& rules);

} // namespace riband::shop
