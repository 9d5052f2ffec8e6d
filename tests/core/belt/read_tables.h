#pragma once

#include "core/belt/tables.h"

#include <memory>

namespace riband::belt {

/// The texts of resources/tables, read from the source tree.
TableTexts tableTexts();
/// The tables of the project, loaded once.
const Tables& theTables();

} // namespace riband::belt
