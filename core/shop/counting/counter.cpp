#include "core/shop/counting/correct.h"
#include "core/shop/counting/findings.h"
#include "core/shop/counting/late_cut.h"
#include "core/shop/counting/settle.h"
#include "core/shop/demand.h"
#include "core/shop/queries.h"
#include "core/store/void_cuts.h"

#include <algorithm>
#include <set>

namespace riband::shop {

namespace {

using Why = Refusal::Why;

store::Settlement standing(const Shop& shop, store::SettlementId id) {
    const store::Counts counts{shop.connection};
    const std::optional<store::Settlement> settled = counts.settlement(id);
    if (!settled || settled->undoes || counts.isCountered(id)) refuse(Why::AlreadyDone, "");
    return *settled;
}

void counterOne(const Shop& shop, store::Settlement settled, std::optional<store::MovementId> movement) {
    settled.undoes = settled.id;
    settled.movement = movement;
    settled.person = shop.person;
    settled.at = shop.now();
    settled.approved = std::nullopt;
    store::Counts{shop.connection}.add(settled);
}

/// A piece that was booked as missing was put back by it: the loss is countered for good, so there is nothing
/// that a counter-entry could name.
bool putBack(const store::Settlement& settled, const std::optional<store::RecordedMovement>& booked) {
    if (settled.explanation != store::Explanation::Found) return false;
    if (!booked) return true;
    const auto& postings = booked->movement.postings();
    return std::none_of(postings.begin(), postings.end(), [](const store::Posting& posting) {
        return posting.account == store::Account::Found;
    });
}

/// Its pieces: of those the counter-entry changes the width.
std::set<store::PieceId> piecesOf(const store::Movement& movement) {
    std::set<store::PieceId> pieces;
    for (const store::Posting& posting : movement.postings())
        if (posting.account == store::Account::Rack || posting.account == store::Account::Ready)
            pieces.insert(*posting.piece);
    return pieces;
}

/// A later count found the piece as the book says.
bool agreedAfter(const Shop& shop, store::MovementId movement, store::PieceId piece) {
    const std::vector<store::Scan> scans = store::Counts{shop.connection}.scansOf(piece);
    if (scans.empty() || !scans.back().after || *scans.back().after < movement) return false;
    return scans.back().gap() == 0;
}

/// Who measured later put the book right whatever was settled before: taking that back would make it wrong
/// again, and no difference would tell.
void demandLastMeasured(const Shop& shop, const store::RecordedMovement& booked) {
    for (const store::PieceId piece : piecesOf(booked.movement))
        if (agreedAfter(shop, booked.id, piece) ||
            counting::wasMeasuredAfter(store::Ledger{shop.connection}.historyOf(piece), booked.id, piece))
            refuse(Why::ActStays, store::Pieces{shop.connection}.at(piece).code);
}

/// Tickets that were made void on these pieces, if belts of theirs are on no ticket.
std::vector<std::string> stillVoid(const Shop& shop, const std::set<store::PieceId>& pieces) {
    std::set<store::LineId> wanting;
    for (const Missing& row : missing(shop))
        wanting.insert(row.line.id);
    std::vector<std::string> tickets;
    for (const store::PieceId piece : pieces)
        for (const store::VoidCut& cut : store::voidCutsOf(shop.connection, piece))
            if (wanting.contains(cut.line) &&
                std::find(tickets.begin(), tickets.end(), cut.ticket) == tickets.end())
                tickets.push_back(cut.ticket);
    return tickets;
}

/// What the counter-entry takes must be there still, and promised to nobody.
void demandThere(const Shop& shop, const store::Movement& counter) {
    for (const store::Posting& posting : counter.postings()) {
        if (posting.account != store::Account::Rack && posting.account != store::Account::Ready) continue;
        const store::StockPiece piece = store::Pieces{shop.connection}.at(*posting.piece);
        if (piece.extent.count() + posting.amount < 0 || piece.cost + posting.cost < Money::minor(0))
            refuse(Why::AlreadyDone, piece.code);
    }
}

/// The counter-entry of what it booked; nothing if it booked nothing. Refuses what can't be taken back.
std::optional<store::Movement> counterEntryOf(const Shop& shop, const store::Settlement& settled) {
    std::optional<store::RecordedMovement> booked;
    if (settled.movement) booked = store::Ledger{shop.connection}.at(*settled.movement);
    if (putBack(settled, booked)) refuse(Why::ActStays, "");
    if (!booked) return std::nullopt;
    if (booked->movement.about().act == store::Act::Cut) refuse(Why::SettledByCut, "");
    demandLastMeasured(shop, *booked);
    store::Movement counter =
        store::counterOf(*booked, shop.now(), shop.person, booked->movement.about().note);
    demandThere(shop, counter);
    return counter;
}

} // namespace

namespace counting {

void counterSettlementsOf(const Shop& shop, store::MovementId movement) {
    const store::Counts counts{shop.connection};
    for (const store::Settlement& settled : counts.settlementsOf(movement))
        if (!settled.undoes && !counts.isCountered(settled.id)) counterOne(shop, settled, std::nullopt);
}

std::vector<Voided> takeBack(const Shop& shop, store::SettlementId id) {
    const store::Settlement settled = standing(shop, id);
    const std::optional<store::Movement> counter = counterEntryOf(shop, settled);
    if (!counter) {
        counterOne(shop, settled, std::nullopt);
        return {};
    }
    store::Ledger{shop.connection}.record(*counter);
    counterSettlementsOf(shop, *settled.movement);
    std::vector<Voided> gone;
    for (const store::PieceId piece : piecesOf(*counter))
        for (const Voided& each : voided(shop, piece))
            gone.push_back(each);
    return gone;
}

} // namespace counting

Countered counterSettlement(const Shop& shop, store::SettlementId id) {
    store::Transaction transaction{shop.connection};
    const std::optional<store::Settlement> settled = store::Counts{shop.connection}.settlement(id);
    Countered countered{counting::takeBack(shop, id), {}};
    if (settled->movement)
        countered.stayVoid =
            stillVoid(shop, piecesOf(store::Ledger{shop.connection}.at(*settled->movement).movement));
    transaction.commit();
    return countered;
}

std::optional<Refusal> whyNotCountered(const Shop& shop, store::SettlementId id) {
    try {
        counterEntryOf(shop, standing(shop, id));
    } catch (const Refusal& refusal) {
        return refusal;
    }
    return std::nullopt;
}

} // namespace riband::shop
