#pragma once

#include "core/belt/tables.h"

namespace riband {

/// The standards tables that the program carries (resources/tables/*.csv), by name without ending.
belt::TableTexts tableTexts();

} // namespace riband
