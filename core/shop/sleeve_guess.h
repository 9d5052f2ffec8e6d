#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// In what widths the sleeves of a belt come, as far as is known.
struct SleeveWidths {
    Extent usual = Extent::none(Unit::Micrometre);
    std::vector<Extent> others; ///< of the tables, of unopened sleeves on the rack, of what is expected
};
SleeveWidths sleeveWidths(const Shop& shop, const belt::Belt& belt);

/// Whether what comes without a word on its kind is a sleeve: as wide as a usual one or wider, or as one of
/// the others within a fiftieth (as tapes err on what is rolled up: common practice, no source). Pure.
bool isSleeve(const SleeveWidths& known, Extent extent);

} // namespace riband::shop
