#include "core/cutting/planner.h"
#include "tests/catch.h"
#include "tests/core/cutting/problems.h"

using namespace riband;
using namespace riband::cutting;
using namespace riband::cutting::testing;

TEST_CASE("A mounting costs one trim, then any number of belts") {
    // 100 - 2.5 - 3 x 30 = 7.5 left, over the 5 mm end.
    const Problem problem = toothed({remnant("A", 100)}, {line("1", 30, 3)});
    const Plan plan = checkedPlan(problem);
    REQUIRE(plan.mountings.size() == 1);
    CHECK(plan.trim == mm(2.5));
    CHECK(plan.sold == mm(90));
    CHECK(plan.mountings[0].left == mm(7.5));
}

TEST_CASE("Exactly the ragged end may stay, a micrometre less may not") {
    // 97.5 - 2.5 - 90 = 5: the end of the usual rules.
    CHECK(checkedPlan(toothed({remnant("A", 97.5)}, {line("1", 30, 3)})).unserved.empty());
    const Plan short1 = checkedPlan(toothed({remnant("A", 97.499)}, {line("1", 30, 3)}));
    CHECK(short1.unserved == std::vector<Unserved>{{0, 1, Unserved::Why::NotEnough}});
}

TEST_CASE("The last belt is cut from a piece wide enough to be held") {
    // A 6 mm belt: 15 mm must be held when it is cut, so 9 mm stay: 2.5 + 6 + 9 = 17.5.
    CHECK(checkedPlan(toothed({remnant("A", 17.5)}, {line("1", 6)})).unserved.empty());
    const Plan plan = checkedPlan(toothed({remnant("A", 17.499)}, {line("1", 6)}));
    CHECK(plan.unserved == std::vector<Unserved>{{0, 1, Unserved::Why::TooNarrow}});
}

TEST_CASE("Narrow belts are cut first, so the widest decides what must stay") {
    // 2.5 + 6 + 12 + 5 = 25.5: with the 12 last, 5 mm are enough; with the 6 last, 9 would have to stay.
    const Plan plan = checkedPlan(toothed({remnant("A", 25.5)}, {line("wide", 12), line("narrow", 6)}));
    REQUIRE(plan.unserved.empty());
    CHECK(plan.mountings[0].cuts == std::vector<Cut>{{1, 1}, {0, 1}});
}

TEST_CASE("A rest below the stub is scrap, a rest of the stub is a remnant") {
    // 47.5 - 2.5 - 30 = 15.
    CHECK(checkedPlan(toothed({remnant("A", 47.5)}, {line("1", 30)})).mountings[0].rest == Rest::Remnant);
    const Plan plan = checkedPlan(toothed({remnant("A", 47.499)}, {line("1", 30)}));
    CHECK(plan.mountings[0].rest == Rest::Scrap);
    CHECK(plan.scrapped == mm(14.999));
    CHECK(plan.worthSpent == 47499); // the whole piece is gone
}

TEST_CASE("Nothing is left where the rules ask for no end") {
    Rules rules = Rules::usual(Unit::Micrometre);
    rules.end = mm(0);
    const Problem problem{rules, {remnant("A", 32.5)}, {line("1", 30)}};
    const Plan plan = checkedPlan(problem);
    CHECK(plan.mountings[0].rest == Rest::Nothing);
    CHECK(plan.scrapped == mm(0));
}

TEST_CASE("Every belt pays the kerf, the last one too") {
    Rules rules = Rules::usual(Unit::Micrometre);
    rules.kerf = mm(0.5);
    // 100 - 2.5 - 3 x 30.5 = 6
    const Problem problem{rules, {remnant("A", 100)}, {line("1", 30, 3)}};
    const Plan plan = checkedPlan(problem);
    CHECK(plan.kerf == mm(1.5));
    CHECK(plan.mountings[0].left == mm(6));
}

TEST_CASE("The display's stops: one by one, and cumulative with the kerf between") {
    Rules rules = Rules::usual(Unit::Micrometre);
    rules.kerf = mm(0.5);
    const Problem problem{rules, {remnant("A", 200)}, {line("1", 30, 2), line("2", 20)}};
    const Plan plan = checkedPlan(problem);
    const std::vector<Stop> stops = stopsOf(problem, plan.mountings.at(0));
    REQUIRE(stops.size() == 3);
    CHECK(stops[0].each == mm(20));
    CHECK(stops[0].cumulative == mm(20));
    CHECK(stops[1].each == mm(30));
    CHECK(stops[1].cumulative == mm(50.5)); // 20 + 0.5 + 30
    CHECK(stops[2].cumulative == mm(81));   // 50.5 + 0.5 + 30
    CHECK(stops[2].line == 0);
}

