#pragma once

#include "core/shop/price.h"
#include "core/shop/suggest.h"
#include "core/store/takings.h"

namespace riband::shop {

/// A line of an order at the counter, before it is booked.
struct DraftLine {
    belt::Belt belt;
    Extent extent;
    std::int64_t quantity;
    std::string said{};                 ///< as typed
    std::optional<cutting::Plan> way{}; ///< chosen by the clerk over the suggested one, made from `wayPieces`
    std::vector<std::string> wayPieces{}; ///< piece codes in the order of the way's problem
    std::vector<std::vector<Extent>>
        forShelf{};       ///< what that way cuts for the shelf as well, a mounting each
    bool noShelf = false; ///< belts for the shelf were suggested and are not wanted
    std::optional<store::OverrideKey> overrideKey{}; ///< why the clerk chose another way
    std::string overrideWords{};
};

struct Draft {
    std::vector<DraftLine> lines;
    std::string customer{}; ///< "" for a walk-in
    std::string phone{};
    std::optional<Moment> due{};
    std::string note{};
};

/// What ordering made.
struct Ordered {
    store::OrderId order;
    std::optional<store::TicketId> ticket; ///< none if all came ready from the shelf
    bool otherWay = false;                 ///< a way that the clerk chose could not be done any more
    /// Tickets that were to cut belts for the shelf of the same belts and don't any more: their papers are
    /// stale.
    std::vector<store::TicketId> gaveWay{};
    /// Belts that were cut for the order and have no use there any more: ready belts, each to be labelled.
    std::vector<store::PieceId> shelf{};
};

/// Prices the draft and keeps it without reserving anything. `instead`: the parked or quoted order that this
/// goes on with; its number stays.
store::OrderId quote(const Shop& shop, const Draft& draft,
                     std::optional<store::OrderId> instead = std::nullopt);
store::OrderId park(const Shop& shop, const Draft& draft,
                    std::optional<store::OrderId> instead = std::nullopt);
/// The draft of a parked or quoted order again; booked anew it is the same order.
Draft resume(const Shop& shop, store::OrderId order);

/// Books the order, plans all its belts anew (lines of the same belt together; where the clerk chose a way
/// and it still can be done, that one), reserves the width and makes the ticket. Ready belts of the asked
/// width are taken from the shelf first and booked at once: they lie with the order from then on, the ticket
/// names them. What was suggested is kept beside what was done (store::Advices). Refuses with WidthTaken, and
/// changes nothing, if not all can be served.
Ordered order(const Shop& shop, const Draft& draft, std::optional<store::OrderId> instead = std::nullopt);

/// Plans the waiting belts of these open orders together, one mounting for what one piece can give: their
/// planned mountings are void, one new ticket (of the first order) takes their place. `only`: what is planned
/// of this belt; the rest of the orders stays as it is. Refuses with WidthTaken if not all can be served.
Ordered together(const Shop& shop, const std::vector<store::OrderId>& orders,
                 std::optional<store::BeltId> only = std::nullopt);

/// Changed mind: another width or quantity (0: none of this line). The waiting belts of the order are planned
/// and reserved anew, with none for the shelf since nobody was asked; the old ticket is void as far as it is
/// not cut. Belts already cut stay with the line if the width is the same; where too many or of another width
/// they become ready belts. What is the same already changes nothing. Refuses BadWidth over `widestBelt`,
/// WidthTaken if not all can be served.
Ordered change(const Shop& shop, store::LineId line, Extent extent, std::int64_t quantity);

/// Cancels the order: reservations go, belts already cut become ready belts (their pieces are returned);
/// those that came from the shelf go back to it.
std::vector<store::PieceId> cancel(const Shop& shop, store::OrderId order);

/// Gives the finished order to the customer, who pays its total in this way.
void handOver(const Shop& shop, store::OrderId order, store::Payment paid = store::Payment::Cash);

} // namespace riband::shop
