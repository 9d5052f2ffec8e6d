#pragma once

#include "core/shop/cut.h"
#include "core/shop/order.h"
#include "core/shop/queries.h"
#include "core/shop/receive.h"
#include "core/shop/stock.h"
#include "core/shop/suggest.h"
#include "core/shop/undo.h"
#include "tests/catch.h"

namespace riband::shop {

inline Extent mm(std::int64_t millimetres) { return Width::millimetres(millimetres); }
inline Extent um(std::int64_t micrometres) { return Width::micrometres(micrometres); }
inline Extent ribs(std::int64_t count) { return Ribs{count}; }

/// An invented shop in memory, with the usual cutting rules: 2.5 mm trim, no kerf, 5 mm end, 15 mm stub; of
/// ribbed belts 1, 0, 1 and 3 ribs. It is nine in the morning of 2 March 2026, and a minute later at each
/// act.
class TestShop {
public:
    TestShop();

    store::Connection connection = store::Connection::inMemory();
    Moment time;
    Shop shop;
    belt::Belt h8m1200, t5x500, pj1194;

    /// A new piece; the older by so many days.
    store::PieceId piece(const belt::Belt& belt, Extent extent,
                         cutting::PieceKind kind = cutting::PieceKind::Sleeve, std::int64_t cost = 0,
                         int daysOld = 0);
    store::PieceId remnant(const belt::Belt& belt, Extent extent, int daysOld = 0);
    store::PieceId ready(const belt::Belt& belt, Extent extent);

    Ordered order(const belt::Belt& belt, Extent extent, std::int64_t quantity);
    Ordered order(const std::vector<DraftLine>& lines);
    static DraftLine line(const belt::Belt& belt, Extent extent, std::int64_t quantity);
    Suggestion suggestFor(const belt::Belt& belt, Extent extent, std::int64_t quantity);

    store::StockPiece at(store::PieceId id);
    store::Order at(store::OrderId id);
    store::Ticket at(store::TicketId id);
    /// The one line of an order, the one mounting of a ticket.
    store::OrderLine lineOf(store::OrderId order);
    store::TicketMounting mountingOf(const Ordered& ordered);
    CutDone cutAll(const Ordered& ordered);
    store::CutterId addCutter(const std::string& name); ///< beside the usual one

    /// Sums over all time, in the unit of the belts.
    std::int64_t widthOn(store::Account account);
    std::int64_t costOn(store::Account account);
    /// All that the store holds, as text: two that are equal differ in nothing that a person could see.
    std::string everything();
    /// Nothing in the book disagrees: names what does.
    std::vector<std::string> disagreements();
};

/// The act is refused for this reason and changes nothing.
void checkRefused(TestShop& shop, Refusal::Why why, const std::function<void()>& act);

} // namespace riband::shop
