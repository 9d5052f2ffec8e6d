#include "tests/core/cutting/integer_program.h"

#include "tests/core/cutting/problems.h"
#include "tests/core/cutting/random_problems.h"

using namespace riband;
using namespace riband::cutting;
using namespace riband::cutting::testing;

namespace {

/// The points of the problem's worth, read off the curve itself.
std::vector<Worth::Point> pointsOf(const Problem& problem, const Mix& mix) {
    std::vector<Worth::Point> points;
    if (mix.worthSteps == 0) return points;
    const std::int64_t stub = problem.rules.stub.count();
    points.push_back({stub, problem.worth->of(stub)});
    for (std::int64_t extent = stub; extent <= mix.sleeve; ++extent)
        if (problem.worth->of(extent) != points.back().worth)
            points.push_back({extent, problem.worth->of(extent)});
    return points;
}

void compare(const Mix& mix, std::uint64_t seed) {
    const Problem problem = randomProblem(mix, seed);
    INFO("seed " << seed);
    const Plan plan = checkedPlan(problem);
    const auto optimum = integerProgram(problem, pointsOf(problem, mix));
    REQUIRE(optimum);
    CHECK(plan.proven);
    CHECK(plan.sold.count() == optimum->served);
    CHECK(plan.worthSpent == optimum->spent);
}

} // namespace

TEST_CASE("The plan costs what an integer program solved by GLPK costs") {
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        Mix mix = smallMix(seed);
        mix.ready = 0;
        compare(mix, seed + 20'000);
    }
}

TEST_CASE("The plan of an order of many lines costs what an integer program costs") {
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        Mix mix = smallMix(seed);
        mix.ready = 0;
        mix.lines = 7;
        mix.remnants = 5;
        compare(mix, seed + 30'000);
    }
}
