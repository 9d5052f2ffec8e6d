#pragma once

#include "core/shop/shop.h"

#include <map>

namespace riband::shop {

/// What reports say of a belt.
struct ReportBelt {
    std::string designation, profile;
    std::string family; ///< word for files: "metric trapezoidal"; "" for a profile of no table
    Unit unit;
    double squareMetres;                           ///< of one unit of width (µm or rib), its whole length
    std::optional<double> kilogramsPerSquareMetre; ///< where a standard of the tables weighs the profile
};

/// The names behind the ids of the ledger, read at once.
class ReportNames {
public:
    explicit ReportNames(const Shop& shop);
    const ReportBelt& belt(store::BeltId id) const { return belts_.at(id); }
    const std::string& person(store::PersonId id) const { return people_.at(id); } ///< initials
    const std::string& cutter(store::CutterId id) const { return cutters_.at(id); }

private:
    std::map<store::BeltId, ReportBelt> belts_;
    std::map<store::PersonId, std::string> people_;
    std::map<store::CutterId, std::string> cutters_;
};

/// As reports write it: "inch trapezoidal", "V-ribbed".
const char* wordFor(belt::Family family);

} // namespace riband::shop
