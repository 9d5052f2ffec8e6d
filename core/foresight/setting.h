#pragma once

#include <algorithm>
#include <cstdint>
#include <string>
#include <vector>

namespace riband::foresight {

/// A width in the unit of the belt at hand, micrometres or ribs: within foresight one belt stands alone, so
/// the unit never mixes. Stock and cuts are whole numbers; worth, cost and share are expectations and may be
/// double.
using Size = std::int32_t;
using Worth = double;

/// What a mounting costs in width and needs to hold on.
struct CutRules {
    Size trim = 2500;       ///< lost at every mounting
    Size kerf = 0;          ///< lost at every belt
    Size end = 5000;        ///< stays beyond the last cut
    Size stub = 15000;      ///< least width that can be held
    Worth mountingCost = 0; ///< labour of a mounting, in width

    /// What must be left when `widest` is the widest belt of the mounting, cut last.
    Size reserve(Size widest) const { return std::max(end, stub - widest); }
};

/// Which mountings may cut belts for the shelf.
enum class Shelf : std::uint8_t {
    None,
    Stub,   ///< only those that scrap their rest
    Listed, ///< any
};

inline constexpr int shelfLimit = 6; ///< most ready belts of a width

/// What is told of a belt before its first order.
struct Setting {
    Size sleeve = 400000;
    std::vector<Size> listed;  ///< the widths that the shop usually sells
    double ordersPerYear = 52; ///< the shop's guess
    double daysPerYear = 300;
    CutRules rules;
    int rackLimit = 10; ///< most remnants after an order
    Shelf shelf = Shelf::None;
    int shelfRoom = shelfLimit; ///< ready belts of a width, at most shelfLimit
    int shelfAtOnce = 0;        ///< most belts for the shelf in a mounting; 0: any number
    double ageLimitDays = 1800;
    double interest = 0.06; ///< a year, on width held
    Worth holdingCost = 0;  ///< a piece and year, in width
    std::uint64_t seed = 1;
    bool ribs = false; ///< the unit, for grids and prints

    /// The first broken rule in words, or empty.
    std::string fault() const;
    /// Widths are sorted and given once.
    void tidy();
    /// Narrower remnants can't give even the narrowest listed belt.
    Size leastUseful() const;
    /// So few places that what a full rack makes go must be weighed. Measured: on racks of 2 and 3 it takes
    /// the advisor to what is possible (decision_process_test), on racks of 8 and more it costs some of the
    /// gap.
    bool hasTightRack() const { return rackLimit <= 5; }
};

} // namespace riband::foresight
