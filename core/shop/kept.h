#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// The entry that a belt new to the shop would get: the standard widths that its usual sleeve can give, no
/// price yet. Refuses NoSuchBelt if the profile is in no table. Its id is 0.
store::StockedBelt usualEntry(const belt::Tables& tables, const belt::Belt& belt);

/// The belt's entry in the catalogue, added if it is new; inside the caller's transaction.
store::StockedBelt keptBelt(const Shop& shop, const belt::Belt& belt);

} // namespace riband::shop
