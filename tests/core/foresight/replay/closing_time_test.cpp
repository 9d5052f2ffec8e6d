#include "core/foresight/replay/closing_time.h"

#include "core/foresight/dice.h"
#include "tests/catch.h"
#include "tests/core/foresight/buying/cases.h"

using namespace riband::foresight;

namespace {

double cost(const Counter& counter, const Setting& setting) {
    return counter.opened * setting.sleeve * 1.03 - counter.rack.held() +
           counter.mountings * setting.rules.mountingCost;
}

} // namespace

TEST_CASE("Two orders of one belt cost one trim together", "[replay]") {
    const Setting setting = hundredMillimetres({30000});
    Counter each{BestFit{setting}}, together{BestFit{setting}};
    const std::vector<Order> day{{1, {{30000, 1}}}, {1, {{20000, 1}}}};
    CHECK(cutEach(each, day, 5).empty());
    CHECK(cutTogether(together, setting, day, 5).empty());
    CHECK(each.mountings == 2);
    CHECK(each.rack.held() == 45000); // 100 - 32.5 - 22.5
    CHECK(together.mountings == 1);
    CHECK(together.rack.held() == 47500);
    CHECK(together.opened == 1);
}

TEST_CASE("Joining never takes more than cutting each by itself", "[replay]") {
    Setting setting = hundredMillimetres({20000, 30000, 50000});
    setting.rules.mountingCost = 4000;
    Dice dice{3};
    Counter each{BestFit{setting}}, together{BestFit{setting}};
    for (int day = 1; day < 300; ++day) {
        std::vector<Order> orders;
        for (int n = dice.below(5); n >= 0; --n)
            orders.push_back({static_cast<double>(day), {{10000 * (1 + dice.below(6)), 1 + dice.below(2)}}});
        Counter one = together, other = together;
        cutEach(one, orders, 1000);
        cutTogether(other, setting, orders, 1000);
        CHECK(cost(other, setting) <= cost(one, setting) + 1e-6);
        together = other;
    }
    CHECK(together.opened > 20);
}

TEST_CASE("Who needs a sleeve that is not there is sent away, and the rack stays", "[replay]") {
    const Setting setting = hundredMillimetres({30000});
    Counter counter{BestFit{setting}};
    counter.rack.keep(40000, 0);
    const auto refused = cutEach(counter, {{1, {{50000, 1}}}, {2, {{30000, 1}}}}, 0);
    REQUIRE(refused.size() == 1);
    CHECK(refused[0].lines.front().width == 50000);
    CHECK(counter.mountings == 1);
    CHECK(counter.rack.held() == 0); // 40 - 32.5 is of no use
}
