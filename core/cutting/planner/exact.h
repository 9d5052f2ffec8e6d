#pragma once

#include "core/cutting/planner/search.h"

namespace riband::cutting::planner {

struct Solved {
    Loads loads;
    std::int64_t bound = 0; ///< of the worth spent by any plan that serves as much
    bool proven = false;    ///< no plan serves more, and none that serves as much spends less
};

/// Improves `start` by branch and bound, in the order of what matters: width served, worth spent, new
/// sleeves, mountings, age; each search looks at so many states at most. `better` is told of each better one.
Solved solve(const Model& model, Loads start, std::int64_t states, Stopper& stopper,
             const std::function<void(const Loads&)>& better);

} // namespace riband::cutting::planner
