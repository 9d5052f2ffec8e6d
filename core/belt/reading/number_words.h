#pragma once

#include "core/belt/reading/tokens.h"

namespace riband::belt::reading {

/// Joins words of numbers into one number: "twelve-hundred" is 1200, "forty-seven" 47, "three eight" stays
/// two numbers.
void joinNumberWords(std::vector<Token>& tokens, const Tables& tables);

} // namespace riband::belt::reading
