#include "core/shop/buying/purchase.h"

#include "core/store/goods.h"
#include "tests/core/shop/buying/sold_shop.h"

using namespace riband;
using namespace riband::shop;
using foresight::Keeping;

TEST_CASE("The outlook of buying is what was ordered and what lies there", "[shop][buying]") {
    SoldShop shop;
    const BuyingOutlook outlook = shop.outlook();
    const auto& buying = shop.h8m(outlook).buying;
    CHECK(outlook.days == 420);
    CHECK(buying.record.orders.size() == 60);
    CHECK(buying.record.meanWidth() == Approx(30000));
    CHECK(buying.sleeves == 1); // 14 x 32.5 mm of a sleeve leave 15, which are kept: five are open
    CHECK(buying.remnants.size() == 5);
    CHECK(buying.setting.sleeve == 470000);
    CHECK(buying.setting.rules.trim == 2500);
    CHECK(buying.choices.front().leadDays == 4);
    CHECK(buying.price == Approx(0.03)); // cents a micrometre
    CHECK(buying.setting.ageLimitDays == 7 * 365);
}

TEST_CASE("Quotes are no demand, and what is taken back is none either", "[shop][buying]") {
    SoldShop shop;
    const Draft draft{.lines = {TestShop::line(shop.h8m1200, mm(50), 3)}};
    quote(shop.shop, draft);
    const Ordered ordered = shop.order(shop.h8m1200, mm(20), 2);
    CHECK(shop.h8m(shop.outlook()).buying.record.orders.size() == 61);
    cancel(shop.shop, ordered.order);
    CHECK(shop.h8m(shop.outlook()).buying.record.orders.size() == 60);
}

TEST_CASE("What is on its way is supply: a list that was ordered is not ordered again", "[shop][buying]") {
    SoldShop shop;
    for (const auto& piece : store::Pieces{shop.connection}.all())
        scrap(shop.shop, piece.id, piece.extent, store::ScrapReason::Damaged, "fire");
    const BuyingOutlook before = shop.outlook();
    const PurchaseList list = purchaseList(before, std::nullopt);
    const int bought = list.lines[shop.indexOf(before, "H8M 1200")].sleeves;
    REQUIRE(bought > 0);
    const auto expectations = expectationsOf(list, before);
    REQUIRE(expectations.size() == 1);
    CHECK(expectations.front().due == before.today + std::chrono::days{4});
    expectAll(shop.shop, expectations);
    const BuyingOutlook after = shop.outlook();
    CHECK(shop.h8m(after).expected == bought);
    CHECK(shop.h8m(after).here() == shop.h8m(before).here());
    const PurchaseList again = purchaseList(after, std::nullopt);
    CHECK(again.lines[shop.indexOf(after, "H8M 1200")].sleeves == 0);
    CHECK(expectationsOf(again, after).empty());
}

TEST_CASE("A list that was expected is taken back whole, as long as nothing of it has come",
          "[shop][buying]") {
    SoldShop shop;
    const auto expected = [&shop](int sleeves, int days) {
        return Expectation{.due = dayOf(shop.time) + std::chrono::days{days},
                           .lines = {{.belt = shop.h8m1200, .sleeves = sleeves, .extent = mm(470)}}};
    };
    const auto ids = expectAll(shop.shop, {expected(2, 4), expected(1, 9)});
    const auto open = [&shop] { return store::Goods{shop.connection}.expected().size(); };
    SECTION("nothing has come") {
        takeBack(shop.shop, ids);
        CHECK(open() == 0);
        checkRefused(shop, Refusal::Why::AlreadyDone, [&] { takeBack(shop.shop, ids); });
    }
    SECTION("one sleeve has come: all of it stays") {
        store::Goods{shop.connection}.arrive(ids.back(), 1, 1); // closes the second
        checkRefused(shop, Refusal::Why::AlreadyDone, [&] { takeBack(shop.shop, ids); });
        CHECK(open() == 1);
        store::Goods{shop.connection}.arrive(ids.front(), 1, 1);
        checkRefused(shop, Refusal::Why::HasArrived, [&] { takeBack(shop.shop, {ids.front()}); });
        CHECK(open() == 1);
    }
}

