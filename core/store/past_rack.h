#pragma once

#include "core/store/catalogue.h"
#include "core/store/pieces.h"

namespace riband::store {

/// The rack of a belt as it was, from the ledger and from what was promised then.
class PastRack {
public:
    explicit PastRack(Connection& connection) : connection_{connection} {}
    /// What orders made before the moment had left free, oldest first: `extent` is without what they were
    /// promised, a sleeve of which something was promised counts as a remnant.
    std::vector<StockPiece> before(const StockedBelt& belt, Moment moment) const;

private:
    Connection& connection_;
};

} // namespace riband::store
