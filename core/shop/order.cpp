#include "core/shop/order.h"

#include "core/shop/demand.h"
#include "core/shop/kept.h"
#include "core/shop/shelf_ticket.h"
#include "core/shop/standing.h"
#include "core/store/shelf_cuts.h"

namespace riband::shop {

namespace {

using store::OrderState;

constexpr std::size_t mostLines = 100; ///< of one order

store::OrderLine lineOf(const Shop& shop, const store::PriceRules& rules, const DraftLine& draft) {
    const store::StockedBelt belt = keptBelt(shop, draft.belt);
    demandBelts(belt.unit, draft.extent, draft.quantity);
    return {.id = store::LineId{0},
            .position = 0, // given by the store
            .belt = belt.id,
            .extent = draft.extent,
            .quantity = draft.quantity,
            .said = draft.said,
            .price = priceOf(rules, belt.price, draft.extent, draft.quantity),
            .cut = 0,
            .cancelled = 0};
}

std::optional<store::CustomerId> customerOf(const Shop& shop, const Draft& draft) {
    if (draft.customer.empty()) return std::nullopt;
    return store::Orders{shop.connection}.customerNamed(draft.customer, draft.phone);
}

store::Order setAside(const Shop& shop, store::OrderId id) {
    store::Order order = store::Orders{shop.connection}.at(id);
    if (order.state != OrderState::Parked && order.state != OrderState::Quoted)
        refuse(Refusal::Why::AlreadyDone, order.code);
    return order;
}

store::OrderId keep(const Shop& shop, const store::Order& order, std::optional<store::OrderId> instead) {
    store::Orders orders{shop.connection};
    if (!instead) return orders.add(order);
    setAside(shop, *instead);
    orders.rewrite(*instead, order);
    return *instead;
}

store::OrderId add(const Shop& shop, const Draft& draft, OrderState state,
                   std::optional<store::OrderId> instead) {
    if (draft.lines.empty() || draft.lines.size() > mostLines)
        refuse(Refusal::Why::BadQuantity, std::to_string(draft.lines.size()));
    const store::PriceRules rules = store::Settings{shop.connection}.read().prices;
    std::vector<store::OrderLine> lines;
    for (const DraftLine& line : draft.lines)
        lines.push_back(lineOf(shop, rules, line));
    return keep(shop,
                {.id = store::OrderId{0},
                 .code = "",
                 .state = state,
                 .customer = customerOf(shop, draft),
                 .customerName = draft.customer,
                 .person = shop.person,
                 .made = shop.now(),
                 .due = draft.due,
                 .note = draft.note,
                 .lines = std::move(lines)},
                instead);
}

store::OrderId addAside(const Shop& shop, const Draft& draft, OrderState state,
                        std::optional<store::OrderId> instead) {
    store::Transaction transaction{shop.connection};
    const store::OrderId id = add(shop, draft, state, instead);
    transaction.commit();
    return id;
}

std::vector<Wanted> wantedOf(const store::Order& order, const Draft& draft) {
    std::vector<Wanted> wanted;
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        const store::OrderLine& line = order.lines[i];
        const DraftLine& said = draft.lines[i];
        wanted.push_back({line.id, line.belt, line.extent, line.quantity, said.way, said.wayPieces,
                          said.forShelf, said.noShelf});
    }
    return wanted;
}

/// Belts for the shelf that are only planned give way to a customer: the tickets that lose some.
std::vector<store::TicketId> shelfGivesWay(const Shop& shop, const store::Order& order) {
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    std::set<store::BeltId> belts;
    for (const store::OrderLine& line : order.lines)
        belts.insert(line.belt);
    std::vector<store::TicketId> gaveWay;
    for (const store::Ticket& ticket : store::Tickets{shop.connection}.inState(store::TicketState::Open))
        for (const store::TicketMounting& mounting : ticket.mountings) {
            if (mounting.state != store::MountingState::Planned) continue;
            if (!belts.contains(store::Pieces{shop.connection}.at(mounting.piece).belt)) continue;
            if (mounting.onlyForShelf()) {
                giveUpForShelf(shop, ticket, mounting);
            } else {
                const Extent stub = settings.rulesFor(mounting.trim.unit()).stub;
                if (!store::ShelfCuts{shop.connection}.drop(mounting, stub)) continue;
            }
            if (gaveWay.empty() || gaveWay.back() != ticket.id) gaveWay.push_back(ticket.id);
        }
    return gaveWay;
}

/// The first reason that was given for a belt of the order.
const DraftLine* overrideOf(const store::Order& order, const Draft& draft, store::BeltId belt) {
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        const DraftLine& line = draft.lines[i];
        if (order.lines[i].belt == belt && (line.overrideKey || !line.overrideWords.empty())) return &line;
    }
    return nullptr;
}

