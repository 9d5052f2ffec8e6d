#include "core/shop/stock.h"

#include "core/shop/demand.h"
#include "core/shop/limits.h"
#include "core/shop/promises.h"
#include "core/shop/spread.h"
#include "core/store/upkeep.h"

namespace riband::shop {

namespace {

using store::Account;
using store::Act;
using Why = Refusal::Why;

Account homeOf(const store::StockPiece& piece) {
    return piece.kind == cutting::PieceKind::Ready ? Account::Ready : Account::Rack;
}

store::StockPiece presentPiece(const Shop& shop, store::PieceId id) {
    store::StockPiece piece = store::Pieces{shop.connection}.at(id);
    if (piece.gone()) refuse(Why::PieceGone, piece.code);
    return piece;
}

/// Refuses what the piece has not, or has promised.
void demandFree(const Shop& shop, const store::StockPiece& piece, Extent extent) {
    demandExtent(piece.extent.unit(), extent);
    if (extent > piece.extent) refuse(Why::MoreThanThere, piece.code);
    const bool ready = piece.kind == cutting::PieceKind::Ready;
    if (ready && extent != piece.extent) refuse(Why::BadWidth, piece.code);
    const Promises promises = Promises::read(shop, store::Settings{shop.connection}.read());
    if (!promises.canBeKept(piece.id, piece.extent - extent))
        refuse(Why::PieceReserved, promises.codesOn(piece.id));
}

/// The share of the cost that goes with a part of the piece.
Money costOf(const store::StockPiece& piece, Extent part) {
    return spread(piece.cost, {part.count(), piece.extent.count() - part.count()}).front();
}

store::Movement scrapMovement(const Shop& shop, const store::StockPiece& piece, Extent extent,
                              store::ScrapReason reason, const std::string& note) {
    const std::int64_t width = extent.count();
    const Money cost = costOf(piece, extent);
    return store::Movement{{Act::Scrap, shop.now(), shop.person, piece.belt, note, {}},
                           {{homeOf(piece), piece.id, {}, -width, -cost, {}},
                            {Account::Scrap, piece.id, {}, width, cost, reason}}};
}

void put(const Shop& shop, const store::StockPiece& piece, const std::string& place) {
    if (piece.gone()) refuse(Why::PieceGone, piece.code);
    if (piece.place == place) return;
    demandPlace(shop, place);
    store::Upkeep{shop.connection}.relocate(piece.id, place, shop.person, shop.now());
}

} // namespace

Spare spareOf(const Shop& shop, const store::StockPiece& piece) {
    const Promises promises = Promises::read(shop, store::Settings{shop.connection}.read());
    return {promises.free(piece, Extent::none(piece.extent.unit())), promises.codesOn(piece.id)};
}

store::MovementId scrap(const Shop& shop, store::PieceId id, Extent extent, store::ScrapReason reason,
                        const std::string& note, std::optional<std::int64_t> grams) {
    store::Transaction transaction{shop.connection};
    const store::StockPiece piece = presentPiece(shop, id);
    demandFree(shop, piece, extent);
    constexpr std::int64_t heaviest = 10'000'000; // 10 t
    if (grams && (*grams < 1 || *grams > heaviest)) refuse(Why::BadQuantity, std::to_string(*grams));
    const store::MovementId movement =
        store::Ledger{shop.connection}.record(scrapMovement(shop, piece, extent, reason, note));
    if (grams) store::Upkeep{shop.connection}.weigh(movement, *grams);
    if (piece.kind == cutting::PieceKind::Sleeve && extent < piece.extent)
        store::Pieces{shop.connection}.becomeRemnant(id);
    transaction.commit();
    return movement;
}

void move(const Shop& shop, store::PieceId id, const std::string& place) {
    store::Transaction transaction{shop.connection};
    put(shop, store::Pieces{shop.connection}.at(id), place);
    transaction.commit();
}

void moveAll(const Shop& shop, const std::vector<Step>& steps) {
    store::Transaction transaction{shop.connection};
    for (const Step& step : steps) {
        const auto piece = store::Pieces{shop.connection}.byCode(step.piece);
        if (!piece) refuse(Why::NoSuchPiece, step.piece);
        put(shop, *piece, step.place);
    }
    transaction.commit();
}

store::PieceId split(const Shop& shop, store::PieceId id, Extent apart, const std::string& place) {
    store::Transaction transaction{shop.connection};
    const store::StockPiece piece = presentPiece(shop, id);
    if (piece.kind == cutting::PieceKind::Ready) refuse(Why::BadWidth, piece.code);
    demandFree(shop, piece, apart);
    if (apart == piece.extent) refuse(Why::BadWidth, piece.code);
    const store::PieceId made = store::Pieces{shop.connection}.add({.belt = piece.belt,
                                                                    .kind = cutting::PieceKind::Remnant,
                                                                    .parent = piece.id,
                                                                    .place = place,
                                                                    .received = piece.received,
                                                                    .made = piece.made,
                                                                    .batch = piece.batch});
    const Money cost = costOf(piece, apart);
    store::Ledger{shop.connection}.record(
        store::Movement{{Act::Cut, shop.now(), shop.person, piece.belt, "", {}},
                        {{Account::Rack, piece.id, {}, -apart.count(), -cost, {}},
                         {Account::Rack, made, {}, apart.count(), cost, {}}}});
    store::Pieces{shop.connection}.becomeRemnant(id);
    transaction.commit();
    return made;
}

} // namespace riband::shop
