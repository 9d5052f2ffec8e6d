#include "core/belt/drive/walk.h"

#include <cmath>
#include <numbers>

// A belt that turns by t = +1 (counter-clockwise) or -1 round a pulley of radius r leaves it at the point
// centre + t r n, n being the right-hand normal of its heading. Between two pulleys a way D apart it
// therefore heads by asin((t1 r1 - t2 r2) / D) off that way. Derivation: docs/drive.md, "More than two
// pulleys".

namespace riband::belt::drive {

namespace {

using std::numbers::pi;

double radius(const Station& station) { return station.pulley.pitchDiameter / 2; }

double headingOf(const Station& from, const Station& to, int turnFrom, int turnTo) {
    const Point way = to.centre - from.centre;
    const double offset = turnFrom * radius(from) - turnTo * radius(to);
    return std::atan2(way.y, way.x) + std::asin(offset / std::hypot(way.x, way.y));
}

/// Where the belt touches the station when it heads so.
Point contactAt(const Station& station, int turn, double heading) {
    return station.centre + turn * radius(station) * wayOf(heading - pi / 2);
}

/// From 0 to a whole turn. What misses it by rounding is none.
double arcOf(double change) {
    constexpr double rounding = 1e-9;
    const double arc = std::fmod(std::fmod(change, 2 * pi) + 2 * pi, 2 * pi);
    return arc > 2 * pi - rounding ? 0 : arc;
}

} // namespace

int turnAt(const Station& station, bool counterClockwise) {
    return (station.side == Side::Inside) == counterClockwise ? 1 : -1;
}

Walk walk(const std::vector<Station>& stations, bool counterClockwise) {
    const std::size_t count = stations.size();
    Walk walk{counterClockwise, {}, {}, {}};
    for (std::size_t i = 0; i < count; ++i) {
        const Station &from = stations[i], &to = stations[(i + 1) % count];
        const int turnFrom = turnAt(from, counterClockwise), turnTo = turnAt(to, counterClockwise);
        const double heading = headingOf(from, to, turnFrom, turnTo);
        walk.headings.push_back(heading);
        walk.spans.push_back({contactAt(from, turnFrom, heading), contactAt(to, turnTo, heading)});
    }
    for (std::size_t i = 0; i < count; ++i) {
        const double change = walk.headings[i] - walk.headings[(i + count - 1) % count];
        walk.arcs.push_back(arcOf(turnAt(stations[i], counterClockwise) * change));
    }
    return walk;
}

bool turnsOnce(const Walk& walk, const std::vector<Station>& stations) {
    double turned = 0;
    for (std::size_t i = 0; i < stations.size(); ++i)
        turned += turnAt(stations[i], walk.counterClockwise) * walk.arcs[i];
    return std::abs(turned - (walk.counterClockwise ? 2 * pi : -2 * pi)) < 1e-6;
}

std::optional<RouteFault> runsThatCross(const Walk& walk) {
    const std::size_t count = walk.spans.size();
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = i + 2; j < count; ++j)
            if ((j + 1) % count != i && cross(walk.spans[i], walk.spans[j]))
                return RouteFault{RouteFault::Kind::Crossed, i, j};
    return std::nullopt;
}

std::optional<RouteFault> collision(const Walk& walk, const std::vector<Station>& stations) {
    constexpr double touching = 1e-9; // mm
    const std::size_t count = stations.size();
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = 0; j < count; ++j) {
            if (j == i || j == (i + 1) % count) continue;
            const double into = radius(stations[j]) - distance(stations[j].centre, walk.spans[i]);
            if (into > touching) return RouteFault{RouteFault::Kind::ThroughPulley, i, j, into};
        }
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = i + 1; j < count; ++j)
            if (cross(walk.spans[i], walk.spans[j])) return RouteFault{RouteFault::Kind::Crossed, i, j};
    return std::nullopt;
}

} // namespace riband::belt::drive
