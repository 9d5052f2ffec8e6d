#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

/// The ways to serve what is wanted by worth table and look-ahead, the best first, at most so many. Ready
/// belts go first. None if all comes from the shelf, if the pieces that are here can't serve it, or if more
/// is wanted than can be weighed as a whole. Pure.
std::vector<Way> weigh(const Outlook& outlook, const Future& future, std::size_t most);

} // namespace riband::shop
