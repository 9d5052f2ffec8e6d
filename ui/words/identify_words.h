#pragma once

#include "core/belt/identify/identify.h"
#include "core/belt/identify/interchange.h"

#include <QString>

/// The words for what identification finds, the same on screen, paper and command line.
namespace riband::ui {

/// "the distance over 20 pitches", "the number of teeth".
QString nameOf(belt::identify::Measure what, int over = 0);
/// A reading with its unit: "100.1 mm", "150 teeth".
QString shownReading(belt::identify::Measure what, double value);
QString say(belt::identify::SeenShape shape);
QString say(const belt::identify::SampleFault& fault);
/// What to do next, as a request.
QString say(const belt::identify::Next& next);
QString say(const belt::identify::Disagreement& disagreement);
/// What sets two profiles apart. `taken` pitches were measured over so far (0: none).
QString say(const belt::identify::Apart& apart, int taken, const std::optional<belt::identify::Next>& next);
/// Why the answer is as it is: one or several sentences.
QString why(const belt::identify::Identification& answer, const belt::identify::Sample& sample);
/// Whether one may stand for the other; names are profiles or designations.
QString say(const belt::identify::Interchange& interchange, const QString& first, const QString& second);
/// How far use may have changed what was measured of this belt; "" of a new one. Bounds are common practice.
QString sayWear(const belt::identify::Sample& sample, const belt::identify::Candidate& candidate);
QString say(const belt::identify::OldWidth& width);
/// Nothing to say of what is cut from an ordinary sleeve.
QString say(belt::identify::Supply supply);
/// "H8M 1200", or the profile while the length is not known.
QString nameOf(const belt::identify::Candidate& candidate);
/// "93 %", "over 99 %".
QString shownChance(double probability);

} // namespace riband::ui
