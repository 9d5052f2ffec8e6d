#pragma once

#include "core/shop/counting/count.h"

namespace riband::shop {

/// One scan of a hand-held collector.
struct CollectedScan {
    std::string place;
    std::optional<store::PieceId> piece{}; ///< none: a find of `belt`
    std::optional<belt::Belt> belt{};
    std::optional<Extent> measured{}; ///< none: it is there
    store::Method method = store::Method::Calliper;
    std::string remark{};
};

/// What came of all of them.
struct Collected {
    std::vector<store::CountId> counts;      ///< one a place, in the order of the places
    std::vector<counting::Verdict> verdicts; ///< one a scan; Agrees of finds
    std::vector<Voided> voided;
    std::vector<std::pair<store::CountId, store::PieceId>> missing; ///< of the counts that were closed
};

/// All scans in one transaction, in their order, each place in a count of its own; with `close` those counts
/// are closed. Refuses what `note` and `closeCount` refuse; then nothing is kept.
Collected collect(const Shop& shop, const std::vector<CollectedScan>& scans, bool close);

} // namespace riband::shop
