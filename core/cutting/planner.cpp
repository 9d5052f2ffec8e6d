#include "core/cutting/planner.h"

#include "core/cutting/planner/best_fit.h"
#include "core/cutting/planner/exact.h"
#include "core/cutting/planner/small.h"

#include <algorithm>

namespace riband::cutting {

using namespace planner;

namespace {

/// Without a stop of the caller a search ends after about so many list steps: some twenty seconds.
constexpr std::int64_t mostWork = 4'000'000'000;

/// A table of so many steps is made at once (some ten milliseconds), one of so many when the search has not
/// come to an end after so many states (under a second).
constexpr std::int64_t stepsAtOnce = 3'000'000;
constexpr std::int64_t stepsInNeed = 300'000'000;
constexpr std::int64_t statesBeforeTable = 60;

Plan proven(Plan plan) {
    plan.bound = plan.worthSpent;
    plan.proven = true;
    return plan;
}

/// Whether `chosen` serves all from one piece just like this: then the load is no other way.
bool isChosen(const Model& model, const Load& load, const Plan& chosen) {
    if (chosen.mountings.size() != 1 || !chosen.unserved.empty()) return false;
    const auto& pieces = model.kinds[load.kind].pieces;
    return std::count(pieces.begin(), pieces.end(), chosen.mountings[0].piece) > 0;
}

} // namespace

Plan bestFit(const Problem& problem) {
    const Model model{problem};
    return planOf(model, planner::bestFit(model));
}

Plan plan(const Problem& problem, const Limits& limits) {
    const Model model{problem};
    Loads loads = planner::bestFit(model);
    if (limits.better) limits.better(planOf(model, loads));
    Stopper stopper{limits.stop, mostWork};
    const std::int64_t steps = stepsOfSmall(model);
    if (steps <= stepsAtOnce)
        if (const auto exact = small(model, stopper)) return proven(planOf(model, *exact));
    Loads other = widestFirst(model);
    if (scoreOf(model, other) < scoreOf(model, loads)) loads = std::move(other);
    const bool tabled = steps <= stepsInNeed;
    const Solved solved = solve(model, std::move(loads), tabled ? statesBeforeTable : unlimited, stopper,
                                [&](const Loads& better) {
                                    if (limits.better) limits.better(planOf(model, better));
                                });
    if (!solved.proven && tabled && !stopper.stopped())
        if (const auto exact = small(model, stopper)) return proven(planOf(model, *exact));
    Plan best = planOf(model, solved.loads);
    best.bound = solved.bound;
    best.proven = solved.proven && best.bound == best.worthSpent;
    return best;
}

std::vector<Plan> alternatives(const Problem& problem, const Plan& chosen, std::size_t most) {
    const Model model{problem};
    std::vector<std::pair<Score, Load>> ways;
    for (std::size_t kind = 0; kind < model.kinds.size(); ++kind)
        if (const auto load = allFrom(model, kind); load && !isChosen(model, *load, chosen))
            ways.emplace_back(scoreOf(model, {*load}), *load);
    std::sort(ways.begin(), ways.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Plan> plans;
    for (std::size_t i = 0; i < std::min(most, ways.size()); ++i) {
        plans.push_back(planOf(model, {ways[i].second}));
        // What holds for the chosen plan holds for each that serves as much.
        if (chosen.unserved.empty()) plans.back().bound = std::min(chosen.bound, plans.back().worthSpent);
    }
    return plans;
}

} // namespace riband::cutting
