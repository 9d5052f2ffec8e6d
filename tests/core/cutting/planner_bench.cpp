#include "tests/core/cutting/integer_program.h"
#include "tests/core/cutting/packing_sets.h"
#include "tests/core/cutting/problems.h"
#include "tests/core/cutting/random_problems.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <numeric>

// The planner beside an integer program solved by GLPK, on the same problems in one run; then the planner
// alone on the orders of a busy shop and on batches. Prints ratios and shares; judges nothing.

using namespace riband::cutting;
using namespace riband::cutting::testing;

namespace {

using Clock = std::chrono::steady_clock;

double secondsSince(Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
}

struct Timed {
    Plan plan;
    double seconds;
};

Timed timedPlan(const Problem& problem, double limit) {
    const auto start = Clock::now();
    Limits limits;
    limits.stop = [=] { return secondsSince(start) > limit; };
    Plan best = plan(problem, limits);
    return {std::move(best), secondsSince(start)};
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values.empty() ? 0 : values[values.size() / 2];
}

void againstGlpk(const char* name, const Mix& mix, int problems, int milliseconds) {
    std::vector<double> ratios;
    int ours = 0, theirs = 0, both = 0, equal = 0;
    for (int i = 0; i < problems; ++i) {
        const Problem problem = randomProblem(mix, static_cast<std::uint64_t>(i) + 70'000);
        const Timed timed = timedPlan(problem, 1);
        const auto start = Clock::now();
        const auto optimum = integerProgram(problem, {}, milliseconds);
        ratios.push_back(secondsSince(start) / std::max(timed.seconds, 1e-6));
        ours += timed.plan.proven;
        theirs += optimum.has_value();
        if (!optimum || !timed.plan.proven) continue;
        ++both;
        equal += timed.plan.sold.count() == optimum->served && timed.plan.worthSpent == optimum->spent;
    }
    std::printf(
        "%-34s GLPK takes %8.0f times as long (median of %d); proven: planner %d, GLPK %d; equal %d of %d\n",
        name, median(ratios), problems, ours, theirs, equal, both);
}

void alone(const char* name, const Mix& mix, int problems, double limit) {
    std::vector<double> seconds, gaps;
    int proven = 0;
    for (int i = 0; i < problems; ++i) {
        const Problem problem = randomProblem(mix, static_cast<std::uint64_t>(i) + 80'000);
        const Timed timed = timedPlan(problem, limit);
        seconds.push_back(timed.seconds);
        proven += timed.plan.proven;
        const auto open = static_cast<double>(timed.plan.worthSpent - timed.plan.bound);
        gaps.push_back(open > 0 ? open / static_cast<double>(timed.plan.worthSpent) : 0);
    }
    std::printf("%-34s median %.2f ms, slowest %.0f ms of %.0f allowed; proven %d of %d; gap %.3f %% median, "
                "%.2f %% most\n",
                name, 1e3 * median(seconds), 1e3 * *std::max_element(seconds.begin(), seconds.end()),
                1e3 * limit, proven, problems, 100 * median(gaps),
                100 * *std::max_element(gaps.begin(), gaps.end()));
}

/// Proven share and time of both on the same problems, with the same time for each; bins over the bound that
/// the planner proved. Where GLPK was stopped it would have taken longer: its ratio is then the least.
void packing(const PackingClass& of, int problems, double limit) {
    int ours = 0, theirs = 0;
    std::int64_t over = 0;
    std::vector<double> seconds, glpk;
    for (int i = 0; i < problems; ++i) {
        const Problem problem = packingProblem(of, static_cast<std::uint64_t>(i) + 90'000);
        const Timed timed = timedPlan(problem, limit);
        seconds.push_back(timed.seconds);
        ours += timed.plan.proven;
        over += (timed.plan.worthSpent - timed.plan.bound + of.capacity - 1) / of.capacity;
        const auto start = Clock::now();
        theirs += integerProgram(problem, packingWorth(of), static_cast<int>(limit * 500)).has_value();
        glpk.push_back(secondsSince(start));
    }
    const double ratio = std::accumulate(glpk.begin(), glpk.end(), 0.0) /
                         std::max(std::accumulate(seconds.begin(), seconds.end(), 0.0), 1e-6);
    std::printf(
        "%-34s proven of %d in %.0f s each: planner %d, GLPK %d; median: planner %.0f ms, GLPK %.0f ms; "
        "GLPK takes %s%.0f times as long in all; the planner is %lld bins above its bounds in all\n",
        of.name, problems, limit, ours, theirs, 1e3 * median(seconds), 1e3 * median(glpk),
        theirs < problems ? "at least " : "", ratio, static_cast<long long>(over));
}

Mix mixOf(int lines, int belts, int sleeves, int remnants, int worthSteps = 0) {
    Mix mix;
    mix.lines = lines;
    mix.mostBelts = belts;
    mix.sleeves = sleeves;
    mix.remnants = remnants;
    mix.ready = 0;
    mix.worthSteps = worthSteps;
    return mix;
}

} // namespace

int main() {
    againstGlpk("up to 3 lines, 6 pieces", mixOf(3, 3, 2, 4), 40, 400);
    againstGlpk("up to 6 lines, 9 pieces", mixOf(6, 3, 3, 6), 20, 400);
    alone("up to 3 lines, 60 pieces", mixOf(3, 5, 10, 50), 60, 0.2);
    alone("up to 10 lines, 30 pieces", mixOf(10, 3, 5, 25), 40, 0.2);
    alone("up to 10 lines, 30 pieces, steps", mixOf(10, 3, 5, 25, 6), 40, 0.2);
    alone("up to 200 lines, 300 pieces", mixOf(200, 5, 200, 100), 3, 3);
    for (const PackingClass& each : packingClasses)
        packing(each, 6, 2);
}
