#pragma once

#include "core/belt/drive/route.h"

namespace riband::belt::drive {

/// The line of tangents and arcs that turns round every pulley the way its side says; whether a belt can lie
/// so is not asked yet. Neighbours must not overlap: then a tangent always exists.
struct Walk {
    bool counterClockwise; ///< round the pulleys inside the loop
    std::vector<Segment> spans;
    std::vector<double> headings; ///< radians, of the spans
    std::vector<double> arcs;     ///< radians, 0 to 2 pi
};
Walk walk(const std::vector<Station>& stations, bool counterClockwise);

/// Whether the line turns once round in all, the way of the inner pulleys. If not, it has a loop at a pulley.
bool turnsOnce(const Walk& walk, const std::vector<Station>& stations);

/// What makes the line impossible for a belt though it turns once: it crosses itself or runs through a
/// pulley.
std::optional<RouteFault> collision(const Walk& walk, const std::vector<Station>& stations);

/// Two runs that cross and are no neighbours, if there are such.
std::optional<RouteFault> runsThatCross(const Walk& walk);

/// +1 where the belt turns counter-clockwise round the station, else -1.
int turnAt(const Station& station, bool counterClockwise);

} // namespace riband::belt::drive
