#pragma once

#include "core/cutting/planner/bound.h"

namespace riband::cutting::planner {

/// One way to go on from a state: a load on a piece that takes a widest belt, or (kind `nowhere`) leaving all
/// belts of that width unserved.
struct Branch {
    static constexpr std::size_t nowhere = static_cast<std::size_t>(-1);
    Load load;
    std::int64_t cost;   ///< scaled
    std::int64_t excess; ///< scaled; how far it is at least above the relaxation
    std::int64_t price;  ///< scaled; of its belts
};

/// All ways to go on with the widest item whose excess is under `gap`, least excess first. Every way to
/// finish the state goes through exactly one: either a widest belt is cut in some mounting, or none is. The
/// knapsack and the relaxation are of the same prices. `complete` becomes false if there were too many.
std::vector<Branch> branchesOf(const Model& model, Aim aim, const State& state, const Prices& prices,
                               const Relaxation& relaxation, const Relaxed& relaxed, std::int64_t gap,
                               Stopper& stopper, bool& complete);

} // namespace riband::cutting::planner
