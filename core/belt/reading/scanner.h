#pragma once

#include "core/belt/reading/tokens.h"

namespace riband::belt::reading {

/// Thrown by scan() at a sign that means nothing, or a number that is far too long. Caught by tokensOf().
struct WrongSign {
    ReadFault fault;
};

/// The numbers and words of the text as they stand; words of numbers, units and mixed fractions are not yet
/// joined.
Tokens scan(std::string_view text, const Tables& tables);

} // namespace riband::belt::reading
