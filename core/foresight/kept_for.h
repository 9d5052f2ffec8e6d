#pragma once

#include "core/foresight/outlook.h"
#include "core/foresight/worth.h"

#include <optional>

namespace riband::foresight {

/// An order that a remnant is worth keeping for.
struct KeptFor {
    Line line;
    double share; ///< of the orders here
};

/// The kind of order that adds most to the worth of a remnant: its share of the orders, times what the
/// remnant would save against opening a sleeve for it, its rest included. Nothing if the remnant is worth
/// nothing.
std::optional<KeptFor> keptFor(const Setting& setting, const WorthTable& table, const Outlook& outlook,
                               Size remnant);

} // namespace riband::foresight
