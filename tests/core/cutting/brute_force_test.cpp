#include "tests/core/cutting/brute_force.h"

#include "core/cutting/planner/best_fit.h"
#include "core/cutting/planner/exact.h"
#include "core/cutting/planner/small.h"
#include "tests/core/cutting/problems.h"
#include "tests/core/cutting/random_problems.h"

using namespace riband;
using namespace riband::cutting;
using namespace riband::cutting::testing;

namespace {

std::int64_t rankOf(const Problem& problem, std::size_t piece) {
    std::int64_t rank = 0;
    for (const Piece& other : problem.pieces)
        rank += other.code < problem.pieces[piece].code;
    return rank;
}

Best bestOf(const Problem& problem, const Plan& plan) {
    Best best{plan.sold.count(),
              plan.worthSpent,
              plan.newSleeves,
              static_cast<std::int64_t>(plan.mountings.size()),
              0,
              0};
    for (const Mounting& mounting : plan.mountings) {
        best[4] += problem.pieces[mounting.piece].born.time_since_epoch().count();
        best[5] += rankOf(problem, mounting.piece);
    }
    return best;
}

} // namespace

TEST_CASE("The plan is the best of all plans, ties included") {
    for (std::uint64_t seed = 0; seed < 1200; ++seed) {
        Mix mix = smallMix(seed);
        mix.mostBelts = 2 + static_cast<int>(seed % 2);
        const Problem problem = randomProblem(mix, seed);
        INFO("seed " << seed);
        const Plan plan = checkedPlan(problem);
        CHECK(plan.proven);
        CHECK(bestOf(problem, plan) == bruteForce(problem));
    }
}

TEST_CASE("Branch and bound finds the best of all plans where the table would do as well") {
    for (std::uint64_t seed = 0; seed < 1200; ++seed) {
        Mix mix = smallMix(seed);
        mix.mostBelts = 2 + static_cast<int>(seed % 2);
        const Problem problem = randomProblem(mix, seed + 10'000);
        INFO("seed " << seed);
        const planner::Model model{problem};
        planner::Stopper stopper{nullptr, 1'000'000'000};
        const planner::Solved solved = planner::solve(model, planner::widestFirst(model), planner::unlimited,
                                                      stopper, [](const planner::Loads&) {});
        Plan plan = planOf(model, solved.loads);
        plan.bound = solved.bound;
        plan.proven = solved.proven;
        CHECK(check(problem, plan) == std::vector<std::string>{});
        CHECK(plan.proven);
        // Age and code are evened out piece by piece here, so they are not compared.
        const Best best = bruteForce(problem), found = bestOf(problem, plan);
        for (std::size_t i = 0; i < 4; ++i)
            CHECK(found[i] == best[i]);
    }
}
