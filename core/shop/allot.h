#pragma once

#include "core/shop/offers.h"

#include <set>

namespace riband::shop {

/// So many belts of a line that are to be planned.
struct Wanted {
    store::LineId line;
    store::BeltId belt;
    Extent extent;
    std::int64_t belts;
    std::optional<cutting::Plan> way;            ///< chosen by the clerk, for this line alone
    std::vector<std::string> wayPieces;          ///< piece codes in the order of the way's problem
    std::vector<std::vector<Extent>> forShelf{}; ///< what the chosen way cuts for the shelf as well
    bool noShelf = false;                        ///< nothing is to be cut for the shelf beside this line
};

/// What was suggested for a belt, and what was allotted.
struct Advised {
    store::BeltId belt;
    store::AdviceBasis basis;
    int worthVersion;
    store::AdvisedWay suggested, taken;
    bool shelfDeclined, overridden;
};

/// Which piece gives what; nothing is written yet.
struct Allotment {
    std::vector<store::TicketMounting> mountings; ///< planned, without id
    std::vector<std::pair<store::PieceId, store::LineId>> taken;
    std::vector<store::LineId> unserved;
    std::vector<Advised> advised; ///< one a belt
    bool otherWay = false;        ///< a chosen way could not be done any more
};

enum class Allotting : std::uint8_t {
    OneOrder,  ///< as `suggest` says
    ManyOrders ///< as `suggestTogether` says
};

/// Plans what is wanted from what is free now: the lines of a belt together, after those with a chosen way
/// that can still be done. `spared`: pieces that are taken only for a belt of which the others don't give
/// all. Reads inside the caller's transaction. Planning stops after a second by the shop's clock with the
/// best plan so far.
Allotment allot(const Shop& shop, const std::vector<Wanted>& wanted, Allotting how = Allotting::OneOrder,
                const std::set<store::PieceId>& spared = {});

/// Books the ready belts that were taken and makes the ticket of the rest, inside the caller's transaction.
/// No ticket if there is no mounting.
std::optional<store::TicketId> enter(const Shop& shop, store::OrderId order, const Allotment& allotment);

} // namespace riband::shop
