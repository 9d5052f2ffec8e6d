#pragma once

#include "core/cutting/plan.h"

#include <functional>

namespace riband::cutting {

/// Handed in, since the core has no clock. The planner asks `stop` now and then; when it says yes the best
/// plan so far comes back with an honest bound.
struct Limits {
    std::function<bool()> stop = [] { return false; };
    std::function<void(const Plan&)> better =
        nullptr; ///< told of each better plan, first of the quick best fit
};

/// The plan that serves most width and then spends least worth; ties: fewer new sleeves, fewer mountings,
/// older pieces, piece code. Ready belts of the asked width are used first. Same problem, same plan.
Plan plan(const Problem& problem, const Limits& limits = {});

/// At once: smallest piece that fits, for the first answer and as the reference.
Plan bestFit(const Problem& problem);

/// The other ways to serve the lines: for each piece that can take all of them alone, the plan that does;
/// cheapest first, at most `most`, none equal to `chosen`. Of pieces alike in width and kind only the oldest
/// is shown.
std::vector<Plan> alternatives(const Problem& problem, const Plan& chosen, std::size_t most);

} // namespace riband::cutting
