#pragma once

#include "core/shop/order.h"

namespace riband::shop {

/// What really happened at the cutter in one mounting.
struct CutRecord {
    store::MountingId mounting;
    std::optional<Extent> left; ///< measured; nothing: as planned
    bool keepRest = true;       ///< back to the rack; else it is thrown away
    std::string place;          ///< of the rest; "" where it was
};

/// What was made of the rest.
struct CutDone {
    store::MovementId movement;
    std::optional<store::PieceId> remnant; ///< label it
    std::vector<store::PieceId> shelf;     ///< ready belts, each to be labelled
    std::int64_t difference;               ///< µm or ribs more (+) or less (-) than planned
    bool orderReady;                       ///< all belts of the order are cut
};

/// Books a mounting: trim, kerf, belts, rest, difference.
CutDone recordCut(const Shop& shop, const CutRecord& record);

/// A belt of this mounting was spoiled before the mounting is finished: what was cut well counts, the spoiled
/// belt is scrapped with reason miscut, the rest of the piece is measured, and what is missing is planned
/// again.
struct Miscut {
    store::MountingId mounting;
    std::vector<std::int64_t> good; ///< belts well cut, for each cut of the mounting
    Extent spoiled;                 ///< width of what was spoiled
    Extent left;                    ///< measured, of the piece after that
    std::string note;
};
struct Replanned {
    store::MovementId movement;
    std::optional<store::PieceId> remnant;
    std::optional<store::TicketId> ticket; ///< the new one; none if the rest can't be served now
    std::vector<store::LineId> unserved;   ///< lines that still want belts; the order stands
};
Replanned recordMiscut(const Shop& shop, const Miscut& miscut);

/// Lines of open orders whose missing belts are on no ticket (after a miscut, or when stock was short) are
/// planned again.
std::optional<store::TicketId> planMissing(const Shop& shop, store::OrderId order);

} // namespace riband::shop
