#pragma once

#include "core/belt/profile.h"

#include <QPainterPath>

namespace riband::ui {

/// Half a tooth or rib: from the middle of the land (-pitch/2, 0) to the tip (0, height), millimetres, y
/// down. `approximate` where a figure that no table gives had to be supposed.
struct HalfTooth {
    QPainterPath path;
    double height;
    bool approximate = false;
};
HalfTooth halfTooth(const belt::Profile& profile);

} // namespace riband::ui
