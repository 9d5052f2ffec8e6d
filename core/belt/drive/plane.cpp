#include "core/belt/drive/plane.h"

#include <algorithm>
#include <cmath>

namespace riband::belt::drive {

namespace {

double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
double turn(Point a, Point b) { return a.x * b.y - a.y * b.x; }

bool onBothSides(Segment of, Segment ends) {
    const double from = leftOf(of, ends.from), to = leftOf(of, ends.to);
    constexpr double touching = 1e-9; // mm
    return std::min(from, to) < -touching && std::max(from, to) > touching;
}

} // namespace

double distance(Point a, Point b) { return std::hypot(b.x - a.x, b.y - a.y); }

double lengthOf(Segment segment) { return distance(segment.from, segment.to); }

double distance(Point point, Segment segment) {
    const Point way = segment.to - segment.from;
    const double square = dot(way, way);
    const double along = square > 0 ? dot(point - segment.from, way) / square : 0;
    return distance(point, segment.from + std::clamp(along, 0.0, 1.0) * way);
}

double leftOf(Segment segment, Point point) {
    const double length = lengthOf(segment);
    return length > 0 ? turn(segment.to - segment.from, point - segment.from) / length : 0;
}

bool beside(Segment segment, Point point) {
    const Point way = segment.to - segment.from;
    const double along = dot(point - segment.from, way);
    return along >= 0 && along <= dot(way, way);
}

bool cross(Segment a, Segment b) { return onBothSides(a, b) && onBothSides(b, a); }

Point wayOf(double angle) { return {std::cos(angle), std::sin(angle)}; }

} // namespace riband::belt::drive
