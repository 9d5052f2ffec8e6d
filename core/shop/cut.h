#pragma once

#include "core/shop/order.h"

namespace riband::shop {

/// What really happened at the cutter in one mounting.
struct CutRecord {
    /// Belts cut for the shelf from the rest, in the same mounting, over those on the ticket.
    struct ForShelf {
        Extent extent;
        std::int64_t count;
    };
    store::MountingId mounting;
    std::optional<Extent> left{}; ///< measured; nothing: as it must be by the figures
    std::optional<bool>
        keepRest{};      ///< back to the rack, or thrown away; nothing: kept if it can be held again
    std::string place{}; ///< of the rest; "" where it was
    std::vector<ForShelf> forShelf{};
    /// Belts cut of each width that the ticket has for the shelf, in its order; nothing: all of them.
    std::optional<std::vector<std::int64_t>> ofShelf{};
};

/// A planned mounting that the piece can't give any more, since less was left of it than planned. It is void;
/// the lines of these orders miss belts (planMissing).
struct Voided {
    store::MountingId mounting;
    std::vector<store::OrderId> orders;
};

/// How an order stands of which belts were cut.
struct OrderAfter {
    store::OrderId order;
    std::string code;
    std::int64_t missing; ///< belts still to be cut, on a ticket or not; 0: it is ready
};

/// What was made of the rest.
struct CutDone {
    store::MovementId movement;
    std::optional<store::PieceId> remnant; ///< the rest, under the piece's own code: label it
    std::vector<store::PieceId> shelf;     ///< ready belts, each to be labelled
    std::int64_t difference;               ///< µm or ribs more (+) or less (-) than the figures said
    std::vector<OrderAfter> orders;        ///< whose belts were cut; none if all were for the shelf
    std::vector<Voided> voided;            ///< what the measured rest made impossible
    /// Nobody whose belts were cut waits for more.
    bool allReady() const;
};

/// Books a mounting: trim, kerf, belts, rest, difference. The rest keeps the piece's code (a sleeve is a
/// remnant from then on); a rest narrower than a stub can't be held again and is thrown away, whatever is
/// said: up to the end allowance to the account End, more than that to Scrap as a stub. The piece's cost goes
/// with the width, no cent lost. Refuses MoreThanThere (the piece is `left` narrower than that), TooNarrow
/// (the book says that the piece can't give these belts, and no rest was measured), BadQuantity (more for the
/// shelf than the ticket has), PieceReserved (throws away what other tickets need), AlreadyCut, AlreadyDone.
CutDone recordCut(const Shop& shop, const CutRecord& record);

/// Takes back what recordCut booked, by a counter-entry: the mounting is planned again, its belts are not
/// cut, ready belts that were made are in no book any more. Refuses NothingToCut if the mounting is not cut
/// by recordCut, AlreadyDone if something happened since: to the piece, to a belt made for the shelf, or to
/// an order (its code or the piece's is the detail); PieceReserved if the piece can't keep all promises then.
store::MovementId undoCut(const Shop& shop, store::MountingId mounting);

/// A belt of this mounting was spoiled before the mounting is finished: what was cut well counts, the spoiled
/// belt is scrapped with reason miscut, the rest of the piece is measured, and what is missing is planned
/// again.
struct Miscut {
    store::MountingId mounting;
    std::vector<std::int64_t> good; ///< belts well cut, for each cut of the mounting in its order
    Extent spoiled;                 ///< width of what was spoiled
    Extent left;                    ///< measured, of the piece after that
    std::string note;
};
struct Replanned {
    store::MovementId movement;
    std::optional<store::PieceId> remnant;
    std::optional<store::TicketId> ticket; ///< the new one; none if the rest can't be served now
    std::vector<store::LineId> unserved;   ///< lines that still want belts; the order stands
    std::vector<OrderAfter> orders;        ///< whose belts this mounting was for
    std::vector<Voided> voided;            ///< what the measured rest made impossible
};
Replanned recordMiscut(const Shop& shop, const Miscut& miscut);

/// What planning again came to.
struct Planned {
    std::optional<store::TicketId> ticket; ///< none if nothing could be planned, or all came from the shelf
    std::vector<store::LineId> unserved;   ///< lines that still want belts
};
/// Belts of an open order that are on no ticket (after a miscut, or when a rest was short) are planned again,
/// as many as can be served now. Refuses NothingToCut if none is missing.
Planned planMissing(const Shop& shop, store::OrderId order);

} // namespace riband::shop
