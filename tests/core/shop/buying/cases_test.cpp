#include "core/shop/buying/reach.h"
#include "tests/core/shop/buying/sold_shop.h"

using namespace riband;
using namespace riband::shop;

namespace {

/// The shop without the widths that H8M 1200 lists.
void unlist(SoldShop& shop) {
    store::Catalogue catalogue{shop.connection};
    store::StockedBelt belt = *catalogue.find(shop.h8m1200);
    belt.listed.clear();
    catalogue.change(belt);
}

std::size_t ordersOf(const BuyingBelt& belt) { return belt.buying.record.orders.size(); }

} // namespace

TEST_CASE("Of a belt that lists its widths only the orders since a day are read", "[shop][buying]") {
    SoldShop shop;
    const BuyingOutlook all = shop.outlook();
    const BuyingOutlook late = lookAtBuying(shop.shop, shop.time - std::chrono::days{22});
    CHECK(ordersOf(shop.h8m(all)) == 60);
    CHECK(ordersOf(shop.h8m(late)) == 3); // the last came a week ago
    CHECK(shop.h8m(late).buying.setting.listed == shop.h8m(all).buying.setting.listed);
    CHECK(late.days == 21); // since the oldest of them
}

TEST_CASE("A belt that lists no width is known by all its orders, since whichever day one looks",
          "[shop][buying]") {
    SoldShop shop;
    unlist(shop);
    const BuyingOutlook late = lookAtBuying(shop.shop, shop.time - std::chrono::days{22});
    CHECK(ordersOf(shop.h8m(late)) == 60);
    CHECK(shop.h8m(late).buying.setting.listed == shop.h8m(shop.outlook()).buying.setting.listed);
    CHECK(late.days == shop.outlook().days);
    const Moment end{late.today + std::chrono::days{1}};
    CHECK(reach(shop.shop, {end - std::chrono::days{28}, end}).front().reach.asked == 3 * 30'000);
}
