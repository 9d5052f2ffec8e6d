#include "core/shop/change.h"

#include "core/measure/text.h"
#include "core/shop/demand.h"
#include "core/shop/returned.h"
#include "core/shop/standing.h"

#include <algorithm>

namespace riband::shop {

namespace {

using store::OrderState;

void demandWish(const store::OrderLine& line, Extent extent, std::int64_t quantity) {
    demandBelts(line.extent.unit(), extent, quantity == 0 ? 1 : quantity);
}

/// The line as the customer wants it now; no belts: all of it is cancelled.
store::OrderLine changed(const Shop& shop, store::OrderLine line, Extent extent, std::int64_t quantity) {
    const WidthPrice price = store::Catalogue{shop.connection}.at(line.belt).price;
    line.extent = extent;
    if (quantity != 0) line.quantity = quantity;
    line.cancelled = quantity == 0 ? line.quantity : 0;
    const store::PriceRules rules = store::Settings{shop.connection}.read().prices;
    line.price = priceOf(rules, price, extent, quantity);
    return line;
}

/// How many of the cut belts the line still has a use for.
std::int64_t stillGood(const store::OrderLine& line, Extent extent, std::int64_t quantity) {
    return extent == line.extent ? std::min(quantity, line.cut) : 0;
}

bool isWhole(const store::StockPiece& piece) {
    return piece.kind == cutting::PieceKind::Sleeve && piece.reserved.isNone();
}

/// Of the order's belts: nobody is to open them without being asked.
std::set<store::PieceId> wholeSleeves(const Shop& shop, const store::Order& order) {
    std::set<store::PieceId> whole;
    for (const store::OrderLine& line : order.lines)
        for (const store::StockPiece& piece : store::Pieces{shop.connection}.ofBelt(line.belt))
            if (isWhole(piece)) whole.insert(piece.id);
    return whole;
}

/// Plans what was released, and all that the changed line waits for.
Ordered planAgain(const Shop& shop, store::OrderId order, std::map<store::LineId, std::int64_t> belts,
                  const store::OrderLine& line, const std::set<store::PieceId>& whole) {
    belts[line.id] = waiting(line);
    const Allotment allotment = allot(shop, wantedOf(shop, belts), Allotting::OneOrder, whole);
    demandServed(shop, allotment);
    return {order, enter(shop, order, allotment), false};
}

void settleAll(const Shop& shop, const std::map<store::LineId, std::int64_t>& belts) {
    for (const auto& [line, count] : belts)
        settleOrder(shop, store::Orders{shop.connection}.orderOf(line));
}

Ordered changeOpen(const Shop& shop, const store::Order& order, store::OrderLine line, Extent extent,
                   std::int64_t quantity) {
    const std::int64_t stay = stillGood(line, extent, quantity);
    const std::vector<store::PieceId> shelf = returnToShelf(shop, line, line.cut - stay);
    line.cut = stay;
    const store::OrderLine after = changed(shop, line, extent, quantity);
    store::Orders{shop.connection}.changeLine(after);
    const std::set<store::PieceId> whole = wholeSleeves(shop, order);
    const auto released = release(shop, {order.id});
    Ordered ordered = planAgain(shop, order.id, released, after, whole);
    ordered.shelf = shelf;
    settleAll(shop, released);
    settleOrder(shop, order.id);
    return ordered;
}

bool isAside(OrderState state) { return state == OrderState::Parked || state == OrderState::Quoted; }

void cancelLines(const Shop& shop, const store::Order& order, std::vector<store::PieceId>& shelf) {
    for (store::OrderLine line : order.lines) {
        for (const store::PieceId piece : returnToShelf(shop, line, line.cut))
            shelf.push_back(piece);
        line.cut = 0;
        line.cancelled = line.quantity;
        store::Orders{shop.connection}.changeLine(line);
    }
}

/// Belts of other orders that shared a mounting with a cancelled one are planned again, without its width.
void planForOthers(const Shop& shop, std::map<store::LineId, std::int64_t> released,
                   const store::Order& cancelled, const std::set<store::PieceId>& whole) {
    for (const store::OrderLine& line : cancelled.lines)
        released.erase(line.id);
    if (released.empty()) return;
    const store::OrderId first = store::Orders{shop.connection}.orderOf(released.begin()->first);
    enter(shop, first, allot(shop, wantedOf(shop, released), Allotting::OneOrder, whole));
    settleAll(shop, released);
}

void demandMade(const Shop& shop, const store::OrderLine& line, Extent extent) {
    const Extent widest = widestBelt(shop, line.belt);
    if (!widest.isNone() && extent > widest) refuse(Refusal::Why::BadWidth, printCount(extent));
}

bool wantsAlready(const store::OrderLine& line, Extent extent, std::int64_t quantity) {
    return line.extent == extent && line.quantity - line.cancelled == quantity;
}

/// The order as it stands, with the last of its tickets that is not cut yet.
Ordered asItStands(const Shop& shop, store::OrderId order) {
    Ordered stands{order, std::nullopt, false};
    for (const store::Ticket& ticket : store::Tickets{shop.connection}.ofOrder(order))
        if (ticket.state == store::TicketState::Open) stands.ticket = ticket.id;
    return stands;
}

/// Inside the caller's transaction.
Ordered changeInside(const Shop& shop, store::LineId id, Extent extent, std::int64_t quantity) {
    store::Orders orders{shop.connection};
    const store::Order order = orders.at(orders.orderOf(id));
    const store::OrderLine line = lineOf(order, id);
    demandWish(line, extent, quantity);
    demandMade(shop, line, extent);
    const bool aside = isAside(order.state);
    if (!aside) openOrder(shop, order.id);
    if (wantsAlready(line, extent, quantity)) return asItStands(shop, order.id);
    if (!aside) return changeOpen(shop, order, line, extent, quantity);
    orders.changeLine(changed(shop, line, extent, quantity));
    return {order.id, std::nullopt, false};
}

} // namespace

Extent widestBelt(const Shop& shop, store::BeltId id) {
    const store::StockedBelt belt = store::Catalogue{shop.connection}.at(id);
    Extent widest = shop.tables->widestSleeve(belt.belt.profile);
    if (widest.unit() != belt.unit) widest = Extent::none(belt.unit);
    for (const store::StockPiece& piece : store::Pieces{shop.connection}.ofBelt(id))
        widest = std::max(widest, piece.extent);
    return widest;
}

Ordered change(const Shop& shop, store::LineId id, Extent extent, std::int64_t quantity) {
    store::Transaction transaction{shop.connection};
    const Ordered ordered = changeInside(shop, id, extent, quantity);
    transaction.commit();
    return ordered;
}

ChangePlan planChange(const Shop& shop, store::LineId id, Extent extent, std::int64_t quantity) {
    ChangePlan plan;
    {
        const store::Transaction tried{shop.connection}; // rolled back
        const Ordered ordered = changeInside(shop, id, extent, quantity);
        if (ordered.ticket) plan.mountings = mountingsOf(shop, *ordered.ticket);
    }
    for (const BenchMounting& mounting : plan.mountings) {
        const store::StockPiece now = store::Pieces{shop.connection}.at(mounting.piece.id);
        if (isWhole(now)) plan.opened.push_back(now);
    }
    return plan;
}

std::vector<store::PieceId> cancel(const Shop& shop, store::OrderId id) {
    store::Transaction transaction{shop.connection};
    store::Orders orders{shop.connection};
    const store::Order order = orders.at(id);
    if (!isAside(order.state)) openOrder(shop, id);
    const std::set<store::PieceId> whole = wholeSleeves(shop, order);
    const auto released = release(shop, {id});
    std::vector<store::PieceId> shelf;
    cancelLines(shop, order, shelf);
    orders.setState(id, OrderState::Cancelled);
    planForOthers(shop, released, order, whole);
    transaction.commit();
    return shelf;
}

} // namespace riband::shop
