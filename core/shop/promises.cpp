#include "core/shop/promises.h"

#include <algorithm>

namespace riband::shop {

namespace {

Extent widestOf(const std::vector<store::TicketCut>& cuts, Unit unit) {
    Extent widest = Extent::none(unit);
    for (const store::TicketCut& cut : cuts)
        widest = std::max(widest, cut.extent);
    return widest;
}

/// What the promises of a piece take together, and what must stay whichever of them is cut last.
struct Claim {
    Extent width, stays;
};

Claim claimOf(const std::vector<Promise>& promises, Unit unit) {
    Claim claim{Extent::none(unit), Extent::none(unit)};
    for (const Promise& promise : promises) {
        claim.width = claim.width + promise.width;
        claim.stays = std::max(claim.stays, promise.stays);
    }
    return claim;
}

Extent lessOrNone(Extent whole, Extent part) {
    return part < whole ? whole - part : Extent::none(whole.unit());
}

} // namespace

Promise promiseOf(const store::TicketMounting& mounting, const store::Ticket& ticket,
                  const cutting::Rules& rules) {
    Extent width = mounting.trim;
    for (const store::TicketCut& cut : mounting.cuts)
        width = width + (cut.extent + mounting.kerf) * cut.count;
    return {.mounting = mounting.id,
            .ticket = ticket.id,
            .code = ticket.code,
            .piece = mounting.piece,
            .width = width,
            .stays = rules.reserve(widestOf(mounting.cuts, mounting.trim.unit())),
            .cuts = mounting.cuts};
}

namespace {

template <class Use>
void forPlanned(const Shop& shop, const Use& use) {
    for (const store::Ticket& ticket : store::Tickets{shop.connection}.inState(store::TicketState::Open))
        for (const store::TicketMounting& mounting : ticket.mountings)
            if (mounting.state == store::MountingState::Planned) use(ticket, mounting);
}

} // namespace

Promises Promises::read(const Shop& shop, const store::ShopSettings& settings) {
    Promises promises;
    forPlanned(shop, [&](const store::Ticket& ticket, const store::TicketMounting& mounting) {
        promises.add(promiseOf(mounting, ticket, settings.rulesFor(mounting.trim.unit())));
    });
    return promises;
}

Promises Promises::toCustomers(const Shop& shop, const store::ShopSettings& settings) {
    Promises promises;
    forPlanned(shop, [&](const store::Ticket& ticket, store::TicketMounting mounting) {
        if (mounting.onlyForShelf()) return;
        std::erase_if(mounting.cuts, [](const store::TicketCut& cut) { return !cut.line; });
        promises.add(promiseOf(mounting, ticket, settings.rulesFor(mounting.trim.unit())));
    });
    return promises;
}

void Promises::add(Promise promise) { byPiece_[promise.piece].push_back(std::move(promise)); }

const std::vector<Promise>& Promises::on(store::PieceId piece) const {
    static const std::vector<Promise> nothing;
    const auto found = byPiece_.find(piece);
    return found == byPiece_.end() ? nothing : found->second;
}

Extent Promises::free(const store::StockPiece& piece, Extent end) const {
    const Claim claim = claimOf(on(piece.id), piece.extent.unit());
    const Extent width = lessOrNone(piece.extent, claim.width);
    return end < claim.stays ? lessOrNone(width, claim.stays - end) : width;
}

bool Promises::canBeKept(store::PieceId piece, Extent extent) const {
    const std::vector<Promise>& promises = on(piece);
    if (promises.empty()) return true;
    const Claim claim = claimOf(promises, extent.unit());
    return claim.width + claim.stays <= extent;
}

std::string Promises::codesOn(store::PieceId piece) const {
    std::string codes;
    for (const Promise& promise : on(piece))
        if (codes.find(promise.code) == std::string::npos) codes += (codes.empty() ? "" : " ") + promise.code;
    return codes;
}

std::map<store::LineId, std::int64_t> Promises::belts() const {
    std::map<store::LineId, std::int64_t> belts;
    for (const auto& [piece, promises] : byPiece_)
        for (const Promise& promise : promises)
            for (const store::TicketCut& cut : promise.cuts)
                if (cut.line) belts[*cut.line] += cut.count;
    return belts;
}

} // namespace riband::shop
