#include "core/shop/shelf_ticket.h"

#include "core/shop/demand.h"
#include "core/shop/offers.h"
#include "core/shop/promises.h"
#include "core/shop/standing.h"
#include "core/store/shelf_cuts.h"

namespace riband::shop {

namespace {

using Why = Refusal::Why;

store::TicketMounting mountingOf(const store::StockPiece& piece, Extent width, std::int64_t belts,
                                 const cutting::Rules& rules, const std::vector<Extent>& listed) {
    const Extent used = rules.trim + (width + rules.kerf) * belts;
    if (used + rules.reserve(width) > piece.extent) refuse(Why::TooNarrow, piece.code);
    const Extent left = piece.extent - used;
    return {.id = store::MountingId{0},
            .piece = piece.id,
            .state = store::MountingState::Planned,
            .cuts = {{std::nullopt, width, belts}},
            .trim = rules.trim,
            .kerf = rules.kerf,
            .left = left,
            .restKept = left >= leastKept(rules, listed),
            .movement = std::nullopt};
}

void leaveOut(const Shop& shop, const store::TicketMounting& mounting) {
    const cutting::Rules rules = store::Settings{shop.connection}.read().rulesFor(mounting.trim.unit());
    const store::StockPiece piece = store::Pieces{shop.connection}.at(mounting.piece);
    const Extent least = leastKept(rules, store::Catalogue{shop.connection}.at(piece.belt).listed);
    if (!store::ShelfCuts{shop.connection}.drop(mounting, least)) refuse(Why::NothingToCut, "");
}

} // namespace

store::TicketId cutForShelf(const Shop& shop, store::PieceId id, Extent width, std::int64_t belts) {
    store::Transaction transaction{shop.connection};
    const store::StockPiece piece = store::Pieces{shop.connection}.at(id);
    if (piece.gone()) refuse(Why::PieceGone, piece.code);
    if (piece.kind == cutting::PieceKind::Ready) refuse(Why::NothingToCut, piece.code);
    demandBelts(piece.extent.unit(), width, belts);
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    const std::vector<Extent> listed = store::Catalogue{shop.connection}.at(piece.belt).listed;
    const std::string promised = Promises::read(shop, settings).codesOn(id);
    if (!promised.empty()) refuse(Why::PieceReserved, promised);
    const store::TicketId ticket = store::Tickets{shop.connection}.add(
        {.id = store::TicketId{0},
         .code = "",
         .order = std::nullopt,
         .state = store::TicketState::Open,
         .made = shop.now(),
         .mountings = {mountingOf(piece, width, belts, settings.rulesFor(piece.extent.unit()), listed)},
         .taken = {}});
    transaction.commit();
    return ticket;
}

void giveUpForShelf(const Shop& shop, store::MountingId id) {
    store::Transaction transaction{shop.connection};
    const store::Ticket ticket = store::Tickets{shop.connection}.ofMounting(id);
    const auto mounting = std::find_if(ticket.mountings.begin(), ticket.mountings.end(),
                                       [&](const store::TicketMounting& each) { return each.id == id; });
    if (mounting->state == store::MountingState::Cut) refuse(Why::AlreadyCut, ticket.code);
    if (mounting->state == store::MountingState::Void) refuse(Why::AlreadyDone, ticket.code);
    if (mounting->onlyForShelf())
        giveUpForShelf(shop, ticket, *mounting);
    else
        leaveOut(shop, *mounting);
    transaction.commit();
}

void giveUpForShelf(const Shop& shop, const store::Ticket& ticket, const store::TicketMounting& mounting) {
    store::Tickets{shop.connection}.setMounting(mounting.id, store::MountingState::Void, std::nullopt);
    settleTicket(shop, ticket.id);
}

} // namespace riband::shop
