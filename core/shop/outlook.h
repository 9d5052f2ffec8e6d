#pragma once

#include "core/shop/promises.h"
#include "core/shop/suggest.h"

namespace riband::shop {

/// What these pieces, of one belt, can give for these lines as far as they are not promised. `past` stays as
/// the store tells it.
Outlook outlookOf(const Shop& shop, const store::StockedBelt& belt, const store::ShopSettings& settings,
                  const std::vector<store::StockPiece>& pieces, const Promises& promises,
                  std::vector<cutting::Line> lines);

} // namespace riband::shop
