#pragma once

#include "core/shop/queries.h"

namespace riband::shop {

/// For whom the belts of a cut are.
struct CutFor {
    std::string order; ///< code; "" for the shelf
    std::string customer;
    int line; ///< its position in the order
};

/// For whom a mounting is, belt by belt.
struct MountingFor {
    std::vector<CutFor> cuts{};  ///< one a cut, in its order
    std::optional<Moment> due{}; ///< when the first of its orders is wanted
    std::string others{};        ///< codes of the other tickets that wait for width of its piece, by spaces
    /// Belts for several orders in one mounting.
    bool isJoint() const;
    bool isFor(const std::string& order) const;
};
/// One a mounting.
std::vector<MountingFor> whoseAre(const Shop& shop, const std::vector<BenchMounting>& mountings);

} // namespace riband::shop
