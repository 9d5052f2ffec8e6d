#pragma once

#include "core/measure/extent.h"

#include <QString>

namespace riband::ui {

/// What was measured beside what must be left by the figures; "" if they agree.
QString differenceWords(Extent measured, Extent byFigures);

} // namespace riband::ui
