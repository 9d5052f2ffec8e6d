#pragma once

#include "core/measure/date.h"

#include <QString>
#include <QTime>

namespace riband::ui {

/// What a day alone means as the time when an order is wanted.
QTime endOfDay();

/// When an order is wanted, as short as it can be said: "16:00" of today, else its day with or without the
/// time. In the time of the place.
QString shownDue(Moment due, Date today);

} // namespace riband::ui
