#pragma once

#include "core/measure/date.h"
#include "core/measure/extent.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <map>
#include <vector>

namespace riband::store {

/// So many belts of a width were ordered.
struct WidthAsked {
    Extent extent;
    std::int64_t belts;
};

/// What was sold, read from orders and ledger.
class Sales {
public:
    explicit Sales(Connection& connection) : connection_{connection} {}
    /// Width (µm or ribs) that went to customers since then, what came back taken off.
    std::map<BeltId, std::int64_t> soldSince(Moment from) const;
    /// Of each belt the widths that were ordered since then, the most asked first; of orders that are neither
    /// parked, quoted nor cancelled.
    std::map<BeltId, std::vector<WidthAsked>> widthsSince(Moment from) const;

private:
    Connection& connection_;
};

} // namespace riband::store
