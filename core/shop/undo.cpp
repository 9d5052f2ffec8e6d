#include "core/shop/undo.h"

#include "core/shop/cut.h"
#include "core/shop/delivery.h"

#include "core/shop/counting/settle.h"
#include "core/shop/demand.h"
#include "core/shop/standing.h"
#include "core/store/upkeep.h"

namespace riband::shop {

namespace {

using store::Account;
using Why = Refusal::Why;

store::TicketMounting cutMounting(const store::Ticket& ticket, store::MountingId id) {
    for (const store::TicketMounting& mounting : ticket.mountings)
        if (mounting.id == id && mounting.state == store::MountingState::Cut) return mounting;
    refuse(Why::NothingToCut, ticket.code);
}

/// The last movement of a piece that stands; refused if it is another than this one. What was undone since,
/// and its counter-entry, do not count.
store::RecordedMovement lastOf(const Shop& shop, store::PieceId piece, store::MovementId movement) {
    std::vector<store::RecordedMovement> life = store::Ledger{shop.connection}.historyOf(piece);
    std::set<store::MovementId> undone;
    for (const store::RecordedMovement& recorded : life)
        if (const auto mistake = recorded.movement.about().undoes) undone.insert({*mistake, recorded.id});
    std::erase_if(life, [&](const auto& recorded) { return undone.contains(recorded.id); });
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

/// A sleeve is one again if all that it came with is there.
void closeAgain(const Shop& shop, store::PieceId id) {
    store::Pieces pieces{shop.connection};
    const store::StockPiece piece = pieces.at(id);
    if (piece.kind != cutting::PieceKind::Remnant || piece.parent) return;
    const store::Movement first = store::Ledger{shop.connection}.historyOf(id).front().movement;
    const auto bought = [&](const store::Posting& posting) {
        return posting.piece == id && posting.account == Account::Bought &&
               -posting.amount == piece.extent.count();
    };
    const auto& postings = first.postings();
    if (std::any_of(postings.begin(), postings.end(), bought)) pieces.becomeSleeve(id);
}

bool canBeCountered(store::Act act) {
    using store::Act;
    return act == Act::Receive || act == Act::Cut || act == Act::Scrap;
}

std::set<store::PieceId> piecesOf(const store::Movement& movement) {
    std::set<store::PieceId> pieces;
    for (const store::Posting& posting : movement.postings())
        if (posting.account == Account::Rack || posting.account == Account::Ready)
            pieces.insert(*posting.piece);
    return pieces;
}

/// What came of an expected delivery has not come.
void expectAgain(const Shop& shop, const store::RecordedMovement& came) {
    store::Goods goods{shop.connection};
    const std::set<store::PieceId> pieces = piecesOf(came.movement);
    const auto delivery = goods.deliveryOf(*pieces.begin());
    if (!delivery) return;
    const auto expected = goods.at(*delivery).expected;
    if (!expected) return;
    const store::StockedBelt belt = store::Catalogue{shop.connection}.at(came.movement.about().belt);
    for (const store::ArrivedPiece& arrived : goods.piecesOf(*delivery))
        if (pieces.contains(arrived.piece)) {
            const std::int64_t width = arrivalOf(came.movement, arrived.piece).amount;
            Delivery line{.belt = belt.belt, .extent = Extent::of(belt.unit, width)};
            line.labelled = arrived.labelled;
            countArrived(shop, *expected, line, -1);
        }
}

/// In the caller's transaction; of a movement that no mounting belongs to.
store::MovementId counter(const Shop& shop, const store::RecordedMovement& mistake) {
    const std::set<store::PieceId> pieces = piecesOf(mistake.movement);
    for (const store::PieceId piece : pieces)
        lastOf(shop, piece, mistake.id);
    if (mistake.movement.about().act == store::Act::Receive) expectAgain(shop, mistake);
    const store::MovementId undone =
        store::Ledger{shop.connection}.record(store::counterOf(mistake, shop.now(), shop.person, ""));
    for (const store::PieceId piece : pieces) {
        demandPromisesKept(shop, piece);
        closeAgain(shop, piece);
    }
    return undone;
}

store::RecordedMovement counterable(const Shop& shop, store::MovementId id) {
    const store::Ledger ledger{shop.connection};
    store::RecordedMovement mistake = ledger.at(id);
    if (const auto undone = ledger.undoneBy(id)) refuse(Why::UndoneAlready, std::to_string(undone->value()));
    if (!canBeCountered(mistake.movement.about().act)) refuse(Why::ActStays, std::to_string(id.value()));
    return mistake;
}

store::MovementId takeBackCut(const Shop& shop, store::MountingId id);

store::MovementId undoInside(const Shop& shop, store::MovementId movement) {
    const store::RecordedMovement mistake = counterable(shop, movement);
    if (const auto mounting = store::Tickets{shop.connection}.mountingCutBy(movement))
        return takeBackCut(shop, *mounting);
    // A cut that settled a count without a mounting of its own: its order line was counted with it.
    if (mistake.movement.about().act == store::Act::Cut &&
        !store::Counts{shop.connection}.settlementsOf(movement).empty())
        refuse(Why::ActStays, std::to_string(movement.value()));
    return counter(shop, mistake);
}

store::MovementId takeBackCut(const Shop& shop, store::MountingId id) {
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
    closeAgain(shop, mounting.piece);
    return undone;
}

} // namespace

store::MovementId undoCut(const Shop& shop, store::MountingId id) {
    store::Transaction transaction{shop.connection};
    const store::MovementId undone = takeBackCut(shop, id);
    transaction.commit();
    return undone;
}

store::MovementId undo(const Shop& shop, store::MovementId movement) {
    store::Transaction transaction{shop.connection};
    const store::MovementId undone = undoInside(shop, movement);
    transaction.commit();
    return undone;
}

void undoMove(const Shop& shop, store::PieceId id) {
    store::Transaction transaction{shop.connection};
    const store::StockPiece piece = store::Pieces{shop.connection}.at(id);
    if (piece.gone()) refuse(Why::PieceGone, piece.code);
    store::Upkeep upkeep{shop.connection};
    const std::vector<store::Relocation> moves = upkeep.relocationsOf(id);
    if (moves.empty()) refuse(Why::ActStays, piece.code);
    upkeep.relocate(id, moves.back().from, shop.person, shop.now());
    transaction.commit();
}

std::optional<Refusal> whyNotUndone(const Shop& shop, store::MovementId movement) {
    const store::Transaction tried{shop.connection}; // rolled back
    try {
        undoInside(shop, movement);
        return std::nullopt;
    } catch (const Refusal& refusal) {
        return refusal;
    }
}

} // namespace riband::shop