void keepAdvice(const Shop& shop, const store::Order& order, const Draft& draft, const Allotment& allotment) {
    store::Advices advices{shop.connection};
    for (const Advised& advised : allotment.advised) {
        const DraftLine* why = advised.overridden ? overrideOf(order, draft, advised.belt) : nullptr;
        advices.add({.id = store::AdviceId{0},
                     .order = order.id,
                     .belt = advised.belt,
                     .at = order.made,
                     .person = order.person,
                     .basis = advised.basis,
                     .worthVersion = advised.worthVersion,
                     .suggested = advised.suggested,
                     .taken = advised.taken,
                     .shelfDeclined = advised.shelfDeclined,
                     .overridden = advised.overridden,
                     .overrideKey = why ? why->overrideKey : std::nullopt,
                     .overrideWords = why ? why->overrideWords : ""});
    }
}

std::string phoneOf(const Shop& shop, const store::Order& order) {
    if (order.customer)
        for (const store::Customer& customer :
             store::Orders{shop.connection}.customersLike(order.customerName, 100))
            if (customer.id == *order.customer) return customer.phone;
    return "";
}

} // namespace

store::OrderId quote(const Shop& shop, const Draft& draft, std::optional<store::OrderId> instead) {
    return addAside(shop, draft, OrderState::Quoted, instead);
}

store::OrderId park(const Shop& shop, const Draft& draft, std::optional<store::OrderId> instead) {
    return addAside(shop, draft, OrderState::Parked, instead);
}

Draft resume(const Shop& shop, store::OrderId id) {
    const store::Order order = setAside(shop, id);
    store::Catalogue catalogue{shop.connection};
    Draft draft{{}, order.customerName, phoneOf(shop, order), order.due, order.note};
    for (const store::OrderLine& line : order.lines)
        draft.lines.push_back(
            {catalogue.at(line.belt).belt, line.extent, line.quantity, line.said, std::nullopt, {}});
    return draft;
}

Ordered order(const Shop& shop, const Draft& draft, std::optional<store::OrderId> instead) {
    store::Transaction transaction{shop.connection};
    const store::OrderId id = add(shop, draft, OrderState::Open, instead);
    const store::Order added = store::Orders{shop.connection}.at(id);
    Allotment allotment = allot(shop, wantedOf(added, draft));
    std::vector<store::TicketId> gaveWay;
    if (!allotment.unserved.empty()) gaveWay = shelfGivesWay(shop, added);
    if (!gaveWay.empty()) allotment = allot(shop, wantedOf(added, draft));
    demandServed(shop, allotment);
    const std::optional<store::TicketId> ticket = enter(shop, id, allotment);
    keepAdvice(shop, added, draft, allotment);
    settleOrder(shop, id);
    transaction.commit();
    return {id, ticket, allotment.otherWay, std::move(gaveWay)};
}

void handOver(const Shop& shop, store::OrderId id, store::Payment paid) {
    store::Transaction transaction{shop.connection};
    const store::Order order = openOrder(shop, id);
    if (order.state != OrderState::Ready) refuse(Refusal::Why::NotAllCut, order.code);
    store::Orders{shop.connection}.setState(id, OrderState::HandedOver);
    Money amount = Money::minor(0);
    for (const store::OrderLine& line : order.lines)
        if (line.cancelled < line.quantity) amount = amount + line.price.total;
    store::Takings{shop.connection}.add({id, shop.now(), shop.person, paid, amount});
    transaction.commit();
}

} // namespace riband::shop
