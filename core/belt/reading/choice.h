#pragma once

#include "core/belt/reading/ways.h"

namespace riband::belt::reading {

/// All readings of a phrase with the question that tells them apart, or the fault of the likeliest one.
Understanding choose(const Phrase& phrase, const Tables& tables);

} // namespace riband::belt::reading
