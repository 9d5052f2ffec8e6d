#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// Days until a new sleeve of the belt comes: by its entry, else as the shop usually waits; 0: nobody said.
int deliveryDays(const store::StockedBelt& belt, const store::ShopSettings& settings);

/// Of each line of an order that is not booked yet: 0 if what is here today gives it, else `deliveryDays`.
/// Plans all of its lines, up to a second, and writes nothing.
std::vector<int> deliveryDays(const Shop& shop, const store::Order& order);

} // namespace riband::shop
