#include "tests/core/cutting/packing_sets.h"
#include "tests/core/cutting/problems.h"

using namespace riband;
using namespace riband::cutting;
using namespace riband::cutting::testing;

TEST_CASE("Small packing problems of the published kinds are packed into as few bins as can be",
          "[planner]") {
    // Five triplets fill five bins: no better is possible, and the planner must see it.
    const PackingClass small{"triplets", 15, 1000, 0, 0};
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const Problem problem = packingProblem(small, seed);
        const Plan plan = checkedPlan(problem);
        CHECK(plan.unserved.empty());
        CHECK(plan.proven);
        CHECK(plan.worthSpent == 5 * small.capacity);
        CHECK(plan.newSleeves == 5);
    }
}

TEST_CASE("Items of 30 to 100 in bins of 150: never fewer bins than the width asks for", "[planner]") {
    const PackingClass small{"uniform", 14, 150, 30, 100};
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const Problem problem = packingProblem(small, seed);
        std::int64_t width = 0;
        for (const Line& line : problem.lines)
            width += line.extent.count() * line.quantity;
        const Plan plan = checkedPlan(problem);
        CHECK(plan.proven);
        CHECK(plan.worthSpent % small.capacity == 0);
        CHECK(plan.worthSpent >= width);
        CHECK(plan.worthSpent < width + width); // two bins that are half empty would be one
    }
}
