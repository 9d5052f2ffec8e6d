#include "core/shop/once.h"

#include "core/shop/reason.h"
#include "core/shop/shelf_fill.h"
#include "core/shop/weigh.h"

#include <algorithm>
#include <cmath>

namespace riband::shop {

namespace {

constexpr std::size_t mostAlternatives = 4;

Suggestion suggestionOf(const Outlook& outlook, const Future* learned, std::vector<Way> ways) {
    const std::vector<Way> all = ways;
    for (Way& way : ways)
        way.reason = reasonOf(outlook, learned, way, all);
    Suggestion suggestion{std::move(ways.front()), {}};
    suggestion.others.assign(std::make_move_iterator(ways.begin() + 1), std::make_move_iterator(ways.end()));
    suggestion.worthVersion = learned ? learned->version : 0;
    return suggestion;
}

Suggestion weighed(const Outlook& outlook, const Future& future, std::vector<Way> ways) {
    Suggestion suggestion = suggestionOf(outlook, &future, std::move(ways));
    suggestion.basis = store::AdviceBasis::LookAhead;
    return suggestion;
}

/// The best for what is wanted now alone.
Suggestion planned(const Outlook& outlook, const Future* future, const cutting::Limits& limits) {
    cutting::Problem problem = outlook.problem;
    const bool learned = future && future->fault == WorthFault::None;
    if (learned) problem.worth = curveOf(future->table, problem.rules.stub);
    const cutting::Plan best = cutting::plan(problem, limits);
    std::vector<Way> ways;
    ways.push_back({best, {}, 0});
    for (const cutting::Plan& other : cutting::alternatives(problem, best, mostAlternatives))
        ways.push_back({other, {}, other.worthSpent - best.worthSpent});
    for (Way& way : ways) {
        way.cost = static_cast<double>(way.plan.worthSpent);
        way.forShelf.resize(way.plan.mountings.size());
        if (future) fillShelf(outlook, future->table, way);
    }
    Suggestion suggestion = suggestionOf(outlook, learned ? future : nullptr, std::move(ways));
    suggestion.basis = store::AdviceBasis::ExactPlan;
    suggestion.fault = future ? future->fault : WorthFault::Unfit;
    return suggestion;
}

} // namespace

bool Way::fillsShelf() const {
    return std::any_of(forShelf.begin(), forShelf.end(), [](const auto& belts) { return !belts.empty(); });
}

Extent Way::left(std::size_t mounting, const cutting::Rules& rules) const {
    Extent left = plan.mountings[mounting].left;
    if (mounting < forShelf.size())
        for (const Extent belt : forShelf[mounting])
            left = left - (belt + rules.kerf);
    return left;
}

Money asMoney(const store::StockedBelt& belt, double width) {
    if (belt.newSleeve.isNone()) return Money::minor(0);
    const auto sleeve = static_cast<double>(belt.newSleeve.count());
    return Money::minor(std::llround(width * static_cast<double>(belt.sleeveCost.inMinor()) / sleeve));
}

Suggestion quick(const Outlook& outlook) {
    const cutting::Plan plan = cutting::bestFit(outlook.problem);
    Way way{plan, reasonOf(outlook.problem, plan), 0, {}, static_cast<double>(plan.worthSpent), 0};
    way.forShelf.resize(plan.mountings.size());
    return {std::move(way), {}};
}

Suggestion suggestBy(const Outlook& outlook, const Future* future, const cutting::Limits& limits) {
    if (future && future->fault == WorthFault::None)
        if (auto ways = weigh(outlook, *future, 1 + mostAlternatives); !ways.empty())
            return weighed(outlook, *future, std::move(ways));
    return planned(outlook, future, limits);
}

Suggestion suggest(const Outlook& outlook, const cutting::Limits& limits) {
    const std::optional<Future> future = futureOf(outlook.past);
    return suggestBy(outlook, future ? &*future : nullptr, limits);
}

} // namespace riband::shop
