#include "core/shop/counting/correct.h"

#include "core/shop/demand.h"
#include "core/shop/spread.h"
#include "core/shop/standing.h"

namespace riband::shop::counting {

namespace {

using cutting::PieceKind;
using store::Account;
using Why = Refusal::Why;

Account homeOf(const store::StockPiece& piece) {
    return piece.kind == PieceKind::Ready ? Account::Ready : Account::Rack;
}

/// The cost of so much width of the piece.
Money costOf(const store::StockPiece& piece, std::int64_t width) {
    if (width > piece.extent.count()) refuse(Why::MoreThanThere, piece.code);
    if (piece.gone()) return Money::minor(0);
    return spread(piece.cost, {width, piece.extent.count() - width}).front();
}

void demandFree(const store::StockPiece& piece) {
    if (piece.kind == PieceKind::Ready && !piece.reserved.isNone()) refuse(Why::PieceReserved, piece.code);
}

store::MovementId record(const Shop& shop, store::BeltId belt, const std::string& note,
                         std::vector<store::Posting> postings) {
    return store::Ledger{shop.connection}.record(
        store::Movement{{store::Act::Correct, shop.now(), shop.person, belt, note, {}}, std::move(postings)});
}

} // namespace

store::MovementId correct(const Shop& shop, const store::StockPiece& piece, std::int64_t change,
                          Account account, const std::string& note) {
    demandFree(piece);
    const Money cost = change < 0 ? costOf(piece, -change) : Money::minor(0);
    return record(
        shop, piece.belt, note,
        {{homeOf(piece), piece.id, {}, change, -cost, {}}, {account, piece.id, {}, -change, cost, {}}});
}

store::MovementId correctWaste(const Shop& shop, const store::StockPiece& piece, std::int64_t change,
                               Account account, std::int64_t width, const std::string& note) {
    demandFree(piece);
    const Money cost = costOf(piece, -change);
    std::vector<store::Posting> postings{{homeOf(piece), piece.id, {}, change, -cost, {}},
                                         {account, piece.id, {}, width, cost, {}}};
    if (-change != width)
        postings.push_back({Account::Difference, piece.id, {}, -change - width, Money::minor(0), {}});
    return record(shop, piece.belt, note, std::move(postings));
}

store::MovementId correctSwap(const Shop& shop, const store::StockPiece& from, const store::StockPiece& to,
                              std::int64_t width, std::int64_t rest, const std::string& note) {
    demandFree(from);
    demandFree(to);
    const Money cost = costOf(from, width);
    std::vector<store::Posting> postings{{homeOf(from), from.id, {}, -width - rest, -cost, {}},
                                         {homeOf(to), to.id, {}, width, cost, {}}};
    if (rest != 0) postings.push_back({Account::Difference, from.id, {}, rest, Money::minor(0), {}});
    return record(shop, from.belt, note, std::move(postings));
}

std::pair<store::PieceId, store::MovementId> bookFind(const Shop& shop, store::BeltId belt, Extent extent,
                                                      const std::string& place, const std::string& note) {
    const store::PieceId piece = store::Pieces{shop.connection}.add({.belt = belt,
                                                                     .kind = PieceKind::Remnant,
                                                                     .parent = std::nullopt,
                                                                     .place = place,
                                                                     .received = dayOf(shop.now()),
                                                                     .made = std::nullopt,
                                                                     .batch = ""});
    const std::int64_t width = extent.count();
    return {piece, record(shop, belt, note,
                          {{Account::Found, piece, {}, -width, Money::minor(0), {}},
                           {Account::Rack, piece, {}, width, Money::minor(0), {}}})};
}

std::vector<Voided> voided(const Shop& shop, store::PieceId piece) { return voidImpossible(shop, piece); }

} // namespace riband::shop::counting
