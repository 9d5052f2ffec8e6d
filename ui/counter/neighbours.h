#pragma once

#include "core/shop/shop.h"

#include <vector>

namespace riband::ui {

/// A belt near the wanted one that is here.
struct Neighbour {
    store::StockedBelt belt;
    Extent here; ///< of all its pieces together, not promised
};

/// Belts of the same profile that have width on the rack, nearest in length first.
std::vector<Neighbour> neighboursInStock(const shop::Shop& shop, const belt::Belt& wanted, std::size_t most);

} // namespace riband::ui
