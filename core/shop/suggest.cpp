#include "core/shop/suggest.h"

#include "core/shop/reason.h"

namespace riband::shop {

namespace {

constexpr std::size_t mostAlternatives = 4;

Way wayOf(const Outlook& outlook, const cutting::Plan& plan, const cutting::Plan& best) {
    return {plan, reasonOf(outlook.problem, plan), plan.worthSpent - best.worthSpent};
}

Suggestion suggestionOf(const Outlook& outlook, const cutting::Plan& best) {
    Suggestion suggestion{wayOf(outlook, best, best), {}};
    for (const cutting::Plan& other : cutting::alternatives(outlook.problem, best, mostAlternatives))
        suggestion.others.push_back(wayOf(outlook, other, best));
    return suggestion;
}

} // namespace

Suggestion quick(const Outlook& outlook) {
    const cutting::Plan plan = cutting::bestFit(outlook.problem);
    return {wayOf(outlook, plan, plan), {}};
}

Suggestion suggest(const Outlook& outlook, const cutting::Limits& limits) {
    return suggestionOf(outlook, cutting::plan(outlook.problem, limits));
}

} // namespace riband::shop
