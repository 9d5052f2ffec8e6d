#pragma once

#include "core/shop/shop.h"

namespace riband::shop {

/// Goods in: so many like sleeves of one belt.
struct Delivery {
    belt::Belt belt; ///< a belt new to the shop is added to the catalogue with the tables' usual figures
    int sleeves = 1;
    Extent extent;
    Money costEach = Money::minor(0);
    std::string batch{};
    std::optional<Date> made{};
    std::string place{};
    cutting::PieceKind kind =
        cutting::PieceKind::Sleeve; ///< Remnant and Ready for a stock that is taken over
};

/// One transaction for all; the new pieces in the order of the deliveries. Sleeves come from the account
/// Bought; remnants and ready belts of a stock that is taken over from Found. The cost of a sleeve becomes
/// the belt's last sleeve cost.
std::vector<store::PieceId> receive(const Shop& shop, const std::vector<Delivery>& deliveries);

/// The belt's entry in the catalogue, made from the tables if it is new (standard widths listed, usual
/// sleeve).
store::StockedBelt keep(const Shop& shop, const belt::Belt& belt);

/// Throws width away with a reason, all of a piece or a part of it; refuses what open tickets need.
void scrap(const Shop& shop, store::PieceId piece, Extent extent, store::ScrapReason reason,
           const std::string& note);

/// Puts a piece at another place.
void move(const Shop& shop, store::PieceId piece, const std::string& place);

} // namespace riband::shop
