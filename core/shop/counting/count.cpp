#include "core/shop/counting/count.h"

#include "core/shop/counting/correct.h"
#include "core/shop/demand.h"
#include "core/shop/kept.h"
#include "core/shop/limits.h"
#include "core/store/upkeep.h"

#include <algorithm>
#include <map>

namespace riband::shop {

using counting::Look;
using counting::Verdict;
using Why = Refusal::Why;

namespace counting {

Look lookOf(const store::Scan& scan) { return {scan.gap(), scan.method, scan.book.isNone()}; }

std::vector<Look> looksOf(const std::vector<store::Scan>& scans, store::PieceId piece) {
    std::vector<Look> looks;
    for (const store::Scan& scan : scans)
        if (scan.piece == piece) looks.push_back(lookOf(scan));
    return looks;
}

store::Count openCount(const Shop& shop, store::CountId id) {
    const std::optional<store::Count> count = store::Counts{shop.connection}.find(id);
    if (!count || count->closed) refuse(Why::CountClosed, count ? count->place : "");
    return *count;
}

} // namespace counting

namespace {

std::vector<store::PieceId> piecesAt(const Shop& shop, const std::string& place) {
    std::vector<store::PieceId> pieces;
    for (const store::StockPiece& piece : store::Pieces{shop.connection}.all())
        if (piece.place == place) pieces.push_back(piece.id);
    return pieces;
}

store::Scan scanOf(const Shop& shop, const store::Count& count, const store::StockPiece& piece,
                   Extent measured, store::Method method, const std::string& remark) {
    return {.id = store::ScanId{0},
            .count = count.id,
            .at = shop.now(),
            .person = shop.person,
            .piece = piece.id,
            .belt = piece.belt,
            .book = piece.extent,
            .measured = measured,
            .method = method,
            .after = store::Ledger{shop.connection}.last(),
            .placeWas = piece.place,
            .remark = remark};
}

/// Within the tolerance no questions are asked; what a ready belt is, its label says.
std::vector<Voided> settleWithin(const Shop& shop, const store::Scan& scan, const store::StockPiece& piece) {
    std::optional<store::MovementId> movement;
    const bool corrects = scan.method != store::Method::Eye && piece.kind != cutting::PieceKind::Ready;
    if (corrects) movement = counting::correct(shop, piece, scan.gap(), store::Account::Difference, "count");
    store::Counts{shop.connection}.add(store::Settlement{.id = store::SettlementId{0},
                                                         .count = scan.count,
                                                         .scan = scan.id,
                                                         .piece = piece.id,
                                                         .explanation = store::Explanation::Measuring,
                                                         .movement = movement,
                                                         .person = shop.person,
                                                         .at = scan.at,
                                                         .approved = {},
                                                         .undoes = {}});
    return movement ? counting::voided(shop, piece.id) : std::vector<Voided>{};
}

/// Somebody had it in hand since: it was counted, or cut.
bool wasSeen(const Shop& shop, store::PieceId piece, Moment since) {
    const std::vector<store::Scan> scans = store::Counts{shop.connection}.scansOf(piece);
    if (!scans.empty() && scans.back().at >= since) return true;
    const auto life = store::Ledger{shop.connection}.historyOf(piece);
    return std::any_of(life.begin(), life.end(), [&](const store::RecordedMovement& recorded) {
        const store::Movement::About& about = recorded.movement.about();
        return about.at >= since && (about.act == store::Act::Cut || about.act == store::Act::Miscut);
    });
}

} // namespace

namespace counting {

store::CountId openAt(const Shop& shop, const std::string& place) {
    store::Counts counts{shop.connection};
    if (const std::optional<store::Count> open = counts.openAt(place)) return open->id;
    demandPlace(shop, place);
    return counts.begin(place, shop.person, shop.now(), piecesAt(shop, place));
}

Noted noteIn(const Shop& shop, store::CountId id, store::PieceId pieceId, std::optional<Extent> measured,
             store::Method method, const std::string& remark) {
    const store::Count count = counting::openCount(shop, id);
    const store::StockPiece piece = store::Pieces{shop.connection}.at(pieceId);
    if (!measured && piece.gone()) refuse(Why::PieceGone, piece.code);
    if (!measured) method = store::Method::Eye;
    if (measured) demandExtent(piece.extent.unit(), *measured);
    store::Counts counts{shop.connection};
    store::Scan scan = scanOf(shop, count, piece, measured.value_or(piece.extent), method, remark);
    scan.id = counts.add(scan);
    if (piece.place != count.place)
        store::Upkeep{shop.connection}.relocate(piece.id, count.place, shop.person, scan.at);
    const auto rules = store::Settings{shop.connection}.read().counting;
    const Verdict verdict =
        counting::verdictOf(counting::looksOf(counts.scansOf(id), piece.id), rules, piece.extent.unit());
    std::vector<Voided> voided;
    if (verdict == Verdict::Within) voided = settleWithin(shop, scan, piece);
    return {scan.id, verdict, piece.place, std::move(voided)};
}

store::ScanId noteFindIn(const Shop& shop, store::CountId id, const belt::Belt& belt, Extent measured,
                         store::Method method, const std::string& remark) {
    const store::Count count = counting::openCount(shop, id);
    const store::StockedBelt kept = keptBelt(shop, belt);
    demandExtent(kept.unit, measured);
    return store::Counts{shop.connection}.add(store::Scan{.id = store::ScanId{0},
                                                          .count = count.id,
                                                          .at = shop.now(),
                                                          .person = shop.person,
                                                          .piece = {},
                                                          .belt = kept.id,
                                                          .book = Extent::none(kept.unit),
                                                          .measured = measured,
                                                          .method = method,
                                                          .after = store::Ledger{shop.connection}.last(),
                                                          .placeWas = "",
                                                          .remark = remark});
}

std::vector<store::PieceId> closeIn(const Shop& shop, store::CountId id) {
    openCount(shop, id);
    const std::vector<store::StockPiece> again = toMeasureAgain(shop, id);
    if (!again.empty()) refuse(Why::MeasureAgain, again.front().code);
    std::vector<store::PieceId> missing;
    for (const store::StockPiece& piece : notSeen(shop, id))
        missing.push_back(piece.id);
    store::Counts{shop.connection}.close(id, shop.now(), missing);
    return missing;
}

} // namespace counting

store::CountId beginCount(const Shop& shop, const std::string& place) {
    store::Transaction transaction{shop.connection};
    const store::CountId count = counting::openAt(shop, place);
    transaction.commit();
    return count;
}

std::vector<store::StockPiece> notSeen(const Shop& shop, store::CountId id) {
    store::Counts counts{shop.connection};
    const std::optional<store::Count> count = counts.find(id);
    std::vector<store::StockPiece> missing;
    if (!count) return missing;
    for (const store::PieceId expected : counts.expected(id)) {
        const store::StockPiece piece = store::Pieces{shop.connection}.at(expected);
        if (piece.gone() || piece.place != count->place || wasSeen(shop, expected, count->started)) continue;
        missing.push_back(piece);
    }
    return missing;
}

std::vector<store::StockPiece> toMeasureAgain(const Shop& shop, store::CountId id) {
    const std::vector<store::Scan> scans = store::Counts{shop.connection}.scansOf(id);
    const auto rules = store::Settings{shop.connection}.read().counting;
    std::map<store::PieceId, std::vector<Look>> looks;
    for (const store::Scan& scan : scans)
        if (scan.piece) looks[*scan.piece].push_back(counting::lookOf(scan));
    std::vector<store::StockPiece> again;
    for (const auto& [id_, seen] : looks) {
        const store::StockPiece piece = store::Pieces{shop.connection}.at(id_);
        if (counting::verdictOf(seen, rules, piece.extent.unit()) == Verdict::Again) again.push_back(piece);
    }
    return again;
}

Noted note(const Shop& shop, store::CountId count, store::PieceId piece, std::optional<Extent> measured,
           store::Method method, const std::string& remark) {
    store::Transaction transaction{shop.connection};
    Noted noted = counting::noteIn(shop, count, piece, measured, method, remark);
    transaction.commit();
    return noted;
}

store::ScanId noteFind(const Shop& shop, store::CountId count, const belt::Belt& belt, Extent measured,
                       store::Method method, const std::string& remark) {
    store::Transaction transaction{shop.connection};
    const store::ScanId scan = counting::noteFindIn(shop, count, belt, measured, method, remark);
    transaction.commit();
    return scan;
}

std::vector<store::PieceId> closeCount(const Shop& shop, store::CountId count) {
    store::Transaction transaction{shop.connection};
    std::vector<store::PieceId> missing = counting::closeIn(shop, count);
    transaction.commit();
    return missing;
}

} // namespace riband::shop
