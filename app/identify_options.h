#pragma once

#include "app/options.h"
#include "core/belt/identify/instruments.h"

namespace riband::app {

Usage identifyUsage();
/// The option of a measure, without dashes: "pitch-over".
QString optionOf(belt::identify::Measure what);
/// The errors of these instruments, changed by each --error NAME=MM. Throws BadInput.
belt::identify::Errors errorsOf(const Options& options, const belt::identify::Instruments& measuring);
/// Throws BadInput for what is no number or no shape.
belt::identify::Sample sampleOf(const Options& options, const belt::identify::Errors& errors);

} // namespace riband::app
