#include "core/belt/drive/route.h"
#include "core/belt/drive/route_choices.h"
#include "tests/catch.h"
#include "tests/core/belt/read_tables.h"

#include <cmath>
#include <numbers>
#include <stdexcept>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::drive;

namespace {

constexpr double pi = std::numbers::pi;

Station inside(double x, double y, double diameter) { return {{x, y}, {diameter}, Side::Inside}; }
Station back(double x, double y, double diameter) { return {{x, y}, {diameter}, Side::Back}; }
Layout plain(std::vector<Station> stations) { return {nullptr, std::move(stations)}; }
double degrees(double radians) { return radians * 180 / pi; }

RouteFault faultOf(std::vector<Station> stations) {
    const auto route = routeOf(plain(std::move(stations)));
    REQUIRE_FALSE(route);
    return route.reason();
}

/// 120 either side of the middle, 100 mm wide; an idler of 40 mm above the middle.
std::vector<Station> pressedFromAbove(double height) {
    return {inside(-120, 0, 100), back(0, height, 40), inside(120, 0, 100)};
}

} // namespace

TEST_CASE("Over two pulleys the route is the open belt", "[drive][route]") {
    const auto route = routeOf(plain({inside(10, 20, 60), inside(310, 420, 150)})); // 500 apart
    REQUIRE(route);
    const auto run = atDistance({nullptr, {60}, {150}}, 500);
    CHECK(route->length == Approx(run->length).epsilon(1e-12));
    CHECK(degrees(route->contacts[0].arc) == Approx(run->arcSmallDegrees));
    CHECK(degrees(route->contacts[1].arc) == Approx(run->arcLargeDegrees));
    CHECK(lengthOf(route->spans[0]) == Approx(run->span));
    CHECK(route->contacts[1].turns == Approx(0.4));
}

TEST_CASE("Three equal pulleys on an equal triangle: three sides and one turn", "[drive][route]") {
    const double high = 300 * std::sqrt(3) / 2;
    for (const auto& stations : {std::vector{inside(0, 0, 50), inside(300, 0, 50), inside(150, high, 50)},
                                 std::vector{inside(150, high, 50), inside(300, 0, 50), inside(0, 0, 50)}}) {
        const auto route = routeOf(plain(stations)); // either way round
        REQUIRE(route);
        CHECK(route->length == Approx(900 + 50 * pi).epsilon(1e-12));
        for (const Contact& contact : route->contacts)
            CHECK(degrees(contact.arc) == Approx(120));
    }
}

