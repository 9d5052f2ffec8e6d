#pragma once

#include "core/store/orders.h"

namespace riband::store {

/// Belts of an order line on a mounting that was made void.
struct VoidCut {
    std::string ticket; ///< code
    LineId line;
};
/// All that were ever planned from this piece and made void, in the order in which they were planned.
std::vector<VoidCut> voidCutsOf(Connection& connection, PieceId piece);

} // namespace riband::store
