#pragma once

#include "core/store/orders.h"

#include <vector>

namespace riband::store {

/// What the ledger sold of an order line in a span, and what that brought: as Revenue sums it.
struct SoldLine {
    std::string order; ///< code
    Moment at;         ///< of the order
    BeltId belt;
    std::string customer; ///< "" walk-in
    std::int64_t width;   ///< µm or ribs
    Money revenue, cost;  ///< without tax
    bool costKnown;       ///< of all its width
};
/// Whose lines: of a belt, of a customer ("" walk-ins), or neither.
struct SalesOf {
    std::optional<BeltId> belt{};
    std::optional<std::string> customer{};
};
/// The newest order first.
std::vector<SoldLine> soldLines(Connection& connection, Moment from, Moment until, const SalesOf& whose);
/// Orders made in a span that now stand so; oldest first.
std::vector<OrderId> ordersMadeIn(Connection& connection, Moment from, Moment until, OrderState state);

} // namespace riband::store
