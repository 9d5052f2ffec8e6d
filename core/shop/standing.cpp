#include "core/shop/standing.h"

#include "core/measure/text.h"
#include "core/shop/demand.h"

#include <algorithm>
#include <stdexcept>

namespace riband::shop {

namespace {

using store::MountingState;
using store::OrderState;
using store::TicketState;

std::set<store::OrderId> ordersOf(const Shop& shop, const std::vector<store::TicketCut>& cuts) {
    std::set<store::OrderId> orders;
    for (const store::TicketCut& cut : cuts)
        if (cut.line) orders.insert(store::Orders{shop.connection}.orderOf(*cut.line));
    return orders;
}

bool meet(const std::set<store::OrderId>& some, const std::set<store::OrderId>& others) {
    return std::any_of(some.begin(), some.end(),
                       [&](store::OrderId order) { return others.contains(order); });
}

void makeVoid(const Shop& shop, const Promise& promise) {
    store::Tickets{shop.connection}.setMounting(promise.mounting, MountingState::Void, std::nullopt);
    settleTicket(shop, promise.ticket);
}

bool any(const store::Ticket& ticket, MountingState state) {
    return std::any_of(ticket.mountings.begin(), ticket.mountings.end(),
                       [&](const store::TicketMounting& mounting) { return mounting.state == state; });
}

OrderState stateOf(const store::Order& order) {
    const auto unwanted = [](const store::OrderLine& line) { return line.cancelled == line.quantity; };
    const auto done = [](const store::OrderLine& line) { return waiting(line) == 0; };
    if (std::all_of(order.lines.begin(), order.lines.end(), unwanted)) return OrderState::Cancelled;
    return std::all_of(order.lines.begin(), order.lines.end(), done) ? OrderState::Ready : OrderState::Open;
}

} // namespace

std::int64_t waiting(const store::OrderLine& line) { return line.quantity - line.cancelled - line.cut; }

std::map<store::LineId, std::int64_t> missingOf(const store::Order& order, const Promises& promises) {
    const std::map<store::LineId, std::int64_t> planned = promises.belts();
    std::map<store::LineId, std::int64_t> belts;
    for (const store::OrderLine& line : order.lines) {
        const auto found = planned.find(line.id);
        const std::int64_t missing = waiting(line) - (found == planned.end() ? 0 : found->second);
        if (missing > 0) belts[line.id] = missing;
    }
    return belts;
}

std::vector<OrderAfter> ordersAfter(const Shop& shop, const std::vector<store::TicketCut>& cuts) {
    std::vector<OrderAfter> after;
    for (const store::OrderId id : ordersOf(shop, cuts)) {
        const store::Order order = store::Orders{shop.connection}.at(id);
        after.push_back({id, order.code, 0});
        for (const store::OrderLine& line : order.lines)
            after.back().missing += waiting(line);
    }
    return after;
}

OrderState settleOrder(const Shop& shop, store::OrderId id) {
    store::Orders orders{shop.connection};
    const store::Order order = orders.at(id);
    if (order.state != OrderState::Open && order.state != OrderState::Ready) return order.state;
    const OrderState state = stateOf(order);
    if (state != order.state) orders.setState(id, state);
    return state;
}

void settleTicket(const Shop& shop, store::TicketId id) {
    store::Tickets tickets{shop.connection};
    const store::Ticket ticket = tickets.at(id);
    TicketState state = TicketState::Void;
    if (any(ticket, MountingState::Cut)) state = TicketState::Cut;
    if (any(ticket, MountingState::Planned)) state = TicketState::Open;
    if (state != ticket.state) tickets.setState(id, state);
}

store::CutterId commonOf(const std::set<store::CutterId>& cutters) {
    return cutters.size() == 1 ? *cutters.begin() : store::CutterId{0};
}

void putOn(const Shop& shop, store::TicketId ticket, store::CutterId cutter) {
    if (cutter == store::CutterId{0}) return;
    store::Tickets tickets{shop.connection};
    for (const store::TicketMounting& mounting : tickets.at(ticket).mountings)
        tickets.setCutter(mounting.id, cutter);
}

std::set<store::CutterId> cuttersOf(const Shop& shop, const std::set<store::OrderId>& orders,
                                    std::optional<store::BeltId> only) {
    std::set<store::CutterId> cutters;
    for (const store::Ticket& ticket : store::Tickets{shop.connection}.inState(TicketState::Open))
        for (const store::TicketMounting& mounting : ticket.mountings) {
            if (mounting.state != MountingState::Planned) continue;
            if (only && store::Pieces{shop.connection}.at(mounting.piece).belt != *only) continue;
            if (meet(ordersOf(shop, mounting.cuts), orders)) cutters.insert(mounting.cutter);
        }
    return cutters;
}

std::map<store::LineId, std::int64_t> release(const Shop& shop, const std::set<store::OrderId>& orders,
                                              std::optional<store::BeltId> only) {
    const Promises promises = Promises::read(shop, store::Settings{shop.connection}.read());
    std::map<store::LineId, std::int64_t> belts;
    for (const auto& [piece, onPiece] : promises.all()) {
        if (only && store::Pieces{shop.connection}.at(piece).belt != *only) continue;
        for (const Promise& promise : onPiece) {
            if (!meet(ordersOf(shop, promise.cuts), orders)) continue;
            makeVoid(shop, promise);
            for (const store::TicketCut& cut : promise.cuts)
                if (cut.line) belts[*cut.line] += cut.count;
        }
    }
    return belts;
}

std::vector<Voided> voidImpossible(const Shop& shop, store::PieceId piece) {
    const Extent extent = store::Pieces{shop.connection}.at(piece).extent;
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    std::vector<Voided> voided;
    for (Promises promises = Promises::read(shop, settings); !promises.canBeKept(piece, extent);
         promises = Promises::read(shop, settings)) {
        const Promise last = promises.on(piece).back();
        makeVoid(shop, last);
        const std::set<store::OrderId> orders = ordersOf(shop, last.cuts);
        voided.push_back({last.mounting, {orders.begin(), orders.end()}});
    }
    return voided;
}

std::vector<Wanted> wantedOf(const Shop& shop, const std::map<store::LineId, std::int64_t>& belts) {
    store::Orders orders{shop.connection};
    std::vector<Wanted> wanted;
    for (const auto& [id, count] : belts) {
        const store::OrderLine line = lineOf(orders.at(orders.orderOf(id)), id);
        if (count <= 0) continue;
        wanted.push_back({id, line.belt, line.extent, count, std::nullopt, {}});
        wanted.back().noShelf = true;
    }
    return wanted;
}

void demandServed(const Shop& shop, const Allotment& allotment) {
    if (allotment.unserved.empty()) return;
    store::Orders orders{shop.connection};
    const store::LineId id = allotment.unserved.front();
    const store::OrderLine line = lineOf(orders.at(orders.orderOf(id)), id);
    const std::string belt = store::Catalogue{shop.connection}.at(line.belt).designation;
    refuse(Refusal::Why::WidthTaken, belt + " " + printCount(line.extent));
}

store::Order openOrder(const Shop& shop, store::OrderId id) {
    const store::Order order = store::Orders{shop.connection}.at(id);
    if (order.state != OrderState::Open && order.state != OrderState::Ready)
        refuse(Refusal::Why::AlreadyDone, order.code);
    return order;
}

store::OrderLine lineOf(const store::Order& order, store::LineId id) {
    for (const store::OrderLine& line : order.lines)
        if (line.id == id) return line;
    throw std::logic_error("the line is not of this order");
}

} // namespace riband::shop