TEST_CASE("The book knows which list was expected last, and whether it can still be taken back",
          "[shop][buying]") {
    SoldShop shop;
    const auto expected = [&shop](const std::string& reference, int days) {
        return Expectation{.reference = reference,
                           .due = dayOf(shop.time) + std::chrono::days{days},
                           .lines = {{.belt = shop.h8m1200, .sleeves = 2, .extent = mm(470)}}};
    };
    CHECK_FALSE(lastExpectedList(shop.shop));
    const auto first = expectAll(shop.shop, {expected("2026-03-01", 4), expected("2026-03-01", 9)});
    expect(shop.shop, expected("their 4711", 2)); // noted on the Rack: no list
    const auto last = lastExpectedList(shop.shop);
    REQUIRE(last);
    CHECK(last->day == "2026-03-01");
    CHECK(last->deliveries == first);
    const auto second = expectAll(shop.shop, {expected("2026-03-02", 4)});
    CHECK(lastExpectedList(shop.shop)->deliveries == second);
    takeBack(shop.shop, second);
    CHECK(lastExpectedList(shop.shop)->deliveries == first);
    store::Goods{shop.connection}.arrive(first.front(), 1, 1);
    CHECK_FALSE(lastExpectedList(shop.shop)); // a sleeve of it has come
}

TEST_CASE("An offer of the present width brings its price up to date, another one is a choice",
          "[shop][buying]") {
    SoldShop shop;
    const auto id = store::Catalogue{shop.connection}.find(shop.h8m1200)->id;
    store::SleeveOffers{shop.connection}.replace(
        id, {{mm(470), Money::minor(4200), 6}, {mm(500), Money::minor(4300), 0}});
    const auto choices = shop.h8m(shop.outlook()).buying.choices;
    REQUIRE(choices.size() == 2);
    CHECK(choices[0].cost == 4200);
    CHECK(choices[0].leadDays == 6);
    CHECK(choices[1].width == 500000);
    CHECK(choices[1].leadDays == 5); // the shop's own, since none is said
    auto settings = store::Settings{shop.connection}.read();
    settings.cutters.front().cutter.shafts = {{"80", 80, 80, 490, 100, 2000}}; // takes 480
    store::Settings{shop.connection}.write(settings);
    CHECK(shop.h8m(shop.outlook()).buying.choices.size() == 1);
}

TEST_CASE("What is bought lasts until the delivery after next, and costs what it says", "[shop][buying]") {
    SoldShop shop;
    const BuyingOutlook outlook = shop.outlook();
    const PurchaseList list = purchaseList(outlook, std::nullopt);
    REQUIRE(list.lines.size() == outlook.belts.size());
    const PurchaseLine& line = list.lines[shop.indexOf(outlook, "H8M 1200")];
    CHECK(line.advice.horizonDays == 11);
    CHECK(line.advice.ordersPerYear == Approx(52).epsilon(0.15));
    CHECK(line.advice.risk < 0.05); // a whole sleeve is fourteen weeks
    CHECK(line.wanted == 0);
    const PurchaseLine& dead = list.lines[shop.indexOf(outlook, "T5 500")];
    CHECK(dead.advice.keeping == Keeping::NotAskedFor);
    CHECK(dead.sleeves == 0);
}

TEST_CASE("An empty rack is filled, and a budget is never overdrawn", "[shop][buying]") {
    SoldShop shop;
    for (const auto& piece : store::Pieces{shop.connection}.all())
        scrap(shop.shop, piece.id, piece.extent, store::ScrapReason::Damaged, "fire");
    const BuyingOutlook outlook = shop.outlook();
    const PurchaseList whole = purchaseList(outlook, std::nullopt);
    const std::size_t at = shop.indexOf(outlook, "H8M 1200");
    CHECK(whole.lines[at].wanted >= 1);
    CHECK(whole.lines[at].advice.risk > 0.5);
    CHECK(whole.cost == whole.wanted);
    CHECK(whole.cost == Money::minor(4000) * whole.lines[at].wanted);
    const PurchaseList none = purchaseList(outlook, Money::minor(3999));
    CHECK(none.lines[at].sleeves == 0);
    CHECK(none.cost == Money::minor(0));
    const PurchaseList one = purchaseList(outlook, Money::minor(4000));
    CHECK(one.lines[at].sleeves == 1);
    CHECK(one.keeps > 0);
    CHECK(one.keeps <= one.keepsAtMost + 1e-6);
}

TEST_CASE("The purchase list can be stopped, and is the same each time", "[shop][buying]") {
    SoldShop shop;
    const BuyingOutlook outlook = shop.outlook();
    CHECK_THROWS_AS(purchaseList(outlook, std::nullopt, {nullptr, [] { return true; }}), foresight::Stopped);
    const PurchaseList a = purchaseList(outlook, std::nullopt), b = purchaseList(outlook, std::nullopt);
    for (std::size_t i = 0; i < a.lines.size(); ++i)
        CHECK(a.lines[i].advice.need.enough == b.lines[i].advice.need.enough);
}