TEST_CASE("An idler on the back, worked by hand", "[drive][route]") {
    // The idler's centre is 130 from each pulley's, 22.62 degrees up (5 12 13). The crossed tangent leans by
    // asin(70 / 130) = 32.58 off that: it falls by 9.96 degrees. So 19.92 of the idler and 189.96 of each
    // pulley; spans sqrt(130^2 - 70^2), twice, and 240 below.
    const auto route = routeOf(plain(pressedFromAbove(50)));
    REQUIRE(route);
    const double lean = std::asin(70.0 / 130) - std::atan2(50, 120);
    CHECK(degrees(lean) == Approx(9.9591).margin(0.0001));
    CHECK(route->contacts[1].arc == Approx(2 * lean));
    CHECK(route->contacts[0].arc == Approx(pi + lean));
    CHECK(route->contacts[2].arc == Approx(pi + lean));
    CHECK(route->length ==
          Approx(240 + 2 * std::sqrt(12'000) + 2 * 50 * (pi + lean) + 20 * 2 * lean).epsilon(1e-12));
    // The idler turns against the pulleys, two and a half times as fast.
    CHECK(route->contacts[1].turns == Approx(-2.5));
    CHECK(route->contacts[1].counterClockwise != route->contacts[0].counterClockwise);
    CHECK(route->contacts[2].turns == Approx(1));
}

TEST_CASE("What is drawn hangs together", "[drive][route]") {
    const auto layout = plain(pressedFromAbove(50));
    const auto route = routeOf(layout);
    for (std::size_t i = 0; i < 3; ++i) {
        const Contact& contact = route->contacts[i];
        const Point centre = layout.stations[i].centre;
        const double radius = layout.stations[i].pulley.pitchDiameter / 2;
        CHECK(distance(contact.entry, route->spans[(i + 2) % 3].to) == 0);
        CHECK(distance(contact.exit, route->spans[i].from) == 0);
        CHECK(distance(centre, contact.entry) == Approx(radius));
        // Going round by the arc leads from entry to exit.
        const double end = contact.entryAngle + (contact.counterClockwise ? 1 : -1) * contact.arc;
        CHECK(distance(centre + radius * wayOf(end), contact.exit) < 1e-9);
    }
}

TEST_CASE("An idler that just touches takes no arc; one that misses says by how much", "[drive][route]") {
    const auto touching = routeOf(plain(pressedFromAbove(70))); // its lowest point on the run at 50
    REQUIRE(touching);
    CHECK(touching->contacts[1].arc == Approx(0).margin(1e-6));
    CHECK(touching->length == Approx(480 + 100 * pi));
    const RouteFault missed = faultOf(pressedFromAbove(74.5));
    CHECK(missed.kind == RouteFault::Kind::NotTouched);
    CHECK(missed.first == 1);
    CHECK(missed.by == Approx(4.5));
    // A pulley inside the loop that does not reach the run above it.
    const RouteFault hidden = faultOf({inside(-120, 0, 100), inside(0, 10, 40), inside(120, 0, 100)});
    CHECK(hidden.kind == RouteFault::Kind::NotTouched);
    CHECK(hidden.first == 1);
    CHECK(hidden.by == Approx(20)); // 50 - 30
}

TEST_CASE("Pulleys that overlap say how far apart they must be moved", "[drive][route]") {
    const RouteFault fault = faultOf({inside(0, 0, 100), inside(300, 0, 100), inside(380, 60, 150)});
    CHECK(fault.kind == RouteFault::Kind::Overlap);
    CHECK(fault.first == 1);
    CHECK(fault.second == 2);
    CHECK(fault.by == Approx(25)); // 125 - 100
    CHECK(faultOf({inside(0, 0, 100), inside(0, 0, 100)}).kind == RouteFault::Kind::Overlap);
}

TEST_CASE("One pulley is no drive, and pulleys told crosswise have no belt", "[drive][route]") {
    CHECK(faultOf({inside(0, 0, 100)}).kind == RouteFault::Kind::TooFew);
    CHECK(faultOf({}).kind == RouteFault::Kind::TooFew);
    const RouteFault crossed =
        faultOf({inside(0, 0, 20), inside(200, 200, 20), inside(200, 0, 20), inside(0, 200, 20)});
    CHECK(crossed.kind == RouteFault::Kind::Crossed);
    CHECK(faultOf({back(0, 0, 100), back(300, 0, 100)}).kind == RouteFault::Kind::Impossible);
}

TEST_CASE("A run never goes through a pulley that it should pass", "[drive][route]") {
    // Two idlers press a long loop from both sides; the upper one is set into the run behind the lower one.
    const auto pressed = [](double x, double y) {
        return std::vector{inside(0, 0, 20),     back(150, 60, 40), inside(300, 0, 20),
                           inside(300, 200, 20), back(x, y, 40),    inside(0, 200, 20)};
    };
    CHECK(routeOf(plain(pressed(150, 130))));
    const RouteFault fault = faultOf(pressed(195, 75));
    CHECK(fault.kind == RouteFault::Kind::ThroughPulley);
    CHECK(fault.first == 1);
    CHECK(fault.second == 4);
    // That run is the same without the upper idler.
    auto without = pressed(195, 75);
    without.erase(without.begin() + 4);
    const auto lower = routeOf(plain(without));
    REQUIRE(lower);
    CHECK(fault.by == Approx(20 - distance(Point{195, 75}, lower->spans[1])));
}

TEST_CASE("A small idler that could have the belt on either side has it where it is shorter",
          "[drive][route]") {
    // Ten over the middle: the upper run comes down by 45 mm, the lower would go up by 65.
    for (const double side : {1.0, -1.0}) {
        const auto route =
            routeOf(plain({inside(-120, 0, 100), back(0, 10 * side, 10), inside(120, 0, 100)}));
        REQUIRE(route);
        CHECK(side * route->contacts[1].entry.y < 10);
        CHECK(lengthOf(route->spans[2]) == Approx(240)); // the other run is straight
    }
}

TEST_CASE("Teeth in mesh on each toothed pulley; ribbed lengths are effective ones", "[drive][route]") {
    const Profile& t5 = *theTables().profile("T5");
    const Station corner{{0, 0}, pulleyOf(t5, Teeth{24}), Side::Inside};
    Layout layout{&t5, {corner, corner, corner}};
    layout.stations[1].centre = {200, 0};
    layout.stations[2].centre = {100, 100 * std::sqrt(3)};
    const auto route = routeOf(layout);
    REQUIRE(route);
    CHECK(route->length == Approx(720)); // 3 x 200 and 24 x 5
    CHECK(*route->contacts[0].mesh == Approx(8));
    const Profile& pj = *theTables().profile("PJ");
    const auto ribbed = routeOf({&pj, {{{0, 0}, pulleyOf(&pj, 50)}, {{400, 0}, pulleyOf(&pj, 50)}}});
    CHECK(ribbed->length == Approx(800 + 50 * pi));
    CHECK_FALSE(ribbed->contacts[0].mesh);
}

TEST_CASE("A smooth roller meets the cords under the teeth or under the back", "[drive][route]") {
    // ISO 13050, H8M: ht + a = 3.38 + 0.686; the belt is 6.0 thick.
    const Profile& h8m = *theTables().profile("H8M");
    CHECK(rollerUnderTeeth(h8m, 60)->pitchDiameter == Approx(68.132));
    CHECK(rollerOnBack(h8m, 60)->pitchDiameter == Approx(63.868));            // 6.0 - 4.066 = 1.934
    CHECK_FALSE(rollerOnBack(*theTables().profile("m5"), 60));                // nobody prints its form
    CHECK(rollerOnBack(*theTables().profile("PJ"), 60)->pitchDiameter == 62); // 1 mm, common practice
}

TEST_CASE("A pulley that can be set says how far for each belt", "[drive][route]") {
    // Two pulleys of 24 teeth of T5, 200 apart, need 520 mm. T5 of 500, 545 and 550 mm: half of the
    // difference.
    const Profile& t5 = *theTables().profile("T5");
    const Layout layout{&t5, {{{0, 0}, pulleyOf(t5, Teeth{24})}, {{200, 0}, pulleyOf(t5, Teeth{24})}}};
    const Mover mover{1, {3, 0}, 12, 20};
    CHECK(*moveFor(layout, mover, 500) == Approx(-10).margin(1e-9));
    CHECK(*moveFor(layout, mover, 545) == Approx(12.5).margin(1e-9));
    CHECK(*moveFor(layout, mover, 520) == Approx(0).margin(1e-9));
    CHECK_FALSE(moveFor(layout, mover, 495)); // 12.5 back, 12 can be done
    CHECK_THROWS_AS(moveFor(layout, {1, {0, 0}, 1, 1}, 500), std::invalid_argument);
    const auto belts = beltsFor(layout, routeOf(layout).value(), mover, {}, theTables());
    REQUIRE(belts.size() == 6);
    CHECK(belts.front().move);
    for (const RouteChoice& choice : belts) {
        const double move = choice.excess / 2;
        CHECK(choice.move.has_value() == (move >= -12 && move <= 20));
        if (choice.move) CHECK(*choice.move == Approx(move).margin(1e-9));
    }
}

TEST_CASE("Of two places that give the length the nearer one is told", "[drive][route]") {
    // An idler moved sideways from three left of the middle: the same length ten to the left and ten to the
    // right.
    auto stations = pressedFromAbove(30);
    stations[1].centre.x = 10;
    const double length = routeOf(plain(stations))->length;
    stations[1].centre.x = -3;
    CHECK(*moveFor(plain(stations), {1, {1, 0}, 30, 30}, length) == Approx(-7).margin(1e-6));
    stations[1].centre.x = 3;
    CHECK(*moveFor(plain(stations), {1, {1, 0}, 30, 30}, length) == Approx(7).margin(1e-6));
    CHECK(*moveFor(plain(stations), {1, {1, 0}, 30, 5}, length) == Approx(-13).margin(1e-6));
}

TEST_CASE("Without a pulley that can be set the belts are told by what they are too long or short",
          "[drive][route]") {
    const Profile& t5 = *theTables().profile("T5");
    const Layout layout{&t5, {{{0, 0}, pulleyOf(t5, Teeth{24})}, {{200, 0}, pulleyOf(t5, Teeth{24})}}};
    const Belt far{"T5", Teeth{160}, Length::millimetres(800), ""};
    const auto belts = beltsFor(layout, routeOf(layout).value(), {}, Extent{Width::millimetres(16)},
                                theTables(), {{far, Width::millimetres(40)}});
    CHECK(belts.front().belt.length == far.length); // the next that is in stock, however far
    CHECK(belts.front().excess == Approx(280));
    CHECK_FALSE(belts.front().move);
    CHECK(belts.size() == 7);
}
