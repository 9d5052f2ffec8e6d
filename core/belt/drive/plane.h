#pragma once

namespace riband::belt::drive {

/// A point or a way in the plane of the belt; mm, x to the right, y up.
struct Point {
    double x, y;
    friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend constexpr Point operator*(double by, Point a) { return {by * a.x, by * a.y}; }
};

/// A straight piece, as drawn.
struct Segment {
    Point from, to;
};

double lengthOf(Segment segment);
double distance(Point a, Point b);
/// How far a point is from the nearest point of a segment.
double distance(Point point, Segment segment);
/// How far to the left of the line through the segment, looking along it; negative to the right.
double leftOf(Segment segment, Point point);
/// The foot of the point on the line through the segment is within the segment.
bool beside(Segment segment, Point point);
/// Each one has its ends on both sides of the other. Touching is not crossing.
bool cross(Segment a, Segment b);
/// The unit way of an angle, counter-clockwise from x.
Point wayOf(double angle);

} // namespace riband::belt::drive
