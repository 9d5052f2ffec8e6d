#include "core/belt/drive/route.h"
#include "core/belt/drive/route_choices.h"
#include "tests/catch.h"
#include "tests/core/belt/drive/measured.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <random>
#include <sstream>
#include <string>

using namespace riband::belt::drive;
using namespace riband::belt::drive::testing;

namespace {

constexpr double pi = std::numbers::pi;

std::vector<Disc> discsOf(const std::vector<Station>& stations) {
    std::vector<Disc> discs;
    for (const Station& station : stations)
        discs.push_back({station.centre.x, station.centre.y, station.pulley.pitchDiameter / 2,
                         station.side == Side::Back});
    return discs;
}

/// The hull touches all of them as they are told, one way round or the other.
bool touchedInTurn(const std::vector<Disc>& discs) {
    std::vector<std::size_t> told(discs.size());
    std::iota(told.begin(), told.end(), 0);
    const auto found = hullOrder(discs);
    if (found == told) return true;
    std::reverse(told.begin() + 1, told.end());
    return found == told;
}

double shortestArc(const Route& route) {
    double shortest = 2 * pi;
    for (const Contact& contact : route.contacts)
        shortest = std::min(shortest, contact.arc);
    return shortest;
}

std::string told(const std::vector<Station>& stations) {
    std::ostringstream text;
    for (const Station& s : stations)
        text << s.centre.x << ' ' << s.centre.y << ' ' << s.pulley.pitchDiameter
             << (s.side == Side::Back ? " back; " : "; ");
    return text.str();
}

/// The route as a painter would draw it, in many steps.
std::vector<std::array<double, 2>> drawn(const Route& route, const std::vector<Station>& stations) {
    std::vector<std::array<double, 2>> line;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const Contact& contact = route.contacts[i];
        const double radius = stations[i].pulley.pitchDiameter / 2;
        const int steps = 1 + static_cast<int>(400 * contact.arc / (2 * pi));
        for (int k = 0; k < steps; ++k) {
            const double sweep = (contact.counterClockwise ? 1 : -1) * contact.arc * k / steps;
            const Point at = stations[i].centre + radius * wayOf(contact.entryAngle + sweep);
            line.push_back({at.x, at.y});
        }
        const Segment& span = route.spans[i];
        for (int k = 0; k < 50; ++k) {
            const Point at = span.from + (k / 50.0) * (span.to - span.from);
            line.push_back({at.x, at.y});
        }
    }
    return line;
}

bool counterClockwise(const Route& route, const std::vector<Station>& stations) {
    return (stations.front().side == Side::Inside) == route.contacts.front().counterClockwise;
}

/// Layouts of pulleys in the order of their directions from the middle, counter-clockwise.
class Layouts {
public:
    explicit Layouts(std::uint64_t seed) : dice_{seed} {}
    double between(double least, double most) { return std::uniform_real_distribution{least, most}(dice_); }
    int count(int least, int most) { return std::uniform_int_distribution{least, most}(dice_); }

    std::vector<Station> ring(int pulleys) {
        std::vector<double> angles;
        for (int i = 0; i < pulleys; ++i)
            angles.push_back(between(0, 2 * pi));
        std::sort(angles.begin(), angles.end());
        std::vector<Station> stations;
        for (const double angle : angles)
            stations.push_back({between(100, 500) * wayOf(angle), {between(10, 160)}});
        return stations;
    }

    /// A run of the route is pressed in by an idler; where it lies between the others follows from the run.
    std::vector<Station> pressed(std::vector<Station> stations, const Route& route, double deepest = 40) {
        const auto at = static_cast<std::size_t>(count(0, static_cast<int>(stations.size()) - 1));
        const Segment span = route.spans[at];
        const double radius = between(5, 60), depth = between(0.5, deepest), along = between(0.25, 0.75);
        const Point way = (1 / lengthOf(span)) * (span.to - span.from);
        const Point outwards{way.y, -way.x}; // the loop lies to the left
        const Point centre = span.from + along * lengthOf(span) * way + (radius - depth) * outwards;
        stations.insert(stations.begin() + static_cast<std::ptrdiff_t>(at) + 1,
                        {centre, {2 * radius}, Side::Back});
        return stations;
    }

    /// Two to five inner pulleys, counter-clockwise, and idlers up to six in all. Some of these have no belt.
    std::vector<Station> withIdlers(double deepest = 40) {
        for (;;) {
            auto stations = ring(count(2, 5));
            auto route = routeOf({nullptr, stations});
            if (!route || !counterClockwise(*route, stations)) continue;
            for (int more = count(1, 6 - static_cast<int>(stations.size())); route && more > 0; --more) {
                stations = pressed(stations, *route, deepest);
                route = routeOf({nullptr, stations});
            }
            return stations;
        }
    }

private:
    std::mt19937_64 dice_;
};

} // namespace

TEST_CASE(
    "Random layouts of inner pulleys have a belt where the hull touches them in turn, and it is as long",
    "[drive][route][random]") {
    Layouts layouts{20261126};
    int good = 0, impossible = 0;
    while (good < 3000) {
        const auto stations = layouts.ring(layouts.count(3, 6));
        const auto discs = discsOf(stations);
        const auto route = routeOf({nullptr, stations});
        if (!route && route.reason().kind == RouteFault::Kind::Overlap) continue;
        if (touchedInTurn(discs)) {
            ++good;
            REQUIRE(route);
            CHECK(std::abs(route->length - perimeter(discs)) < 1e-5);
        } else if (route) { // a touch too short for the directions that were tried
            CHECK(shortestArc(*route) < 2 * pi / 7200);
        } else {
            ++impossible;
        }
    }
    CHECK(impossible > 1000);
}

