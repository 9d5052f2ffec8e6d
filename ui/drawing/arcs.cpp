#include "ui/drawing/arcs.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace riband::ui {
namespace {

double length(const QPointF& v) { return std::hypot(v.x(), v.y()); }

double degrees(const QPointF& v) { return std::atan2(-v.y(), v.x()) * 180 / std::numbers::pi; }

/// How much of each side the rounding of a corner takes, for a radius of 1.
double tangentPerRadius(const QPointF& before, const QPointF& at, const QPointF& after) {
    const QPointF a = before - at, b = after - at;
    const double cosine = QPointF::dotProduct(a, b) / (length(a) * length(b));
    const double half = std::acos(std::clamp(cosine, -1.0, 1.0)) / 2;
    return 1 / std::tan(half);
}

} // namespace

QPointF towards(const QPointF& from, const QPointF& to, double distance) {
    return from + (to - from) * (distance / length(to - from));
}

void arcTo(QPainterPath& path, const QPointF& centre, QPointF to) {
    const QPointF from = path.currentPosition();
    const double radius = length(from - centre);
    const double start = degrees(from - centre);
    const double sweep = std::remainder(degrees(to - centre) - start, 360.0);
    path.arcTo(QRectF{centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius}, start, sweep);
}

QPointF centreRightOf(const QPointF& from, const QPointF& to, double radius) {
    const QPointF chord = to - from;
    const double half = length(chord) / 2;
    const double rise = std::sqrt(std::max(0.0, radius * radius - half * half));
    const QPointF right{-chord.y() / (2 * half), chord.x() / (2 * half)};
    return (from + to) / 2 + right * rise;
}

void roundedTo(QPainterPath& path, const std::vector<Corner>& corners) {
    for (std::size_t i = 1; i + 1 < corners.size(); ++i) {
        const QPointF before = corners[i - 1].at, at = corners[i].at, after = corners[i + 1].at;
        const double per = tangentPerRadius(before, at, after);
        // Half of an inner side belongs to each of its corners; the first and last side have only one.
        const double roomBefore = length(at - before) * (i == 1 ? 1 : .5);
        const double roomAfter = length(after - at) * (i + 2 == corners.size() ? 1 : .5);
        const double radius = std::min(corners[i].radius, std::min(roomBefore, roomAfter) / per);
        const QPointF in = towards(at, before, radius * per), out = towards(at, after, radius * per);
        path.lineTo(in);
        if (radius < 1e-6) continue;
        const QPointF middle = (in + out) / 2;
        arcTo(path, towards(at, middle, std::hypot(radius, radius * per)), out);
    }
    path.lineTo(corners.back().at);
}

QPointF lowerMeeting(const QPointF& c1, double r1, const QPointF& c2, double r2) {
    const QPointF between = c2 - c1;
    const double d = length(between);
    const double along = (r1 * r1 - r2 * r2 + d * d) / (2 * d);
    const double across = std::sqrt(std::max(0.0, r1 * r1 - along * along));
    const QPointF unit = between / d, side{-unit.y(), unit.x()};
    const QPointF a = c1 + unit * along + side * across, b = c1 + unit * along - side * across;
    return a.y() > b.y() ? a : b;
}

} // namespace riband::ui
