#pragma once

#include "core/shop/counting/verdict.h"
#include "core/shop/cut.h"

namespace riband::shop {

/// Counting a place: each verb is one transaction, so that a count can be left at any moment and taken up
/// again by anybody. Sales go on: every scan keeps the book of its own moment.

/// Begins to count a place, or goes on with the count of it that is open.
store::CountId beginCount(const Shop& shop, const std::string& place);

/// What came of a scan.
struct Noted {
    store::ScanId scan;
    counting::Verdict verdict;
    std::string placeWas;       ///< where the book had it until now
    std::vector<Voided> voided; ///< mountings that a corrected width made impossible
};
/// A labelled piece was seen at the place of the count and measured; without a width it was only seen (ready
/// belts, or by eye). The book has it at that place from now on. Within the tolerance the book is corrected
/// at once, but not by eye, and not of a ready belt, which is what its label says. A piece of which the book
/// has nothing must be measured. Refuses CountClosed, UnitMixed, PieceGone.
Noted note(const Shop& shop, store::CountId count, store::PieceId piece, std::optional<Extent> measured,
           store::Method method, const std::string& remark = "");
/// A piece that no label names. It is in no book until it is settled. A belt new to the shop is added.
store::ScanId noteFind(const Shop& shop, store::CountId count, const belt::Belt& belt, Extent measured,
                       store::Method method, const std::string& remark = "");

/// What the book has at the place and nobody has seen since the count began: neither counted anywhere, nor
/// cut, moved elsewhere or used up.
std::vector<store::StockPiece> notSeen(const Shop& shop, store::CountId count);
/// Scanned pieces of the count that want a second measurement.
std::vector<store::StockPiece> toMeasureAgain(const Shop& shop, store::CountId count);

/// The place is done: what was not seen is missing from now on. Refuses MeasureAgain while a piece waits for
/// its second measurement (its code is the detail), CountClosed. Gives the missing pieces.
std::vector<store::PieceId> closeCount(const Shop& shop, store::CountId count);

namespace counting {
Look lookOf(const store::Scan& scan);
/// All measurements of a piece in one count, in their order.
std::vector<Look> looksOf(const std::vector<store::Scan>& scans, store::PieceId piece);
/// The open count with this id; refuses CountClosed.
store::Count openCount(const Shop& shop, store::CountId count);

// The verbs inside the caller's transaction.
store::CountId openAt(const Shop& shop, const std::string& place);
Noted noteIn(const Shop& shop, store::CountId count, store::PieceId piece, std::optional<Extent> measured,
             store::Method method, const std::string& remark);
store::ScanId noteFindIn(const Shop& shop, store::CountId count, const belt::Belt& belt, Extent measured,
                         store::Method method, const std::string& remark);
std::vector<store::PieceId> closeIn(const Shop& shop, store::CountId count);
} // namespace counting

} // namespace riband::shop
