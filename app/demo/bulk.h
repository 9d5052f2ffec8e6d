#pragma once

#include "app/demo/dice.h"
#include "core/shop/shop.h"

#include <vector>

namespace riband::app {

/// A piece as the bulk writer keeps it in mind.
struct LivePiece {
    store::PieceId id;
    cutting::PieceKind kind;
    Extent extent;
    Money cost;
};

/// One belt with its live pieces.
struct Shelf {
    store::StockedBelt belt;
    std::size_t kept; ///< pieces that the shop keeps of this belt
    std::vector<LivePiece> pieces;
    bool justLost = false; ///< had all its pieces and has not any more
};

/// Books deliveries and sales as the shop's verbs do, inside the caller's transaction and without asking the
/// store what it was told before.
class Bulk {
public:
    Bulk(store::Connection& connection, std::uint64_t seed);
    std::int64_t movements() const { return movements_; }
    store::PersonId someone() { return dice_.of(people_).id; }
    /// One movement: all pieces that the shelf lacks.
    void deliver(Shelf& shelf, Moment at);
    /// One order, handed over, with a line and a movement for each shelf that can give something. False, and
    /// nothing is written, if none can.
    bool sell(const std::vector<Shelf*>& shelves, Moment at);
    /// One movement: a strip of the widest piece was damaged.
    void trimEdge(Shelf& shelf, Moment at);

private:
    struct Sale {
        Shelf* shelf;
        std::size_t piece;
        Extent width;
        std::int64_t quantity;
    };
    const cutting::Rules& rules(const Shelf& shelf) const { return settings_.rulesFor(shelf.belt.unit); }
    std::optional<Sale> saleFrom(Shelf& shelf);
    std::optional<std::size_t> smallestFor(const Shelf& shelf, Extent width, std::int64_t quantity) const;
    Extent used(const Shelf& shelf, Extent width, std::int64_t quantity) const;
    Extent least(const Shelf& shelf) const;
    store::OrderLine lineOf(const Sale& sale) const;
    std::vector<store::LineId> order(const std::vector<Sale>& sales, Moment at);
    void cut(const Sale& sale, store::LineId line, Moment at);
    void record(const Shelf& shelf, store::Act act, Moment at, std::vector<store::Posting> postings);

    store::Connection& connection_;
    store::ShopSettings settings_;
    std::vector<store::Person> people_;
    Dice dice_;
    std::int64_t movements_ = 0;
};

} // namespace riband::app
