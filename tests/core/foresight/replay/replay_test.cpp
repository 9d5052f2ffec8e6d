#include "core/foresight/replay/replay.h"

#include "tests/catch.h"
#include "tests/core/foresight/buying/cases.h"

using namespace riband::foresight;

namespace {

/// 30 mm every five days from a sleeve of 100; sleeves come after seven days, looked at every seven.
ReplayRules thirties() {
    ReplayRules rules;
    rules.setting = hundredMillimetres({30000});
    rules.sleeve = {100000, 4000, 7};
    return rules;
}

Played played(const ReplayRules& rules, const StockRule& stock, double step = 5) {
    const Record record = everyDays(step, 365, {{30000, 1}});
    return playYear(rules, stock, record.orders, 365);
}

} // namespace

TEST_CASE("A year by hand: two belts a sleeve, one mounting each", "[replay]") {
    // 73 orders, two a sleeve: 37 opened, the last holds one belt yet: 100 - 32.5 = 67.5 left
    const Played year = played(thirties(), {.reorderPoint = 9, .lot = 3});
    CHECK(year.orders == 73);
    CHECK(year.lostOrders == 0);
    CHECK(year.sold == 73 * 30000.0);
    CHECK(year.sleeves == 37);
    CHECK(year.mountings == 73);
    CHECK(year.used == 37 * 100000 - 67500);
    CHECK(year.rubber == Approx(year.used * 0.04));
    CHECK(year.yield() == Approx(73 * 30000.0 / (3700000 - 67500)));
}

TEST_CASE("Less trim gives a third belt a sleeve", "[replay]") {
    ReplayRules rules = thirties();
    rules.setting.rules.trim = 1500; // 3 x 31.5 + 5 = 99.5
    CHECK(played(rules, {.reorderPoint = 9, .lot = 3}).sleeves == 25);
}

TEST_CASE("Without sleeves everybody is sent away until the first delivery", "[replay]") {
    ReplayRules rules = thirties();
    rules.sleeve.leadDays = 100;
    const Played year = played(rules, {.reorderPoint = 1, .lot = 0});
    // one sleeve at first: days 2.5 and 7.5 are served; seen missing at day 7, another comes at 107 for 107.5
    // and 112.5, asked for again at 112 (day 107.5 opened it: seen at 112), here at 212, then 317: 2 + 2 + 2
    // + 2.
    CHECK(year.orders - year.lostOrders == 8);
    CHECK(year.lost == year.lostOrders * 30000);
    CHECK(year.bought == 4);
}

TEST_CASE("Rests under another least remnant are thrown away", "[replay]") {
    ReplayRules rules = thirties();
    rules.leastRemnant = 70000; // the 67.5 after the first belt as well: one belt a sleeve
    const Played year = played(rules, {.reorderPoint = 9, .lot = 3});
    CHECK(year.sleeves == 73);
    CHECK(year.used == 73 * 100000);
}

TEST_CASE("What the other sleeve can't give is lost, not cut", "[replay]") {
    ReplayRules rules = thirties();
    rules.setting.sleeve = rules.sleeve.width = 35000;
    const Played year = played(rules, {.reorderPoint = 1, .lot = 1});
    CHECK(year.sold == 0);
    CHECK(year.lostOrders == 73);
    CHECK(year.lost == 73 * 30000.0);
}

TEST_CASE("A higher service wants a higher reorder point", "[replay]") {
    const Record record = everyDays(2, 365, {{30000, 1}});
    ReplayRules low = thirties(), high = thirties();
    low.terms.service = 0.7;
    high.terms.service = 0.99;
    const StockRule few = stockRuleOf(low, record), many = stockRuleOf(high, record);
    CHECK(few.reorderPoint < many.reorderPoint);
    CHECK(playYear(low, few, record.orders, 365).stockDays <
          playYear(high, many, record.orders, 365).stockDays);
}

TEST_CASE("Waiting till closing time saves mountings", "[replay]") {
    ReplayRules rules = thirties(); // four belts a day, twelve a sleeve
    rules.setting.sleeve = rules.sleeve.width = 400000;
    const StockRule stock{.reorderPoint = 20, .lot = 5};
    const Played each = played(rules, stock, 0.25);
    rules.together = true;
    const Played together = played(rules, stock, 0.25);
    CHECK(together.sold + together.lost == each.sold + each.lost);
    CHECK(together.mountings < 0.7 * each.mountings);
    CHECK(together.yield() > each.yield());
}
