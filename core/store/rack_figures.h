#pragma once

#include "core/cutting/problem.h"
#include "core/measure/date.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <map>
#include <vector>

namespace riband::store {

/// What reports ask of a piece on the rack: a fifth of what reading the whole piece takes.
struct PieceFigures {
    BeltId belt;
    cutting::PieceKind kind;
    Extent extent;
    Extent reserved; ///< as in StockPiece
    Money cost;
    Date born;
};
/// Of all that is not gone, by place, then in the order in which they came.
std::vector<PieceFigures> figuresOfRack(Connection& connection);

/// Of all belts, also of those that have no piece.
std::map<BeltId, Unit> unitsOfBelts(Connection& connection);

} // namespace riband::store