TEST_CASE("A pulley that misses the belt by so much touches it once its radius is so much more",
          "[drive][route][random]") {
    Layouts layouts{5};
    int tried = 0;
    for (int i = 0; i < 4000; ++i) {
        auto stations = layouts.ring(layouts.count(3, 5));
        const auto route = routeOf({nullptr, stations});
        if (route || route.reason().kind != RouteFault::Kind::NotTouched) continue;
        Pulley& pulley = stations[route.reason().first].pulley;
        const double before = pulley.pitchDiameter;
        pulley.pitchDiameter = before + 2 * route.reason().by + 1e-6;
        const auto touched = routeOf({nullptr, stations});
        if (!touched) { // grown so much that it meets another pulley or another run
            CHECK((touched.reason().kind == RouteFault::Kind::Overlap ||
                   touched.reason().kind == RouteFault::Kind::ThroughPulley));
            continue;
        }
        pulley.pitchDiameter = before + 2 * route.reason().by - 1e-6;
        CHECK_FALSE(routeOf({nullptr, stations}));
        ++tried;
    }
    CHECK(tried > 300);
}

TEST_CASE("Random layouts with idlers on the back are as long as a thread by the ruler, arc by arc",
          "[drive][route][random]") {
    Layouts layouts{20261127};
    for (int good = 0; good < 2000;) {
        const auto stations = layouts.withIdlers();
        const auto route = routeOf({nullptr, stations});
        if (!route || !counterClockwise(*route, stations)) continue; // a shorter belt the other way
        ++good;
        const Thread thread = threadByRuler(discsOf(stations));
        INFO(told(stations));
        CHECK(std::abs(route->length - thread.length) < 1e-3);
        for (std::size_t i = 0; i < stations.size(); ++i)
            CHECK(std::abs(route->contacts[i].arc - thread.turned[i]) < 1e-3);
    }
}

TEST_CASE("What is drawn is a belt: it cuts into no pulley, has no kink, and has the right pulleys inside",
          "[drive][route][random]") {
    Layouts layouts{20261128};
    for (int good = 0; good < 1000;) {
        const auto stations = layouts.withIdlers();
        const auto route = routeOf({nullptr, stations});
        if (!route || !counterClockwise(*route, stations)) continue;
        ++good;
        const Laid laid = lay(drawn(*route, stations), discsOf(stations));
        INFO(told(stations));
        CHECK(laid.length == Approx(route->length).epsilon(1e-5));
        CHECK(laid.clearance > -1e-9);
        CHECK(laid.sharpest < 0.02); // of 400 steps a turn
        for (std::size_t i = 0; i < stations.size(); ++i)
            CHECK(laid.windings[i] == Approx(stations[i].side == Side::Inside ? 1 : 0).margin(1e-9));
    }
}

TEST_CASE("An idler that stands in the way of a run is out of the way once it is moved by what is said",
          "[drive][route][random]") {
    Layouts layouts{20261129};
    int refused = 0, freed = 0;
    while (refused < 300) {
        auto stations = layouts.withIdlers(300);
        const auto route = routeOf({nullptr, stations});
        if (route || route.reason().kind != RouteFault::Kind::ThroughPulley) continue;
        ++refused;
        // A smaller pulley is farther from the run by as much; its own runs move a little.
        Pulley& inTheWay = stations[route.reason().second].pulley;
        inTheWay.pitchDiameter -= 2 * route.reason().by + 1e-6;
        if (!(inTheWay.pitchDiameter > 0)) continue;
        const auto after = routeOf({nullptr, stations});
        if (after || after.reason().kind != RouteFault::Kind::ThroughPulley) ++freed;
    }
    CHECK(freed > 200);
}

TEST_CASE("Whichever pulley is told first and whichever way round, the belt is the same",
          "[drive][route][random]") {
    Layouts layouts{11};
    int good = 0;
    while (good < 500) {
        auto stations = layouts.ring(layouts.count(3, 6));
        auto route = routeOf({nullptr, stations});
        if (!route) continue;
        if (counterClockwise(*route, stations)) stations = layouts.pressed(stations, *route);
        route = routeOf({nullptr, stations});
        if (!route) continue;
        ++good;
        auto other = stations;
        std::rotate(other.begin(), other.begin() + 1, other.end());
        CHECK(routeOf({nullptr, other})->length == Approx(route->length).epsilon(1e-12));
        std::reverse(other.begin(), other.end());
        CHECK(routeOf({nullptr, other})->length == Approx(route->length).epsilon(1e-12));
    }
}

TEST_CASE("A pulley set as told gives the belt its length", "[drive][route][random]") {
    Layouts layouts{13};
    int good = 0;
    while (good < 200) {
        const auto stations = layouts.ring(layouts.count(3, 5));
        const Mover mover{0, wayOf(layouts.between(0, 2 * pi)), 20, 20};
        auto moved = stations;
        moved[0].centre = stations[0].centre + layouts.between(-20, 20) * mover.way;
        const auto route = routeOf({nullptr, moved});
        if (!route || !routeOf({nullptr, stations})) continue;
        const auto move = moveFor({nullptr, stations}, mover, route->length);
        // It may be another place than the one tried: the length may rise and fall on the way.
        if (!move) continue;
        ++good;
        moved[0].centre = stations[0].centre + *move * mover.way;
        CHECK(routeOf({nullptr, moved})->length == Approx(route->length).epsilon(1e-10));
    }
}
