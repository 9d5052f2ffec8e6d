#pragma once

#include "core/measure/money.h"
#include "core/shop/buying/what_if.h"

#include <QString>

namespace riband::app {

/// "sleeve=500,price=+15%": what would be otherwise, in one alternative. Throws BadInput that names the key.
/// Keys: trim, kerf, sleeve, least (mm, or "3 ribs"), price (+15%, -5%), service (98%), lead and review
/// (days), remnants (of a belt), together (yes or no).
shop::WhatIf whatIfOf(const QString& text);

} // namespace riband::app
