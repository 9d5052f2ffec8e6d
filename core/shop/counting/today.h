#pragma once

#include "core/shop/counting/doubt.h"
#include "core/shop/counting/plan.h"
#include "core/shop/shop.h"

namespace riband::shop {

/// What counting knows of every piece, read for the plan. Long in a large shop: for a thread of its own.
struct CountOutlook {
    std::vector<counting::Candidate> candidates;
    counting::Doubt doubt; ///< as learned from the last 5 000 scans
};
CountOutlook countOutlook(const Shop& shop);

/// The places to count today, in so many minutes; those with an open count and those of which every piece
/// was counted within the last day are left out.
std::vector<counting::PlaceTask> countToday(const Shop& shop, int minutes);

} // namespace riband::shop
