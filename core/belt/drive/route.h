#pragma once

#include "core/belt/drive/plane.h"
#include "core/belt/drive/two_pulleys.h"

#include <cstdint>
#include <vector>

namespace riband::belt::drive {

/// Which face of the belt lies on the pulley.
enum class Side : std::uint8_t {
    Inside, ///< the face of the teeth or ribs; the pulley stands inside the loop
    Back,   ///< an idler outside the loop that presses the belt in; toothed only under a double-sided belt
};

/// A pulley at its place.
struct Station {
    Point centre;
    Pulley pulley;
    Side side = Side::Inside;
};

/// Pulleys in the order in which the belt comes to them, either way round.
struct Layout {
    const Profile* profile; ///< nullptr: plain diameters
    std::vector<Station> stations;
};

/// The belt on one pulley, as it is drawn: from `entry` round the centre to `exit`.
struct Contact {
    Point entry, exit;
    double arc;        ///< radians, 0 to 2 pi
    double entryAngle; ///< radians, of the entry seen from the centre, counter-clockwise from x
    bool counterClockwise;
    std::optional<double> mesh; ///< teeth in mesh, exactly; none of a smooth or plain pulley
    double turns;               ///< for one turn of the first pulley; negative: the other way round
};

/// The belt round all pulleys: a closed line that nowhere crosses itself and has every `Inside` pulley inside
/// and every `Back` one outside.
struct Route {
    double length;                 ///< mm, as the belt's length is told
    std::vector<Contact> contacts; ///< beside the stations
    std::vector<Segment> spans;    ///< each from its station to the next one
};

/// Why there is no such line. Stations count from 0.
struct RouteFault {
    enum class Kind {
        TooFew,        ///< two pulleys are the least
        Overlap,       ///< `first` and `second`: `by` mm farther apart is the least
        NotTouched,    ///< `first` misses the belt that runs round the others by `by` mm
        ThroughPulley, ///< the run behind `first` would go through `second`: `by` mm farther away is the
                       ///< least
        Crossed,       ///< the runs behind `first` and `second` cross
        Impossible,    ///< no belt lies so, whatever one pulley does
    };
    Kind kind;
    std::size_t first = 0, second = 0;
    double by = 0;
};

Outcome<Route, RouteFault> routeOf(const Layout& layout);

} // namespace riband::belt::drive
