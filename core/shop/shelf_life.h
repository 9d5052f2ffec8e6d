#pragma once

#include "core/shop/shop.h"
#include "core/store/shelf_lives.h"

#include <array>

namespace riband::shop {

/// The bodies of which it is known how long they may lie (resources/tables/shelf_life.csv).
inline constexpr std::array<const char*, 3> shelfBodies{"rubber", "polyurethane", "EPDM"};
/// More than that no standard allows any body (common practice, no source).
constexpr int longestShelfLife = 30;

/// How long belts may lie in this shop: by its own figures, else by the standard's. Reads them once.
class ShelfLife {
public:
    explicit ShelfLife(const Shop& shop);
    store::ShelfYears of(const std::string& body) const; ///< one of shelfBodies
    /// By the body in its entry, else by the usual one of its profile; where none is known, the shortest.
    store::ShelfYears of(const store::StockedBelt& belt) const;

private:
    const belt::Tables& tables_;
    store::ShelfLives set_;
};

/// The owner's: refuses NotTheirs; BadQuantity for a life of no year or beyond longestShelfLife.
void setShelfLives(const Shop& shop, const store::ShelfLives& lives);

} // namespace riband::shop
