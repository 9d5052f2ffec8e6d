#pragma once

#include "core/cutting/problem.h"

#include <optional>

namespace riband::cutting::testing {

/// What an integer program says about a problem; ready belts left out (they must have been taken before).
struct Optimum {
    std::int64_t served; ///< width
    std::int64_t spent;
};

/// Solves the problem as two integer programs with GLPK, first for the width served, then for the worth
/// spent; nothing if it is not proven within so many milliseconds each. `worth` must be plain or steps:
/// `points` are the points of the steps, none for plain.
std::optional<Optimum> integerProgram(const Problem& problem, const std::vector<Worth::Point>& points,
                                      int milliseconds = 60'000);

} // namespace riband::cutting::testing
