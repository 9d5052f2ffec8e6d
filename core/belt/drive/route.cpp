#include "core/belt/drive/route.h"

#include "core/belt/drive/walk.h"

#include <cmath>
#include <numbers>

// Tangents and arcs are taken one way round and the other. A line of them is a
// belt's if it turns once in all, crosses itself nowhere and runs through no pulley: then it is simple, and
// its turning sense puts the inner pulleys inside and the idlers on the back outside (docs/drive.md has the
// argument).

namespace riband::belt::drive {

namespace {

using std::numbers::pi;
using Kind = RouteFault::Kind;
using Stations = std::vector<Station>;

std::optional<RouteFault> overlap(const Stations& stations) {
    for (std::size_t i = 0; i < stations.size(); ++i)
        for (std::size_t j = i + 1; j < stations.size(); ++j) {
            const double least = (stations[i].pulley.pitchDiameter + stations[j].pulley.pitchDiameter) / 2;
            const double apart = distance(stations[i].centre, stations[j].centre);
            if (!(apart >= least)) return RouteFault{Kind::Overlap, i, j, least - apart};
        }
    return std::nullopt;
}

double lengthOf(const Walk& line, const Stations& stations) {
    double length = 0;
    for (std::size_t i = 0; i < stations.size(); ++i)
        length += lengthOf(line.spans[i]) + line.arcs[i] * stations[i].pulley.pitchDiameter / 2;
    return length;
}

std::optional<Walk> beltLine(const Stations& stations, bool counterClockwise) {
    Walk line = walk(stations, counterClockwise);
    return turnsOnce(line, stations) && !collision(line, stations) ? std::optional{line} : std::nullopt;
}

/// A small idler between two pulleys can have the belt on either side: the shorter is meant.
std::optional<Walk> beltLine(const Stations& stations) {
    const auto one = beltLine(stations, true), other = beltLine(stations, false);
    if (!one || !other) return one ? one : other;
    return lengthOf(*one, stations) <= lengthOf(*other, stations) ? one : other;
}

/// The nearer of two gaps of which either may not be there.
std::optional<double> nearer(std::optional<double> a, std::optional<double> b) {
    return a && (!b || *a <= *b) ? a : b;
}

/// How far the station is from the run that passes it, if it does not touch it.
std::optional<double> gap(const Station& station, Segment run, bool counterClockwise) {
    const double away =
        turnAt(station, counterClockwise) * leftOf(run, station.centre) - station.pulley.pitchDiameter / 2;
    return away > 0 && beside(run, station.centre) ? std::optional{away} : std::nullopt;
}

/// How far the station is from the belt that runs round the others; nothing if it is not this station that
/// spoils the route. Two others can be run round either way: then the nearer run is meant.
std::optional<double> missesBy(const Stations& stations, std::size_t one) {
    Stations others = stations;
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(one));
    if (others.size() < 2) return std::nullopt;
    const std::size_t before = (one + others.size() - 1) % others.size();
    std::optional<double> least;
    for (const bool counterClockwise : {true, false})
        if (const auto line = beltLine(others, counterClockwise))
            least = nearer(least, gap(stations[one], line->spans[before], counterClockwise));
    return least;
}

/// Two runs that are no neighbours cross whichever way the belt goes round: the order of the pulleys is
/// wrong.
std::optional<RouteFault> crossing(const Stations& stations) {
    const auto one = runsThatCross(walk(stations, true)), other = runsThatCross(walk(stations, false));
    return one && other ? one : std::nullopt;
}

using MaybeFault = std::optional<RouteFault>;

/// The one that less has to be moved for.
MaybeFault lesser(const MaybeFault& a, const MaybeFault& b) { return a && (!b || a->by <= b->by) ? a : b; }

/// What stands in the way of a line that turns once.
MaybeFault blocked(const Stations& stations, bool counterClockwise) {
    const Walk line = walk(stations, counterClockwise);
    return turnsOnce(line, stations) ? collision(line, stations) : std::nullopt;
}

MaybeFault untouched(const Stations& stations) {
    MaybeFault nearest;
    for (std::size_t i = 0; i < stations.size(); ++i)
        if (const auto away = missesBy(stations, i))
            nearest = lesser(nearest, RouteFault{Kind::NotTouched, i, i, *away});
    return nearest;
}

/// What can be said with a figure goes before what can't.
RouteFault faultOf(const Stations& stations) {
    if (const auto fault = crossing(stations)) return *fault;
    MaybeFault least = untouched(stations), crossed;
    for (const bool counterClockwise : {true, false}) {
        const auto fault = blocked(stations, counterClockwise);
        if (fault && fault->kind == Kind::Crossed) crossed = fault;
        if (fault && fault->kind != Kind::Crossed) least = lesser(least, fault);
    }
    return least ? *least : crossed.value_or(RouteFault{Kind::Impossible});
}

std::optional<double> meshAt(const Layout& layout, std::size_t i, double arc) {
    const Pulley& pulley = layout.stations[i].pulley;
    if (!pulley.teeth) return std::nullopt;
    return static_cast<double>(pulley.teeth->count()) * arc / (2 * pi);
}

Contact contactAt(const Layout& layout, const Walk& line, std::size_t i) {
    const std::size_t before = (i + layout.stations.size() - 1) % layout.stations.size();
    const Station &station = layout.stations[i], &first = layout.stations.front();
    const Point entry = line.spans[before].to;
    const int turn = turnAt(station, line.counterClockwise);
    const double ratio = first.pulley.pitchDiameter / station.pulley.pitchDiameter;
    return {entry,
            line.spans[i].from,
            line.arcs[i],
            std::atan2(entry.y - station.centre.y, entry.x - station.centre.x),
            turn > 0,
            meshAt(layout, i, line.arcs[i]),
            turn == turnAt(first, line.counterClockwise) ? ratio : -ratio};
}

} // namespace

Outcome<Route, RouteFault> routeOf(const Layout& layout) {
    const Stations& stations = layout.stations;
    if (stations.size() < 2) return RouteFault{Kind::TooFew};
    if (const auto fault = overlap(stations)) return *fault;
    const auto line = beltLine(stations);
    if (!line) return faultOf(stations);
    Route route{lengthOf(*line, stations) - overTold(layout.profile), {}, line->spans};
    for (std::size_t i = 0; i < stations.size(); ++i)
        route.contacts.push_back(contactAt(layout, *line, i));
    return route;
}

} // namespace riband::belt::drive
