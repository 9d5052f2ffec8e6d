#pragma once

#include "core/foresight/parallel.h"
#include "core/shop/buying/cases.h"
#include "core/shop/reports/basis.h"

namespace riband::shop {

/// How far a yield is from what could have been had; widths in µm or ribs.
struct Reach {
    Unit unit = Unit::Micrometre;
    std::int64_t asked = 0; ///< width of the belts ordered
    double least = 0;       ///< that one who had known all orders would at least have used up for them
    std::int64_t sold = 0, used = 0; ///< by the ledger

    double had() const { return used > 0 ? static_cast<double>(sold) / static_cast<double>(used) : 0; }
    double reachable() const { return least > 0 ? static_cast<double>(asked) / least : 0; }
    /// Width used up beyond what hindsight would have taken for the same sales; below zero where ready belts
    /// or chance did better.
    double beyond() const {
        return asked > 0 ? static_cast<double>(used) -
                               static_cast<double>(sold) * least / static_cast<double>(asked)
                         : 0;
    }
    Reach& operator+=(const Reach& other);
};
struct BeltReach {
    store::BeltId belt;
    std::string designation;
    Reach reach;
    std::set<Extent> widths{}; ///< that were ordered and a sleeve can give
};

/// The belts that were ordered in the period (of the last three years), by falling width lost beyond
/// hindsight. The bound is
/// foresight::Hindsight's, from sleeves of the usual width and without ready belts. A shop that sells from
/// the shelf may pass it; one that lives on old remnants is judged as if it had begun with sleeves. Throws
/// foresight::Stopped.
std::vector<BeltReach> reach(const Shop& shop, const Period& period, const foresight::Work& work = {});
/// All belts of a unit; nothing if none of it was ordered.
std::optional<Reach> totalOf(const std::vector<BeltReach>& belts, Unit unit);
ReportTable tableOf(const std::vector<BeltReach>& belts);
/// The order lines behind the width that was ordered, which is the `figure` that they add up to.
Basis ordersBehind(const Shop& shop, const BeltReach& belt, const Period& period, const std::string& figure);

} // namespace riband::shop
