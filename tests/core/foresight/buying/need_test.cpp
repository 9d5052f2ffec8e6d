#include "tests/catch.h"
#include "tests/core/foresight/buying/cases.h"

#include <cmath>

using namespace riband::foresight;

namespace {

// A belt of 70 takes a whole sleeve of 100: what is left, 27.5 less, can't give another.
struct WholeSleeves {
    Setting setting = hundredMillimetres({70000});
    Record record = everyDays(10, 300, {{70000, 1}});
    Need need(double mean, int runs) const { // of sleeves in 14 days
        const Futures futures{record, given(70000 * mean / 2)};
        return needOf(setting, {}, futures, 14, runs, Dice{7});
    }
};

} // namespace

TEST_CASE("Where each order takes a sleeve, the need is Poisson's", "[buying]") {
    // R: ppois(0:5, 1.5) and qpois(c(.9, .95, .99), 1.5); the same in any handbook of statistics
    const double published[] = {0.2231302, 0.5578254, 0.8088468, 0.9343575, 0.9814241, 0.9955440};
    const int runs = 40000;
    const Need need = WholeSleeves{}.need(1.5, runs);
    for (int n = 0; n < 6; ++n) {
        const double share = published[n];
        CHECK(need.enoughWith(n) == Approx(share).margin(4 * std::sqrt(share * (1 - share) / runs)));
    }
    CHECK(need.sleevesFor(0.90) == 3);
    CHECK(need.sleevesFor(0.95) == 4);
    CHECK(need.sleevesFor(0.99) == 5);
}

TEST_CASE("What is lost is what Poisson's loss function says", "[buying]") {
    // E(N - n)+ for a mean of 1.5: n=0 1.5; n=1 0.5 + p0; n=2 with p1: 2 p0 + p1 - 0.5
    const double p0 = std::exp(-1.5), p1 = 1.5 * p0;
    const Need need = WholeSleeves{}.need(1.5, 40000);
    CHECK(need.lostWith(0) == Approx(70000 * 1.5).epsilon(0.02));
    CHECK(need.lostWith(1) == Approx(70000 * (0.5 + p0)).epsilon(0.03));
    CHECK(need.lostWith(2) == Approx(70000 * (2 * p0 + p1 - 0.5)).epsilon(0.05));
    CHECK(need.lostWith(99) == 0);
}

TEST_CASE("A remnant gives what it can before a sleeve is opened", "[buying]") {
    const Setting setting = hundredMillimetres({30000});
    Record record{.orders = {{0, {{30000, 1}}}}, .days = 100};
    // Two orders at the very least in ten thousand days; two belts of 30 come from a sleeve of 100, one
    // from 40.
    const Futures futures{record, given(30000 * 7 / 5.0)};
    const Need bare = needOf(setting, {}, futures, 10, 2000, Dice{3});
    const Need with = needOf(setting, {{40000, 0}}, futures, 10, 2000, Dice{3});
    CHECK(with.enoughWith(0) == Approx(3 * std::exp(-2.0)).margin(0.04)); // none or one order, mean two
    CHECK(bare.enoughWith(0) == Approx(std::exp(-2.0)).margin(0.04));
    CHECK(bare.enoughWith(1) == Approx(5 * std::exp(-2.0)).margin(0.04)); // up to two
}

TEST_CASE("Weeks of the bootstrap are weeks that were", "[buying]") {
    Record record{.orders = {{1, {{30000, 1}}}, {2, {{20000, 2}}}, {15, {{50000, 1}}}}, .days = 28};
    Forecast forecast = given(1);
    forecast.method = Method::Bootstrap;
    const Futures futures{record, forecast};
    Dice dice{5};
    std::vector<Futures::Drawn> drawn;
    int both = 0, first = 0;
    for (int run = 0; run < 500; ++run) {
        futures.draw(dice, 7, drawn);
        if (drawn.empty()) continue;
        const bool isFirst = drawn.front().order == 0;
        first += isFirst ? 1 : 0;
        both += isFirst && drawn.size() == 2 && drawn[1].order == 1 && drawn[1].day == 2 ? 1 : 0;
    }
    CHECK(first > 50);
    CHECK(both == first); // what came in one week comes in one week
}

TEST_CASE("A record is counted by whole weeks that end today", "[buying]") {
    Record record{.orders = {{0.5, {{10000, 1}}}, {3, {{10000, 2}}}, {16.9, {{30000, 1}}}}, .days = 17};
    CHECK(record.weekly() == Series{20000, 30000}); // days 3 to 10, 10 to 17; 0 to 3 is no whole week
    CHECK(record.meanWidth() == Approx(20000));
    CHECK(Record{}.weekly().empty());
}

TEST_CASE("What no sleeve can give is not asked of one", "[buying]") {
    const Setting setting = hundredMillimetres({30000});
    CHECK(canGive(setting, 92500));
    CHECK_FALSE(canGive(setting, 92501));
    const auto kept = servable(setting, {{1, {{95000, 1}}}, {2, {{95000, 1}, {30000, 1}}}});
    REQUIRE(kept.size() == 1);
    CHECK(kept[0].lines == std::vector<Line>{{30000, 1}});
}
