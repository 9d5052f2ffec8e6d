#pragma once

#include "core/belt/reader.h"
#include "tests/core/belt/read_tables.h"

#include <string>
#include <string_view>

namespace riband::belt {

/// An understanding as one line of text, so that tests read as tables: each reading as
/// "H8M 1200 @30 x3 CodeRounded", joined by " | ", the question behind "? "; a fault as "! LengthNotMultiple
/// 1204 ~H8M 1200 ~H8M 1216".
std::string inWords(const Understanding& understanding);
/// The same of a text, by the tables of the project.
std::string understood(std::string_view text);

} // namespace riband::belt
