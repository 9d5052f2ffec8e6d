#pragma once

#include "core/cutting/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::shop {

/// The way that the clerk chose, made from pieces `codes`, as a plan of today's `problem` (one line); nothing
/// if it can't be done any more: a piece is gone or too much of it is promised, or the way is for another
/// quantity.
std::optional<cutting::Plan> stillPossible(const cutting::Problem& problem, const cutting::Plan& way,
                                           const std::vector<std::string>& codes);

} // namespace riband::shop
