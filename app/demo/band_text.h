#pragma once

#include "core/shop/suggest.h"

#include <QString>

namespace riband::app {

/// A mounting as a line of characters, to scale: the far edge left, the blade right.
/// "[ 377.5 stays                         |30|30|30|/]"
QString bandText(const cutting::Problem& problem, const shop::Way& way, std::size_t mounting);

} // namespace riband::app
