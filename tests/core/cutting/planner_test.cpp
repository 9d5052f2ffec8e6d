#include "core/cutting/planner.h"

#include "tests/core/cutting/problems.h"
#include "tests/core/cutting/random_problems.h"

using namespace riband;
using namespace riband::cutting;
using namespace riband::cutting::testing;

namespace {

std::string mountedFirst(const Problem& problem, const Plan& plan) {
    REQUIRE(!plan.mountings.empty());
    return problem.pieces[plan.mountings[0].piece].code;
}

Problem large(std::uint64_t seed) {
    Mix mix;
    mix.lines = 120;
    mix.mostBelts = 5;
    mix.sleeves = 150;
    mix.remnants = 60;
    return randomProblem(mix, seed);
}

bool same(const Plan& a, const Plan& b) {
    return a.taken == b.taken && a.mountings == b.mountings && a.unserved == b.unserved && a.bound == b.bound;
}

} // namespace

TEST_CASE("The most width is served, even where less would cost less") {
    // Both belts fit only apart; the 40 alone would leave the 60 whole.
    const Plan plan =
        checkedPlan(toothed({remnant("A", 60), remnant("B", 50)}, {line("1", 40), line("2", 41)}));
    CHECK(plan.unserved.empty());
    // 30 + 30 in place of one 50: 70 - 2.5 - 60 = 7.5 left.
    const Plan two = checkedPlan(toothed({remnant("A", 70)}, {line("wide", 50), line("narrow", 30, 2)}));
    CHECK(two.sold == mm(60));
    CHECK(two.unserved == std::vector<Unserved>{{0, 1, Unserved::Why::NotEnough}});
}

