#pragma once

#include "core/belt/reading/mention.h"

namespace riband::belt::reading {

/// A V-belt by its section, such as SPZ, 4L or 13 x 1000: not cut from a sleeve.
std::optional<ReadFault> vBeltIn(const std::vector<Token>& tokens, const Tables& tables);
/// 4L1000: a digit glued to L in front is a light-duty V-belt; 300L is not.
bool isLightDuty(const std::vector<Token>& tokens, const Mention& mention, const Tables& tables);
/// Belts by the metre.
std::optional<ReadFault> openEnded(const std::vector<Token>& tokens, const Tables& tables);

} // namespace riband::belt::reading
