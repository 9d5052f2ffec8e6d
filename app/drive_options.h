#pragma once

#include "app/options.h"
#include "core/belt/drive/choices.h"
#include "core/belt/drive/load.h"

namespace riband::app {

Usage driveUsage();

/// A length in mm of an option, or nothing if it was not given. Throws BadInput for what is no length.
std::optional<double> millimetresOf(const Options& options, const char* name);
/// The profile of the call, nullptr if none was given. Throws BadInput for one that is not known or that may
/// be several.
const belt::Profile* profileOf(const Options& options, const belt::Tables& tables);
/// By --z1 or --d1, --z2 or --d2.
belt::drive::TwoPulleys pulleysOf(const Options& options, const belt::Profile* profile);
/// The width or ribs that the customer wants.
std::optional<Extent> widthOf(const Options& options, const belt::Profile* profile);
std::optional<belt::drive::Range> rangeOf(const Options& options);
std::optional<belt::drive::Duty> dutyOf(const Options& options);
/// The length of the belt by --teeth or --length, as it is told; nothing if neither was given.
std::optional<double> beltLengthOf(const Options& options, const belt::Profile* profile);

} // namespace riband::app
