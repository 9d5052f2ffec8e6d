#pragma once

#include "core/belt/tables.h"

#include <optional>
#include <string_view>

namespace riband::belt::reading {

/// A belt as designation() writes it, letter by letter; nothing if it is anything else. What stands behind
/// the number is the construction, whatever it is.
std::optional<Belt> readCanonical(std::string_view text, const Tables& tables);

} // namespace riband::belt::reading
