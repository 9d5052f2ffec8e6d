#pragma once

#include "core/belt/tables.h"

namespace riband::belt::identify {

/// What the measured width of an old belt stands for.
struct OldWidth {
    Extent measured; ///< to the tenth of a millimetre; whole ribs of a ribbed belt
    /// The nearest width that is sold; nothing where none is known (ribbed belts are counted).
    std::optional<StandardWidth> standard;
    std::optional<StandardWidth> next;       ///< the one on the other side of the measured
    std::optional<WidthTolerance> tolerance; ///< of the standard width
    /// Whether the measured one may be a belt of the standard width: within its tolerance, the error of
    /// reading, and what edges lose in use (wear::edgeLoss). Else it was cut to another width.
    bool fits = false;
    /// What to offer: the standard width where it fits, the measured one else, or if that is asked for.
    Extent offered(bool keepMeasured) const { return fits && !keepMeasured ? standard->extent : measured; }
};

/// `width` and `error` in mm. Nothing if the profile is not known.
std::optional<OldWidth> oldWidth(const Belt& belt, double width, double error, const Tables& tables);

} // namespace riband::belt::identify
