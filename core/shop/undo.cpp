#include "core/shop/cut.h"

#include "core/shop/counting/settle.h"
#include "core/shop/demand.h"
#include "core/shop/standing.h"

namespace riband::shop {

namespace {

using store::Account;
using Why = Refusal::Why;

store::TicketMounting cutMounting(const store::Ticket& ticket, store::MountingId id) {
    for (const store::TicketMounting& mounting : ticket.mountings)
        if (mounting.id == id && mounting.state == store::MountingState::Cut) return mounting;
    refuse(Why::NothingToCut, ticket.code);
}

/// The last movement of a piece; refused if it is another than this one.
store::RecordedMovement lastOf(const Shop& shop, store::PieceId piece, store::MovementId movement) {
    const std::vector<store::RecordedMovement> life = store::Ledger{shop.connection}.historyOf(piece);
    if (life.empty() || life.back().id != movement)
        refuse(Why::AlreadyDone, store::Pieces{shop.connection}.at(piece).code);
    return life.back();
}

void demandUntouched(const Shop& shop, const store::RecordedMovement& cut) {
    for (const store::Posting& posting : cut.movement.postings())
        if (posting.account == Account::Ready) lastOf(shop, *posting.piece, cut.id);
}

/// The belts of the mounting are waiting again.
std::set<store::OrderId> takeBack(const Shop& shop, const store::TicketMounting& mounting) {
    store::Orders orders{shop.connection};
    std::set<store::OrderId> touched;
    for (const store::TicketCut& cut : mounting.cuts) {
        if (!cut.line) continue;
        const store::Order order = openOrder(shop, orders.orderOf(*cut.line));
        store::OrderLine line = lineOf(order, *cut.line);
        if (line.extent != cut.extent || line.cut < cut.count) refuse(Why::AlreadyDone, order.code);
        line.cut -= cut.count;
        orders.changeLine(line);
        touched.insert(order.id);
    }
    return touched;
}

void demandPromisesKept(const Shop& shop, store::PieceId id) {
    const store::StockPiece piece = store::Pieces{shop.connection}.at(id);
    const Promises promises = Promises::read(shop, store::Settings{shop.connection}.read());
    if (!promises.canBeKept(id, piece.extent)) refuse(Why::PieceReserved, promises.codesOn(id));
}

} // namespace

store::MovementId undoCut(const Shop& shop, store::MountingId id) {
    store::Transaction transaction{shop.connection};
    store::Tickets tickets{shop.connection};
    const store::Ticket ticket = tickets.ofMounting(id);
    const store::TicketMounting mounting = cutMounting(ticket, id);
    const store::RecordedMovement cut = lastOf(shop, mounting.piece, *mounting.movement);
    if (cut.movement.about().act != store::Act::Cut) refuse(Why::NothingToCut, ticket.code);
    demandUntouched(shop, cut);
    const std::set<store::OrderId> orders = takeBack(shop, mounting);
    const store::MovementId undone =
        store::Ledger{shop.connection}.record(store::counterOf(cut, shop.now(), shop.person, ""));
    counting::counterSettlementsOf(shop, cut.id);
    tickets.setMounting(id, store::MountingState::Planned, std::nullopt);
    settleTicket(shop, ticket.id);
    demandPromisesKept(shop, mounting.piece);
    for (const store::OrderId order : orders)
        settleOrder(shop, order);
    transaction.commit();
    return undone;
}

} // namespace riband::shop
