#include "core/cutting/planner.h"

#include "core/cutting/planner/best_fit.h"
#include "core/cutting/planner/small.h"

#include <algorithm>

namespace riband::cutting {

using namespace planner;

namespace {

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
    if (auto exact = small(model)) return proven(planOf(model, *exact));
    return planOf(model, loads);
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
