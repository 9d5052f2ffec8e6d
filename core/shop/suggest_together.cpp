#include "core/shop/suggest_together.h"

#include "core/shop/reason.h"
#include "core/shop/weigh.h"

namespace riband::shop {

Suggestion suggestTogether(const Outlook& outlook, const cutting::Limits& limits) {
    const std::optional<Future> future = futureOf(outlook.past);
    if (!future || future->fault != WorthFault::None) return suggest(outlook, limits);
    cutting::Problem problem = outlook.problem;
    problem.worth = curveOf(future->table, problem.rules.stub);
    auto joint = weighTogether(outlook, *future, {cutting::plan(problem, limits), cutting::bestFit(problem)});
    if (!joint) return suggest(outlook, limits);
    joint->way.reason = reasonOf(outlook, &*future, joint->way, {joint->way});
    const auto basis = joint->met ? store::AdviceBasis::LookAhead : store::AdviceBasis::ExactPlan;
    return {std::move(joint->way), {}, basis, WorthFault::None, future->version};
}

} // namespace riband::shop
