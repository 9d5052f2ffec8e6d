#pragma once

#include "core/measure/money.h"

#include <optional>
#include <string_view>

namespace riband {

/// The currency with this code of three letters, capital or small, and as many decimals as ISO 4217 gives it
/// (list of those that have not two: from memory); nothing if it is no such code.
std::optional<Currency> currencyNamed(std::string_view code);

} // namespace riband
