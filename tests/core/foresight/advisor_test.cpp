#include "core/foresight/advisor.h"
#include "core/foresight/best_fit.h"
#include "core/foresight/contest.h"
#include "tests/catch.h"
#include "tests/core/foresight/shops.h"

using namespace riband::foresight;

namespace {

/// Short runs: the first orders of a shop.
std::vector<Order> firstOrders(const Scenario& shop, std::uint64_t seed, std::size_t count) {
    auto orders = ordersOf(shop, Dice::of(seed, 1));
    if (orders.size() > count) orders.resize(count);
    return orders;
}

Outcome played(const Scenario& shop, const std::vector<Order>& orders, Player&& player) {
    return play(shop.setting, orders, player, Hindsight{shop.setting, orders, 60});
}

} // namespace

TEST_CASE("The advisor keeps every rule in drawn shops of all kinds and shelves", "[foresight]") {
    // The referee shares no code with it; finishing never touches ordered belts, or an order would not be
    // served.
    for (std::uint64_t number = 100; number < 124; ++number) {
        auto shop = drawnScenario(number);
        shop.setting.shelf = std::array{Shelf::None, Shelf::Stub, Shelf::Listed}[number % 3];
        CAPTURE(shop.name);
        CHECK_NOTHROW(played(shop, firstOrders(shop, number, 60), Advisor{shop.setting}));
    }
}

TEST_CASE("Age limits of days, racks for nothing and one-belt sleeves are lived with", "[foresight]") {
    auto shop = eightMillimetreShop();
    shop.setting.ageLimitDays = 20;
    CHECK_NOTHROW(played(shop, firstOrders(shop, 1, 60), Advisor{shop.setting}));
    shop.setting.rackLimit = 0;
    CHECK_NOTHROW(played(shop, firstOrders(shop, 2, 40), Advisor{shop.setting}));
    shop.setting.rackLimit = 10;
    shop.setting.sleeve = 110000; // an 85 or a 100 and nothing more
    CHECK_NOTHROW(played(shop, firstOrders(shop, 3, 60), Advisor{shop.setting}));
}

TEST_CASE("Same setting, seed and orders: the same answers", "[foresight]") {
    const auto shop = eightMillimetreShop(Shelf::Listed);
    const auto orders = firstOrders(shop, 5, 60);
    Advisor one{shop.setting}, two{shop.setting};
    for (const auto& order : orders)
        CHECK(one.answer(order) == two.answer(order));
}

TEST_CASE("Look-ahead wastes less than smallest that fits, finishing less still, a listed shelf least",
          "[foresight]") {
    auto none = eightMillimetreShop(), stub = eightMillimetreShop(Shelf::Stub),
         listed = eightMillimetreShop(Shelf::Listed);
    const auto orders = firstOrders(none, 8, 200);
    const auto reference = played(none, orders, BestFit{none.setting});
    const auto ahead = played(none, orders, Advisor{none.setting});
    const auto finished = played(stub, orders, Advisor{stub.setting});
    const auto filled = played(listed, orders, Advisor{listed.setting});
    CHECK(gapClosed(reference, ahead) > 45);
    CHECK(finished.waste() < ahead.waste());
    CHECK(filled.waste() < ahead.waste());
    CHECK(filled.tally.mountings * 2 < reference.tally.mountings);
}

TEST_CASE("Where belts are narrow, cutting for the shelf at any mounting wastes less than dead ends alone",
          "[foresight]") {
    const auto stub = narrowShop(Shelf::Stub), listed = narrowShop(Shelf::Listed);
    const auto orders = firstOrders(stub, 3, 400);
    const auto finished = played(stub, orders, Advisor{stub.setting});
    const auto filled = played(listed, orders, Advisor{listed.setting});
    CHECK(filled.waste() < finished.waste());
    CHECK(filled.cost(listed.setting) < finished.cost(stub.setting));
}

TEST_CASE("Where nobody asks for a listed width the shelf stays empty from the first order on",
          "[foresight]") {
    const auto shop = drawnScenario(133); // odd widths only
    for (const auto mode : {Shelf::Stub, Shelf::Listed}) {
        auto setting = shop.setting;
        setting.shelf = mode;
        Advisor advisor{setting};
        for (const auto& order : firstOrders(shop, 4, 80))
            for (const auto& mounting : advisor.answer(order).mountings)
                for (const auto& cut : mounting.cuts)
                    CHECK(cut.use == For::Order);
    }
}

TEST_CASE("On the same futures look-ahead never takes what is dearer than its base", "[foresight]") {
    const auto setting = eightMillimetre();
    const Outlook outlook{setting};
    Fit fit{setting, {}, Dice{9}};
    fit.run(outlook, 2);
    PriceRule rule{setting};
    LookAhead ahead{setting, {}};
    Dice dice{10};
    for (int trial = 0; trial < 30; ++trial) {
        Stock stock;
        for (int i = 0; i < 5; ++i)
            stock.add({static_cast<Size>(dice.between(30, 300)) * 1000, 1, 0});
        const Asked asked{setting,
                          std::vector<Line>{{setting.listed[static_cast<std::size_t>(dice.below(4))], 1}}};
        std::vector<Way> ways(1);
        rule.choose(fit.table(), stock, asked, ways[0]);
        Way way;
        for (int i = -1; i < stock.count; ++i)
            if (rule.wholeFrom(fit.table(), stock, asked, i, way)) ways.push_back(way);
        const auto verdict = ahead.judge(fit.table(), outlook, stock, asked, ways, 77);
        CHECK(verdict.cost[verdict.best] == 0);
        CHECK(verdict.cost[0] >= 0);
        const auto again = ahead.judge(fit.table(), outlook, stock, asked, ways, 77);
        CHECK(again.cost == verdict.cost);
    }
}

TEST_CASE("A belt wider than any sleeve is refused, nothing being changed", "[foresight]") {
    Advisor advisor{eightMillimetre()};
    CHECK_THROWS_AS(advisor.answer({1, {{500000, 1}}}), std::invalid_argument);
    CHECK(advisor.outlook().learned() == 0);
    const auto answer = advisor.answer({2, {{50000, 1}}});
    CHECK(answer.mountings.size() == 1);
}

TEST_CASE("The reason of the smallest that fits says what it leaves", "[foresight]") {
    // 400 - 2.5 - 130 = 267.5, then 265 less the width.
    int times = 0;
    for (const Size width : {30000, 50000, 85000, 150000, 180000}) {
        Advisor advisor{eightMillimetre()};
        advisor.answer({1, {{130000, 1}}});
        const auto answer = advisor.answer({2, {{width, 1}}});
        if (answer.why.kind != Reason::Kind::SmallestThatFits) continue;
        ++times;
        CHECK(answer.mountings[0].left == 265000 - width);
        CHECK(answer.why.figure == 265000 - width);
    }
    CHECK(times > 0);
}

TEST_CASE("A setting that makes no sense is refused with its fault", "[foresight]") {
    auto setting = eightMillimetre();
    setting.listed.clear();
    CHECK_THROWS_WITH(Advisor{setting}, "no width is listed");
}
