#include "core/shop/counting/correct.h"
#include "core/shop/counting/late_cut.h"
#include "core/shop/counting/settle.h"
#include "core/shop/demand.h"

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

/// What the counter-entry takes must be there still, and promised to nobody.
void demandThere(const Shop& shop, const store::Movement& counter) {
    for (const store::Posting& posting : counter.postings()) {
        if (posting.account != store::Account::Rack && posting.account != store::Account::Ready) continue;
        const store::StockPiece piece = store::Pieces{shop.connection}.at(*posting.piece);
        if (piece.extent.count() + posting.amount < 0 || piece.cost + posting.cost < Money::minor(0))
            refuse(Why::AlreadyDone, piece.code);
    }
}

} // namespace

namespace counting {

void counterSettlementsOf(const Shop& shop, store::MovementId movement) {
    const store::Counts counts{shop.connection};
    for (const store::Settlement& settled : counts.settlementsOf(movement))
        if (!settled.undoes && !counts.isCountered(settled.id)) counterOne(shop, settled, std::nullopt);
}

void takeBack(const Shop& shop, store::SettlementId id) {
    const store::Settlement settled = standing(shop, id);
    if (!settled.movement) {
        counterOne(shop, settled, std::nullopt);
        return;
    }
    store::Ledger ledger{shop.connection};
    const store::RecordedMovement booked = ledger.at(*settled.movement);
    if (booked.movement.about().act == store::Act::Cut) refuse(Why::SettledByCut, "");
    const store::Movement counter =
        store::counterOf(booked, shop.now(), shop.person, booked.movement.about().note);
    demandThere(shop, counter);
    ledger.record(counter);
    counterSettlementsOf(shop, booked.id);
    for (const store::Posting& posting : counter.postings())
        if (posting.account == store::Account::Rack) voided(shop, *posting.piece);
}

} // namespace counting

void counterSettlement(const Shop& shop, store::SettlementId id) {
    store::Transaction transaction{shop.connection};
    counting::takeBack(shop, id);
    transaction.commit();
}

} // namespace riband::shop
