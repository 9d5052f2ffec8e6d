#pragma once

#include "core/belt/drive/choices.h"
#include "core/belt/drive/load.h"
#include "core/belt/drive/said_pulley.h"

#include <QString>

#include <optional>

/// What is typed into the fields of the drive. A comma or a point is the decimal sign; nothing is returned
/// for what can't be read.
namespace riband::ui {

/// "22" of a toothed belt, "22 teeth", "z22": teeth. "22.5", "70 mm", "2 3/4 in", "d70", a bare number where
/// the belt has no teeth: a diameter.
std::optional<belt::drive::SaidPulley> readPulley(const QString& typed, bool toothed,
                                                  belt::drive::Side side = belt::drive::Side::Inside);
/// "300", "300 mm", "11.8 in"; positive mm.
std::optional<double> readDistance(const QString& typed);
/// A place in the plane: mm, may be negative.
std::optional<double> readPlace(const QString& typed);
/// "10", "±10": so much either way. "+10": only farther. "-5 +10": five nearer, ten farther.
std::optional<belt::drive::Range> readRange(const QString& typed);
/// Not negative.
std::optional<double> readNumber(const QString& typed);
/// "1.5", "1.5 kW", "200 W", "10 Nm" at these revolutions of the first pulley.
std::optional<belt::drive::Duty> readDuty(const QString& power, double revolutions, double serviceFactor);

} // namespace riband::ui
