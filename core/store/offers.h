#pragma once

#include "core/measure/extent.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <map>
#include <vector>

namespace riband::store {

/// A sleeve that a maker offers of a belt.
struct SleeveOffer {
    Extent extent;
    Money cost; ///< of one
    int deliveryDays;
    friend bool operator==(const SleeveOffer&, const SleeveOffer&) = default;
};

/// What makers offer beside the sleeve that a belt's entry names. The only code that names the table
/// `sleeve_offer`.
class SleeveOffers {
public:
    explicit SleeveOffers(Connection& connection) : connection_{connection} {}
    std::map<BeltId, std::vector<SleeveOffer>> all() const; ///< of each belt narrow first
    /// In the place of all that were there of the belt.
    void replace(BeltId belt, const std::vector<SleeveOffer>& offers);

private:
    Connection& connection_;
};

} // namespace riband::store
