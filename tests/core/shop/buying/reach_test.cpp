#include "core/shop/buying/reach.h"

#include "core/foresight/hindsight.h"
#include "tests/core/shop/buying/sold_shop.h"

using namespace riband;
using namespace riband::shop;

namespace {

const Period everything{Moment{Date{std::chrono::year{2000} / 1 / 1}},
                        Moment{Date{std::chrono::year{2100} / 1 / 1}}};

} // namespace

TEST_CASE("One belt of 30 an order can't be cut with less than a trim each", "[shop][reach]") {
    SoldShop shop;
    const auto all = reach(shop.shop, everything);
    REQUIRE(all.size() == 1);
    CHECK(all.front().designation == "H8M 1200"); // the other belt was not asked for
    const Reach& toothed = all.front().reach;
    CHECK(toothed.asked == 60 * 30'000);
    // A sleeve of 470 with an end of 5 holds 14 mountings of 32.5; what is left of it, 10 and the end, serves
    // nobody.
    CHECK(toothed.least == Approx(60 * 470'000 / 14.).epsilon(1e-6));
    CHECK(toothed.reachable() == Approx(14 * 30 / 470.));
    CHECK(toothed.sold == 60 * 30'000);
    CHECK(toothed.had() == Approx(30 / 32.5)); // what will be left of the open sleeves is not lost yet
    CHECK(toothed.beyond() == Approx(60 * (32'500 - 470'000 / 14.)));
    CHECK(totalOf(all, Unit::Micrometre)->least == toothed.least);
    CHECK_FALSE(totalOf(all, Unit::Rib));
}

TEST_CASE("Orders count in the period in which they came", "[shop][reach]") {
    SoldShop shop;
    const BuyingOutlook outlook = shop.outlook();
    const Moment end{outlook.today + std::chrono::days{1}};
    const auto last = reach(shop.shop, {end - std::chrono::days{28}, end});
    REQUIRE(last.size() == 1);
    CHECK(last.front().reach.asked == 3 * 30'000); // the last order came a week ago
    CHECK(reach(shop.shop, {end, end + std::chrono::days{30}}).empty());
}

TEST_CASE("Reckoning how far one could have come can be stopped", "[shop][reach]") {
    SoldShop shop;
    CHECK_THROWS_AS(reach(shop.shop, everything, {nullptr, [] { return true; }}), foresight::Stopped);
}
