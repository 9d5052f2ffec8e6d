#pragma once

#include "core/measure/extent.h"

#include <vector>

namespace riband::shop::counting {

/// The figures that two neighbouring digits in the wrong order could have been meant for: of 62.4 mm 26.4 and
/// 64.2, of 12 ribs 21. Of widths only where people write no more than hundredths of a millimetre. Pure.
std::vector<std::int64_t> transpositionsOf(std::int64_t count, Unit unit);

} // namespace riband::shop::counting
