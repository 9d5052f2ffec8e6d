#include "core/shop/receive.h"

#include "core/shop/demand.h"
#include "core/shop/kept.h"
#include "core/shop/promises.h"
#include "core/shop/spread.h"

namespace riband::shop {

namespace {

using store::Account;
using store::Act;

Account sourceOf(cutting::PieceKind kind) {
    return kind == cutting::PieceKind::Sleeve ? Account::Bought : Account::Found;
}

Account homeOf(cutting::PieceKind kind) {
    return kind == cutting::PieceKind::Ready ? Account::Ready : Account::Rack;
}

constexpr Money dearest = Money::minor(10'000'000'000); ///< sleeve

void demandDelivery(const Delivery& delivery, Unit unit) {
    demandExtent(unit, delivery.extent);
    demandQuantity(delivery.sleeves);
    if (delivery.costEach < Money::minor(0) || delivery.costEach > dearest)
        refuse(Refusal::Why::BadQuantity, std::to_string(delivery.costEach.inMinor()));
}

store::NewPiece pieceOf(const Delivery& delivery, store::BeltId belt, Date today) {
    return {.belt = belt,
            .kind = delivery.kind,
            .parent = std::nullopt,
            .place = delivery.place,
            .received = today,
            .made = delivery.made,
            .batch = delivery.batch};
}

void rememberCost(const Shop& shop, store::StockedBelt belt, const Delivery& delivery) {
    const bool told = delivery.kind == cutting::PieceKind::Sleeve && delivery.costEach > Money::minor(0);
    if (!told || belt.sleeveCost == delivery.costEach) return;
    belt.sleeveCost = delivery.costEach;
    store::Catalogue{shop.connection}.change(belt);
}

void bookDelivery(const Shop& shop, const Delivery& delivery, std::vector<store::PieceId>& made) {
    const store::StockedBelt belt = keptBelt(shop, delivery.belt);
    demandDelivery(delivery, belt.unit);
    const Moment now = shop.now();
    const std::int64_t width = delivery.extent.count();
    std::vector<store::Posting> postings;
    for (int i = 0; i < delivery.sleeves; ++i) {
        const store::PieceId piece =
            store::Pieces{shop.connection}.add(pieceOf(delivery, belt.id, dayOf(now)));
        postings.push_back({sourceOf(delivery.kind), piece, {}, -width, -delivery.costEach, {}});
        postings.push_back({homeOf(delivery.kind), piece, {}, width, delivery.costEach, {}});
        made.push_back(piece);
    }
    store::Ledger{shop.connection}.record(
        store::Movement{{Act::Receive, now, shop.person, belt.id, "", {}}, std::move(postings)});
    rememberCost(shop, belt, delivery);
}

/// Refuses what the piece has not, or has promised.
void demandScrap(const Shop& shop, const store::StockPiece& piece, Extent extent) {
    demandExtent(piece.extent.unit(), extent);
    if (extent > piece.extent) refuse(Refusal::Why::MoreThanThere, piece.code);
    const bool ready = piece.kind == cutting::PieceKind::Ready;
    if (ready && extent != piece.extent) refuse(Refusal::Why::BadWidth, piece.code);
    const Promises promises = Promises::read(shop, store::Settings{shop.connection}.read());
    if (!promises.canBeKept(piece.id, piece.extent - extent))
        refuse(Refusal::Why::PieceReserved, promises.codesOn(piece.id));
}

store::Movement scrapMovement(const Shop& shop, const store::StockPiece& piece, Extent extent,
                              store::ScrapReason reason, const std::string& note) {
    const std::int64_t width = extent.count();
    const Money cost = spread(piece.cost, {width, piece.extent.count() - width}).front();
    return store::Movement{{Act::Scrap, shop.now(), shop.person, piece.belt, note, {}},
                           {{homeOf(piece.kind), piece.id, {}, -width, -cost, {}},
                            {Account::Scrap, piece.id, {}, width, cost, reason}}};
}

} // namespace

std::vector<store::PieceId> receive(const Shop& shop, const std::vector<Delivery>& deliveries) {
    store::Transaction transaction{shop.connection};
    std::vector<store::PieceId> made;
    for (const Delivery& delivery : deliveries)
        bookDelivery(shop, delivery, made);
    transaction.commit();
    return made;
}

void scrap(const Shop& shop, store::PieceId id, Extent extent, store::ScrapReason reason,
           const std::string& note) {
    store::Transaction transaction{shop.connection};
    const store::StockPiece piece = store::Pieces{shop.connection}.at(id);
    if (piece.gone()) refuse(Refusal::Why::PieceGone, piece.code);
    demandScrap(shop, piece, extent);
    store::Ledger{shop.connection}.record(scrapMovement(shop, piece, extent, reason, note));
    if (piece.kind == cutting::PieceKind::Sleeve && extent < piece.extent)
        store::Pieces{shop.connection}.becomeRemnant(id);
    transaction.commit();
}

void move(const Shop& shop, store::PieceId id, const std::string& place) {
    store::Transaction transaction{shop.connection};
    const store::StockPiece piece = store::Pieces{shop.connection}.at(id);
    if (piece.gone()) refuse(Refusal::Why::PieceGone, piece.code);
    store::Pieces{shop.connection}.move(id, place);
    transaction.commit();
}

} // namespace riband::shop
