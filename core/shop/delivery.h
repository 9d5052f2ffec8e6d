#pragma once

#include "core/shop/receive.h"

namespace riband::shop {

/// How a line of a delivery is booked; all inside the caller's transaction.

/// Refuses what can't be booked of this belt.
void demandDelivery(const Shop& shop, const Delivery& delivery, Unit unit);
/// Of each sleeve, or the freight of all.
void demandCost(const Shop& shop, Money cost);

/// Books the sleeves of one line of this belt from the account `source` (Bought, or Found for a stock that is
/// taken over), one movement; `freight` a sleeve's share each, or nothing. The new pieces are added to
/// `made`. Learns the supplier's code.
void bookDelivery(const Shop& shop, store::Account source, store::StockedBelt& belt, const Delivery& delivery,
                  const std::vector<Money>& freight, std::vector<store::PieceId>& made);

/// So many sleeves of the first line of the expected delivery that this one fulfils have come; negative: they
/// have not after all.
void countArrived(const Shop& shop, store::ExpectedId expected, const Delivery& delivery,
                  std::int64_t sleeves);

/// What a movement of goods in booked of a piece.
store::Posting arrivalOf(const store::Movement& movement, store::PieceId piece);

} // namespace riband::shop
