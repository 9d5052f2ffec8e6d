#pragma once

#include "core/cutting/problem.h"

#include <array>

namespace riband::cutting::testing {

/// The best of all plans, found by trying them all; for a handful of belts and pieces. Its own reading of the
/// rules, its own sums: {width served, worth spent, new sleeves, mountings, sum of the days of birth, sum of
/// the ranks of the codes}.
using Best = std::array<std::int64_t, 6>;
Best bruteForce(const Problem& problem);

} // namespace riband::cutting::testing
