#pragma once

#include "core/belt/drive/route.h"

#include <QPainterPath>

#include <vector>

namespace riband::ui {

/// The cords of a belt on its route as one closed line, measured along; mm, y up as in the core.
class BeltLine {
public:
    BeltLine(const belt::drive::Layout& layout, const belt::drive::Route& route);
    double length() const { return length_; }
    /// The point that lies so far along the line and `inwards` of it, towards the face of the teeth.
    QPointF at(double along, double inwards) const;
    /// The belt as an area, with its true teeth where `teeth`; their pitch is stretched so that they are
    /// whole in number.
    QPainterPath outline(const belt::Profile& profile, bool teeth) const;

private:
    struct Part {
        double from, length;
        QPointF start;        ///< of a straight part
        QPointF way;          ///< of a straight part, unit
        QPointF centre;       ///< of an arc
        double radius, angle; ///< of an arc; radius 0: straight
        double turn;          ///< +1 counter-clockwise
    };
    QPolygonF face(const std::vector<QPointF>& tooth, int count, double inwards) const;
    std::vector<Part> parts_;
    double length_ = 0;
    double inside_ = 1; ///< +1: the teeth are on the left
};

} // namespace riband::ui
