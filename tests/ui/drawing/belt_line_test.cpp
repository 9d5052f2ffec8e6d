#include "tests/catch.h"

#include "resources/table_texts.h"
#include "ui/drawing/belt_line.h"
#include "ui/drawing/route_picture.h"
#include "ui/drawing/tooth.h"

#include <QImage>
#include <QPainter>

#include <cmath>

using namespace riband;
using namespace riband::ui;
using namespace riband::belt::drive;

namespace {

const belt::Tables& tables() {
    static const auto loaded = belt::Tables::load(tableTexts());
    return *loaded.value();
}

/// Two pulleys and an idler on the back of the upper run.
Layout layout(const belt::Profile* profile) {
    return {profile,
            {{{0, 0}, {120, {}}, Side::Inside},
             {{400, 0}, {160, {}}, Side::Inside},
             {{200, 90}, {60, {}}, Side::Back}}};
}

double areaOf(const QPainterPath& path) {
    double twice = 0;
    bool outer = false;
    for (const QPolygonF& polygon : path.toSubpathPolygons()) {
        double each = 0;
        for (qsizetype i = 0; i + 1 < polygon.size(); ++i)
            each += polygon[i].x() * polygon[i + 1].y() - polygon[i + 1].x() * polygon[i].y();
        twice += outer ? std::abs(each) : -std::abs(each); // the face of the teeth is the inner one
        outer = true;
    }
    return twice / 2;
}

} // namespace

TEST_CASE("The drawn line is as long as the route and touches each pulley at its radius", "[route]") {
    const Layout drive = layout(nullptr);
    const auto route = routeOf(drive);
    REQUIRE(route);
    const BeltLine line{drive, *route};
    CHECK(line.length() == Approx(route->length));
    double walked = 0;
    const int steps = 20000;
    for (int i = 0; i < steps; ++i) {
        const QPointF way =
            line.at(line.length() * (i + 1) / steps, 0) - line.at(line.length() * i / steps, 0);
        walked += std::hypot(way.x(), way.y());
    }
    CHECK(walked == Approx(route->length).epsilon(1e-5));
    for (std::size_t i = 0; i < 3; ++i) {
        const QPointF entry{route->contacts[i].entry.x, route->contacts[i].entry.y};
        double least = 1e9;
        for (int k = 0; k < steps; ++k) {
            const QPointF off = line.at(line.length() * k / steps, 0) - entry;
            least = std::min(least, std::hypot(off.x(), off.y()));
        }
        CHECK(least < 0.05);
    }
}

TEST_CASE("The face of the teeth is towards the pulleys inside, away from an idler on the back", "[route]") {
    const Layout drive = layout(nullptr);
    const auto route = routeOf(drive);
    REQUIRE(route);
    const BeltLine line{drive, *route};
    const auto from = [](QPointF point, Point centre) {
        return std::hypot(point.x() - centre.x, point.y() - centre.y);
    };
    // The middle of the first arc, and of the idler's.
    const double first = route->contacts[0].arc * 60 / 2;
    CHECK(from(line.at(first, 5), {0, 0}) == Approx(55));
    double idler = line.length() - lengthOf(route->spans[2]) - route->contacts[2].arc * 30 / 2;
    CHECK(from(line.at(idler, 5), {200, 90}) == Approx(35));
}

TEST_CASE("A drawn belt has its teeth, whole in number and true in size", "[route]") {
    for (const char* name : {"T5", "H8M", "XL"}) {
        INFO(name);
        const belt::Profile* profile = tables().profile(name);
        REQUIRE(profile);
        const double radius = 200, centre = 800;
        const Layout drive{profile, {{{0, 0}, {2 * radius, {}}}, {{centre, 0}, {2 * radius, {}}}}};
        const auto route = routeOf(drive);
        REQUIRE(route);
        const BeltLine line{drive, *route};
        const double straight = areaOf(toothOutline(*profile, 1).toReversed());
        const double teeth = std::round(route->length / profile->pitch.inMillimetres());
        // Bent round 200 mm the area changes by a hundredth at most.
        CHECK(areaOf(line.outline(*profile, true)) == Approx(std::abs(straight) * teeth).epsilon(0.02));
    }
}

TEST_CASE("A drive that can't be is drawn all the same, and said", "[route]") {
    Layout drive = layout(nullptr);
    drive.stations[2].centre = {200, 500};
    QImage image{400, 300, QImage::Format_ARGB32};
    image.fill(Qt::white);
    QPainter painter{&image};
    CHECK(paintRoute(painter, QRectF{0, 0, 400, 300}, {drive, {}}, Look::of(Shade::Light)) > 0);
    CHECK(describe(RoutePicture{drive, {}}).contains("Pulley 3"));
    CHECK(paintRoute(painter, QRectF{0, 0, 400, 300}, {{}, {}}, Look::of(Shade::Light)) == 0);
}
