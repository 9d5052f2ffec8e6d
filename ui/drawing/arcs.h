#pragma once

#include <QPainterPath>
#include <QPointF>

#include <vector>

/// The plane geometry of tooth forms, in millimetres, y down.
namespace riband::ui {

/// Continues the path on a circle to `to`, the shorter way round. The path's end must lie on the circle.
void arcTo(QPainterPath& path, const QPointF& centre, QPointF to);

/// The centre of the circle of `radius` through both points that lies to the right of the way from `from` to
/// `to` (as one sees it with y down). A radius too small for the points becomes half their distance.
QPointF centreRightOf(const QPointF& from, const QPointF& to, double radius);

/// Continues the path along the corners, each rounded by its radius; a radius that finds no room is reduced.
/// The path starts at the first corner, whose radius is not used, nor is that of the last.
struct Corner {
    QPointF at;
    double radius = 0;
};
void roundedTo(QPainterPath& path, const std::vector<Corner>& corners);

/// Where two circles meet; of the two points the one with the larger y. The circles must meet.
QPointF lowerMeeting(const QPointF& c1, double r1, const QPointF& c2, double r2);

/// The point at `distance` from `from` towards `to` (beyond it if farther).
QPointF towards(const QPointF& from, const QPointF& to, double distance);

} // namespace riband::ui
