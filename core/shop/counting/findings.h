#pragma once

#include "core/shop/counting/explain.h"
#include "core/shop/shop.h"

namespace riband::shop {

/// A difference of a count that nobody has settled, with what may have happened, likeliest first.
struct Finding {
    counting::Difference difference;
    std::string place;                      ///< of the count
    std::optional<store::StockPiece> piece; ///< none: a find
    std::string belt;                       ///< designation
    Money value;                            ///< of the gap, at cost; at the price where no cost is known
    bool aboveLimit;                        ///< worth more than the limit
    std::vector<counting::Proposal> proposals;
};

/// Whether settling it so needs the approval of an owner: not where nothing is lost.
bool needsApproval(const Finding& finding, const counting::Proposal& proposal);

/// All of them, the most valuable first: measured twice otherwise than the book, missing at the end of a
/// count, found without label.
std::vector<Finding> findings(const Shop& shop);
/// The one of this scan or missing piece as things stand now, inside the caller's transaction or outside;
/// none if it is settled.
std::optional<Finding> findingOf(const Shop& shop, const counting::Difference& difference);

namespace counting {
/// What still has to be explained of a scan: its gap, or nothing if something was measured and booked of the
/// piece since. Movements that only follow the figures (sales) don't change it, since the gap is from the
/// book of its own moment.
bool wasMeasuredSince(const std::vector<store::RecordedMovement>& life, const store::Scan& scan);
/// The same of what a movement booked of the piece: the book follows a later measurement by now.
bool wasMeasuredAfter(const std::vector<store::RecordedMovement>& life, store::MovementId movement,
                      store::PieceId piece);
/// What counter-entries since the scan gave back of movements before it, or took: the book that the scan was
/// compared with held what never was, and would have had so much more.
std::int64_t undoneSince(const std::vector<store::RecordedMovement>& life, const store::Scan& scan);
/// What cuts booked since the scan took from the piece.
std::vector<std::int64_t> cutsSince(const std::vector<store::RecordedMovement>& life,
                                    const store::Scan& scan);
} // namespace counting

} // namespace riband::shop
