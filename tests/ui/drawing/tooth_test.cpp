#include "tests/catch.h"

#include "resources/table_texts.h"
#include "ui/drawing/half_tooth.h"
#include "ui/drawing/tooth.h"

#include <QPolygonF>

#include <algorithm>
#include <cmath>
#include <set>
#include <vector>

using namespace riband;
using namespace riband::ui;

namespace {

const belt::Tables& tables() {
    static const auto loaded = [] {
        auto outcome = belt::Tables::load(tableTexts());
        REQUIRE(outcome.ok());
        return outcome.value();
    }();
    return *loaded;
}

const belt::Profile& profile(const char* name) {
    const auto* found = tables().profile(name);
    REQUIRE(found);
    return *found;
}

/// The path as a polygon fine enough to measure hundredths: it is blown up before Qt flattens it.
QPolygonF polygonOf(const QPainterPath& path) {
    const double fine = 1000;
    const auto polygons = QTransform::fromScale(fine, fine).map(path).toSubpathPolygons();
    REQUIRE(polygons.size() == 1);
    return QTransform::fromScale(1 / fine, 1 / fine).map(polygons.front());
}

/// Where the outline crosses a level, left to right.
std::vector<double> crossings(const QPolygonF& polygon, double y) {
    std::vector<double> found;
    for (qsizetype i = 0; i + 1 < polygon.size(); ++i) {
        const QPointF a = polygon[i], b = polygon[i + 1];
        if ((a.y() < y) != (b.y() < y))
            found.push_back(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
    }
    std::sort(found.begin(), found.end());
    return found;
}

/// The width of the tooth at a depth below the land.
double widthAt(const belt::Profile& tooth, double depth) {
    const auto x = crossings(polygonOf(toothOutline(tooth, 1)), depth);
    REQUIRE(x.size() == 2);
    return x[1] - x[0];
}

double cross(const QPointF& a, const QPointF& b, const QPointF& c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
}

bool properlyCross(const QPointF& a, const QPointF& b, const QPointF& c, const QPointF& d) {
    return cross(a, b, c) * cross(a, b, d) < -1e-12 && cross(c, d, a) * cross(c, d, b) < -1e-12;
}

bool crossesItself(const QPolygonF& p) {
    for (qsizetype i = 0; i + 1 < p.size(); ++i)
        for (qsizetype j = i + 2; j + 1 < p.size(); ++j)
            if (!(i == 0 && j + 2 == p.size()) && properlyCross(p[i], p[i + 1], p[j], p[j + 1])) return true;
    return false;
}

double distanceTo(const QPolygonF& polygon, const QPointF& point) {
    double least = 1e9;
    for (qsizetype i = 0; i + 1 < polygon.size(); ++i) {
        const QPointF a = polygon[i], ab = polygon[i + 1] - a;
        const double square = QPointF::dotProduct(ab, ab);
        const double t = square == 0 ? 0 : std::clamp(QPointF::dotProduct(point - a, ab) / square, 0.0, 1.0);
        const QPointF off = point - (a + ab * t);
        least = std::min(least, std::hypot(off.x(), off.y()));
    }
    return least;
}

} // namespace

TEST_CASE("Every profile's outline is closed and never crosses itself", "[tooth]") {
    REQUIRE(tables().profiles().size() > 60);
    for (const auto& each : tables().profiles()) {
        INFO(each.name);
        const QPolygonF polygon = polygonOf(toothOutline(each, 3));
        CHECK(polygon.isClosed());
        CHECK_FALSE(crossesItself(polygon));
    }
}

TEST_CASE("Every profile is drawn as high as its table says, to 0.01 mm", "[tooth]") {
    for (const auto& each : tables().profiles()) {
        INFO(each.name);
        const QRectF box = toothOutline(each, 3).boundingRect();
        CHECK(box.height() > halfTooth(each).height);
        if (each.form.total) CHECK(box.height() == Approx(*each.form.total).margin(.01));
        if (each.form.height && !each.ribbed()) CHECK(box.bottom() == Approx(*each.form.height).margin(.01));
    }
}

TEST_CASE("Tooth follows tooth at the pitch of the table, to 0.01 mm", "[tooth]") {
    for (const auto& each : tables().profiles()) {
        INFO(each.name);
        const QPolygonF polygon = polygonOf(toothOutline(each, 4));
        const auto x = crossings(polygon, halfTooth(each).height / 2);
        REQUIRE(x.size() == 8);
        const double pitch = each.pitch.inMillimetres();
        for (std::size_t i = 2; i < x.size(); ++i)
            CHECK(x[i] - x[i - 2] == Approx(pitch).margin(.01));
        CHECK(polygon.boundingRect().width() == Approx(4 * pitch).margin(.01));
    }
}

TEST_CASE("A tooth of a double-sided belt stands on both sides, the same", "[tooth]") {
    const auto& tooth = profile("DH8M");
    const QPolygonF polygon = polygonOf(toothOutline(tooth, 2));
    const double middle = polygon.boundingRect().center().y();
    const double below = *tooth.form.height / 2;
    const auto under = crossings(polygon, below), over = crossings(polygon, 2 * middle - below);
    REQUIRE(under.size() == 4);
    REQUIRE(over.size() == 4);
    for (std::size_t i = 0; i < 4; ++i)
        CHECK(over[i] == Approx(under[i]).margin(.01));
}

TEST_CASE("Half-round teeth go through the joints that ISO 13050 gives", "[tooth]") {
    for (const char* name : {"H3M", "H5M", "H8M", "H14M", "H20M"}) {
        INFO(name);
        const auto& tooth = profile(name);
        REQUIRE(tooth.form.joints.size() == 4);
        const QPolygonF polygon = polygonOf(toothOutline(tooth, 1));
        const double axis = tooth.pitch.inMillimetres() / 2;
        for (const auto& joint : tooth.form.joints)
            for (double side : {1.0, -1.0})
                CHECK(distanceTo(polygon, {axis + side * joint.x, -joint.y}) < .01);
    }
}

TEST_CASE("A trapezoid tooth has the flanks of its standard", "[tooth]") {
    // T10 of DIN 7721: root width 5.30, 40 degrees, 2.5 high. At half its height each flank has come in by
    // 1.25 tan 20 = 0.455, so the tooth is 4.39 wide there; XL of ISO 5296 is 2.57 wide at the land, 50
    // degrees, 1.27 high: 2.57 - 2 x 0.635 tan 25 = 1.978.
    CHECK(widthAt(profile("T10"), 1.25) == Approx(4.390).margin(.01));
    CHECK(widthAt(profile("XL"), .635) == Approx(1.978).margin(.01));
}

TEST_CASE("The tip of T10 is 3.5 mm wide where the flanks would meet it, as makers print it", "[tooth]") {
    // 3.48 by the standard's root width: read just above the tip rounding of 0.6 and carried on down.
    const double at = 2.5 - .6, lean = std::tan(20 * 3.14159265358979 / 180);
    CHECK(widthAt(profile("T10"), at) - 2 * .6 * lean == Approx(3.48).margin(.02));
}

TEST_CASE("A parabola tooth keeps to y = C x^2 on its lobes, and its root arc ends at the root width",
          "[tooth]") {
    // R8M: ht 3.25, C 1.0954. Between 1.0 and 2.0 below the land each flank moves by the parabola's figure:
    // sqrt((3.25-1.2)/C) - sqrt((3.25-2.0)/C) = 1.368 - 1.068 = 0.300.
    const auto& tooth = profile("R8M");
    CHECK((widthAt(tooth, 1.2) - widthAt(tooth, 2.0)) / 2 == Approx(.300).margin(.01));
    CHECK(widthAt(tooth, .0005) == Approx(5.49).margin(.08)); // the arc leaves the land very flat
}

TEST_CASE("A flat-topped round tooth is as wide at the land as ISO 13050 says", "[tooth]") {
    // S8M: the flank arc (5.30 about a point on the land) comes in by 5.30 - sqrt(5.30^2 - 1.5^2) = 0.217
    // at 1.5 mm below the land: 5.20 - 2 x 0.217 = 4.766.
    CHECK(widthAt(profile("S8M"), 1.5) == Approx(4.766).margin(.01));
}

TEST_CASE("The flanks of a rib stand at 40 degrees", "[tooth]") {
    for (const char* name : {"PH", "PJ", "PK", "PL", "PM"}) {
        INFO(name);
        const auto& rib = profile(name);
        const double middle = halfTooth(rib).height / 2, step = .1 * middle;
        const double in = (widthAt(rib, middle - step) - widthAt(rib, middle + step)) / 2;
        CHECK(std::atan(in / (2 * step)) * 180 / 3.14159265358979 == Approx(20).margin(.5));
    }
}

TEST_CASE("What no table gives is said to be approximate, what the tables give is not", "[tooth]") {
    for (const char* name : {"T5", "T10", "XL", "L", "H", "H8M", "H14M", "R8M", "S8M", "S14M"}) {
        INFO(name);
        CHECK_FALSE(toothIsApproximate(profile(name)));
    }
    for (const char* name : {"G2M", "G8M", "S5M", "R20M", "PJ", "m3", "T2"}) {
        INFO(name);
        CHECK(toothIsApproximate(profile(name)));
    }
}

TEST_CASE("More pitches fill a wide area, fewer a narrow one, never fewer than four", "[tooth]") {
    CHECK(pitchesFor(profile("T5"), {600, 36}) > pitchesFor(profile("T5"), {160, 36}));
    CHECK(pitchesFor(profile("XXH"), {30, 60}) == 4);
}