TEST_CASE("A remnant that is used up whole is better than one that leaves a useless strip") {
    // A leaves 12.5: scrap, 45 spent. B leaves 27.5: 32.5 spent.
    const Problem problem = toothed({remnant("A", 45), remnant("B", 60)}, {line("1", 30)});
    CHECK(mountedFirst(problem, checkedPlan(problem)) == "B");
    CHECK(bestFit(problem).worthSpent == 45'000); // what the eye would take
    CHECK(checkedPlan(problem).worthSpent == 32'500);
}

TEST_CASE("Of pieces that cost the same a remnant is used before a new sleeve is opened") {
    const Problem problem = toothed({sleeve("A", 400, -9), remnant("B", 200)}, {line("1", 30)});
    CHECK(mountedFirst(problem, checkedPlan(problem)) == "B");
    CHECK(checkedPlan(problem).newSleeves == 0);
}

TEST_CASE("Of remnants that cost the same the older is used") {
    const Problem problem =
        toothed({remnant("A", 100, 5), remnant("B", 120, 1), remnant("C", 140, 3)}, {line("1", 30)});
    CHECK(mountedFirst(problem, checkedPlan(problem)) == "B");
}

TEST_CASE("Of remnants that cost the same and are as old the first by code is used") {
    const Problem problem =
        toothed({remnant("C", 100), remnant("A", 120), remnant("B", 140)}, {line("1", 30)});
    CHECK(mountedFirst(problem, checkedPlan(problem)) == "A");
}

TEST_CASE("One mounting is better than two, by the trim") {
    // 2 x 30 from A alone: 62.5; from A and B: 65.
    const Problem problem = toothed({remnant("A", 100), remnant("B", 100)}, {line("1", 30, 2)});
    const Plan plan = checkedPlan(problem);
    CHECK(plan.mountings.size() == 1);
    CHECK(plan.worthSpent == 62'500);
}

TEST_CASE("What a mounting costs may be dearer than a little scrap") {
    // Apart: 2 mountings, nothing scrapped, 65 + 2c. Together in the 70: 7.5 scrapped, 70 + c.
    const std::vector<Piece> pieces{remnant("A", 70), remnant("B", 47.5), remnant("C", 47.5)};
    const std::vector<Line> lines{line("1", 30, 2)};
    const Rules rules = Rules::usual(Unit::Micrometre);
    CHECK(checkedPlan({rules, pieces, lines, nullptr, mm(4)}).mountings.size() == 2); // 73 against 74
    CHECK(checkedPlan({rules, pieces, lines, nullptr, mm(6)}).mountings.size() == 1); // 77 against 76
    CHECK(checkedPlan({rules, pieces, lines, nullptr, mm(6)}).worthSpent == 76'000);
}

TEST_CASE("A worth in steps keeps the remnant that is worth more than its width") {
    // Cutting 30 from the 62.5 takes it under 60: 50 - 20 spent. From the 90: 60 to 57.5, 50 - 20 too, but
    // from the 100: 67.5 left, nothing spent.
    const Rules rules = Rules::usual(Unit::Micrometre);
    const auto worth = Worth::steps(rules.stub, {{30'000, 20'000}, {60'000, 50'000}});
    const Problem problem{
        rules, {remnant("A", 62.5), remnant("B", 90), remnant("C", 100)}, {line("1", 30)}, worth};
    const Plan plan = checkedPlan(problem);
    CHECK(mountedFirst(problem, plan) == "C");
    CHECK(plan.worthSpent == 0);
}

TEST_CASE("Ready belts of the asked width are used first, the older before the younger, with no mounting") {
    const Problem problem = toothed({sleeve("S"), ready("R2", 30, 2), ready("R1", 30, 1), ready("R3", 25, 0)},
                                    {line("1", 30), line("2", 30, 2)});
    const Plan plan = checkedPlan(problem);
    CHECK(plan.taken == std::vector<Taken>{{2, 0}, {1, 1}});
    REQUIRE(plan.mountings.size() == 1);
    CHECK(plan.mountings[0].cuts == std::vector<Cut>{{1, 1}});
    CHECK(plan.sold == mm(90));
    CHECK(plan.trim == mm(2.5));
}

TEST_CASE("Ready belts alone may serve an order") {
    const Plan plan = checkedPlan(toothed({ready("R", 30)}, {line("1", 30)}));
    CHECK(plan.mountings.empty());
    CHECK(plan.unserved.empty());
    CHECK(plan.proven);
    CHECK(plan.worthSpent == 0);
}

TEST_CASE("What can't be served says why") {
    using Why = Unserved::Why;
    CHECK(checkedPlan(toothed({}, {line("1", 30)})).unserved == std::vector<Unserved>{{0, 1, Why::NoPiece}});
    CHECK(checkedPlan(toothed({ready("R", 25)}, {line("1", 30)})).unserved ==
          std::vector<Unserved>{{0, 1, Why::NoPiece}});
    CHECK(checkedPlan(toothed({remnant("A", 30)}, {line("1", 30)})).unserved ==
          std::vector<Unserved>{{0, 1, Why::TooNarrow}});
    CHECK(checkedPlan(toothed({remnant("A", 40)}, {line("1", 30, 3)})).unserved ==
          std::vector<Unserved>{{0, 2, Why::NotEnough}});
}

TEST_CASE("Best fit takes the smallest piece that takes all") {
    const Problem problem =
        toothed({remnant("A", 400), remnant("B", 70), remnant("C", 65)}, {line("1", 30, 2)});
    const Plan plan = bestFit(problem);
    CHECK(check(problem, plan) == std::vector<std::string>{});
    CHECK(mountedFirst(problem, plan) == "B"); // 65 - 2.5 - 60 = 2.5 is less than the end
}

TEST_CASE("Best fit of many belts keeps the rules, and the plan is never worse") {
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        Mix mix = smallMix(seed);
        mix.lines = 8;
        const Problem problem = randomProblem(mix, seed + 50'000);
        INFO("seed " << seed);
        const Plan quick = bestFit(problem);
        CHECK(check(problem, quick) == std::vector<std::string>{});
        int asked = 0;
        Limits limits;
        limits.stop = [&] { return ++asked > 50; };
        const Plan best = plan(problem, limits);
        CHECK(check(problem, best) == std::vector<std::string>{});
        CHECK(best.sold >= quick.sold);
        if (best.sold == quick.sold) CHECK(best.worthSpent <= quick.worthSpent);
    }
}

TEST_CASE("The other ways take all from one piece, cheapest first, without the chosen one") {
    const Problem problem = toothed(
        {sleeve("S1"), sleeve("S2"), remnant("A", 45), remnant("B", 60), remnant("C", 30)}, {line("1", 30)});
    const Plan chosen = checkedPlan(problem); // B: 32.5
    const std::vector<Plan> others = alternatives(problem, chosen, 5);
    REQUIRE(others.size() == 2);                     // C is too narrow; S2 is as good as S1
    CHECK(mountedFirst(problem, others[0]) == "S1"); // 32.5, but a new sleeve
    CHECK(mountedFirst(problem, others[1]) == "A");  // 45
    for (const Plan& other : others)
        CHECK(check(problem, other) == std::vector<std::string>{});
    CHECK(alternatives(problem, chosen, 1).size() == 1);
}

TEST_CASE("The same problem gives the same plan, whatever the order of what does not matter") {
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        const Problem problem = randomProblem(smallMix(seed), seed + 60'000);
        CHECK(same(plan(problem), plan(problem)));
        std::vector<Piece> turned{problem.pieces.rbegin(), problem.pieces.rend()};
        const Problem other{problem.rules, turned, problem.lines, problem.worth, problem.mountingCost};
        const Plan a = plan(problem), b = plan(other);
        CHECK(a.worthSpent == b.worthSpent);
        REQUIRE(a.mountings.size() == b.mountings.size());
    }
}

TEST_CASE("Better plans are told as they are found, the quick one first, each better than the last") {
    const Problem problem = large(7);
    std::vector<Plan> told;
    int asked = 0;
    Limits limits;
    limits.better = [&](const Plan& better) { told.push_back(better); };
    limits.stop = [&] { return ++asked > 2000; };
    const Plan best = plan(problem, limits);
    REQUIRE(!told.empty());
    CHECK(same(told[0], bestFit(problem)));
    for (std::size_t i = 1; i < told.size(); ++i) {
        CHECK(check(problem, told[i]) == std::vector<std::string>{});
        CHECK(told[i].sold >= told[i - 1].sold);
    }
    CHECK(told.back().worthSpent >= best.worthSpent);
}

TEST_CASE("A search that is stopped gives the best plan so far and an honest bound") {
    // The same problem with more and more time: each bound must lie under each plan that serves as much.
    for (const std::uint64_t seed : {1u, 2u, 3u}) {
        Mix mix;
        mix.lines = 10;
        mix.remnants = 20;
        mix.sleeves = 4;
        mix.worthSteps = 5;
        const Problem problem = randomProblem(mix, seed);
        std::vector<Plan> plans;
        for (const int patience : {0, 3, 30, 300}) {
            int asked = 0;
            Limits limits;
            limits.stop = [&] { return ++asked > patience; };
            plans.push_back(plan(problem, limits));
            CHECK(check(problem, plans.back()) == std::vector<std::string>{});
        }
        for (const Plan& a : plans)
            for (const Plan& b : plans)
                if (b.sold >= a.sold) CHECK(a.bound <= b.worthSpent);
    }
}

TEST_CASE("A stop at once still gives a whole plan") {
    Limits limits;
    limits.stop = [] { return true; };
    const Problem problem = large(3);
    const Plan best = plan(problem, limits);
    CHECK(check(problem, best) == std::vector<std::string>{});
    CHECK_FALSE(best.proven);
    CHECK(best.sold >= bestFit(problem).sold);
}

TEST_CASE("check() finds what is wrong with a plan") {
    const Problem problem =
        toothed({sleeve("S"), remnant("A", 100), ready("R", 30)}, {line("1", 30, 3), line("2", 20)});
    const Plan good = checkedPlan(problem);
    REQUIRE(good.mountings.size() == 1);
    const auto wrong = [&](auto change) {
        Plan plan = good;
        change(plan);
        return !check(problem, plan).empty();
    };
    CHECK(wrong([](Plan& p) { p.mountings[0].cuts[0].count = 2; }));
    CHECK(wrong([](Plan& p) { std::swap(p.mountings[0].cuts[0], p.mountings[0].cuts[1]); }));
    CHECK(wrong([](Plan& p) { p.mountings[0].left = mm(1); }));
    CHECK(wrong([](Plan& p) { p.mountings[0].rest = Rest::Scrap; }));
    CHECK(wrong([](Plan& p) { p.mountings[0].piece = 2; }));
    CHECK(wrong([](Plan& p) { p.mountings[0].piece = 9; }));
    CHECK(wrong([](Plan& p) { p.mountings.push_back(p.mountings[0]); }));
    CHECK(wrong([](Plan& p) { p.taken.clear(); }));
    CHECK(wrong([](Plan& p) { p.taken[0].line = 1; }));
    CHECK(wrong([](Plan& p) { p.unserved.push_back({0, 1, Unserved::Why::NotEnough}); }));
    CHECK(wrong([](Plan& p) { p.sold = mm(90); }));
    CHECK(wrong([](Plan& p) { p.trim = mm(5); }));
    CHECK(wrong([](Plan& p) { p.kerf = mm(1); }));
    CHECK(wrong([](Plan& p) { p.scrapped = mm(3); }));
    CHECK(wrong([](Plan& p) { ++p.newSleeves; }));
    CHECK(wrong([](Plan& p) { --p.worthSpent; }));
    CHECK(wrong([](Plan& p) { ++p.bound; }));
    CHECK(wrong([](Plan& p) { --p.bound; })); // and still called proven
}