TEST_CASE("A ribbed belt is cut in the groove, so its trim is one whole rib") {
    // 20 ribs - 1 - 2 x 6 = 7 left; 3 can be held.
    const Problem problem = ribbed({{"A", PieceKind::Sleeve, Ribs{20}, day(0)}}, {{"1", Ribs{6}, 2}});
    const Plan plan = checkedPlan(problem);
    CHECK(plan.trim == Extent{Ribs{1}});
    CHECK(plan.mountings.at(0).left == Extent{Ribs{7}});
    CHECK(plan.mountings[0].rest == Rest::Remnant);
    CHECK(plan.worthSpent == 13);
}

TEST_CASE("A ribbed piece keeps one rib of end, and three to be held") {
    CHECK(checkedPlan(ribbed({{"A", PieceKind::Remnant, Ribs{8}, day(0)}}, {{"1", Ribs{6}, 1}}))
              .unserved.empty());
    CHECK(!checkedPlan(ribbed({{"A", PieceKind::Remnant, Ribs{7}, day(0)}}, {{"1", Ribs{6}, 1}}))
               .unserved.empty());
    // one rib: 1 + 1 + (3 - 1) = 4
    CHECK(checkedPlan(ribbed({{"A", PieceKind::Remnant, Ribs{4}, day(0)}}, {{"1", Ribs{1}, 1}}))
              .unserved.empty());
    CHECK(!checkedPlan(ribbed({{"A", PieceKind::Remnant, Ribs{3}, day(0)}}, {{"1", Ribs{1}, 1}}))
               .unserved.empty());
}

TEST_CASE("A problem refuses what can't be meant") {
    const Rules rules = Rules::usual(Unit::Micrometre);
    const auto make = [&](std::vector<Piece> pieces, std::vector<Line> lines) {
        return Problem{rules, std::move(pieces), std::move(lines)};
    };
    CHECK_THROWS_AS(make({remnant("A", 50), remnant("A", 60)}, {line("1", 30)}), std::invalid_argument);
    CHECK_THROWS_AS(make({remnant("A", 50)}, {line("1", 30), line("1", 20)}), std::invalid_argument);
    CHECK_THROWS_AS(make({remnant("A", 50)}, {line("1", 0)}), std::invalid_argument);
    CHECK_THROWS_AS(make({remnant("A", 50)}, {line("1", 30, 0)}), std::invalid_argument);
    CHECK_THROWS_AS(make({remnant("A", 50)}, {{"1", Ribs{6}, 1}}), std::invalid_argument);
    CHECK_THROWS_AS(make({{"A", PieceKind::Sleeve, Ribs{60}, day(0)}}, {line("1", 30)}),
                    std::invalid_argument);
    CHECK_THROWS_AS(make({remnant("A", 50)}, {line("1", 30, 2'000'000)}), std::invalid_argument);
    CHECK_THROWS_AS(make({remnant("A", 200'000)}, {line("1", 30)}), std::invalid_argument);
    CHECK_NOTHROW(make({}, {}));
}

TEST_CASE("Plain worth is the width itself from the stub on") {
    const auto worth = Worth::plain(mm(15));
    CHECK(worth->of(14'999) == 0);
    CHECK(worth->of(15'000) == 15'000);
    CHECK(worth->of(400'000) == 400'000);
}

TEST_CASE("Steps of worth hold from their point upwards, and nothing below the stub is worth anything") {
    const auto worth = Worth::steps(mm(15), {{10'000, 1}, {30'000, 20'000}, {60'000, 50'000}});
    CHECK(worth->of(9'000) == 0);
    CHECK(worth->of(12'000) == 0);
    CHECK(worth->of(15'000) == 1);
    CHECK(worth->of(29'999) == 1);
    CHECK(worth->of(30'000) == 20'000);
    CHECK(worth->of(1'000'000) == 50'000);
    CHECK(Worth::steps(mm(15), {})->of(100'000) == 0);
    CHECK_THROWS_AS(Worth::steps(mm(15), {{10, 5}, {20, 4}}), std::invalid_argument);
    CHECK_THROWS_AS(Worth::steps(mm(15), {{20, 4}, {10, 5}}), std::invalid_argument);
    CHECK_THROWS_AS(Worth::steps(mm(15), {{20, -4}}), std::invalid_argument);
}
