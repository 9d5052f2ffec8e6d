#pragma once

#include "core/belt/tables.h"

namespace riband::app {

/// The standards tables that the program carries. Throws std::runtime_error if they are damaged.
std::shared_ptr<const belt::Tables> standardTables();

} // namespace riband::app
