#include "ui/drawing/belt_line.h"

#include "ui/drawing/tooth.h"

#include <algorithm>
#include <cmath>

namespace riband::ui {

namespace {

using namespace belt::drive;

constexpr double fine = 20;      // curves are made of chords; more of them where the tooth is drawn larger
constexpr double smoothStep = 2; // mm

/// One tooth from land to land: how far along the pitch, how far inwards of the land.
std::vector<QPointF> toothOf(const belt::Profile& profile) {
    const QPainterPath one = toothOutline(profile, 1);
    std::vector<QPointF> points;
    for (const QPolygonF& polygon : one.toSubpathPolygons(QTransform::fromScale(fine, fine)))
        for (const QPointF& point : polygon)
            if (point.y() > -1e-6) points.push_back(point / fine);
    if (points.size() > 1 && points.front() == points.back()) points.pop_back(); // the outline is closed
    return points;
}

double bodyOf(const belt::Profile& profile) {
    const QRectF box = toothOutline(profile, 1).boundingRect();
    return -box.top() - (profile.doubleSided ? box.bottom() : 0);
}

/// From the cords to the land.
double cordsOverLand(const belt::Profile& profile, double body) {
    if (profile.doubleSided) return body / 2;
    return std::clamp(profile.form.pitchLine.value_or(body / 3), 0.0, body);
}

} // namespace

BeltLine::BeltLine(const Layout& layout, const Route& route) {
    for (std::size_t i = 0; i < layout.stations.size(); ++i) {
        const Station& station = layout.stations[i];
        const Contact& contact = route.contacts[i];
        const double radius = station.pulley.pitchDiameter / 2;
        const double turn = contact.counterClockwise ? 1 : -1;
        if (station.side == Side::Inside) inside_ = turn;
        parts_.push_back({length_,
                          radius * contact.arc,
                          {},
                          {},
                          {station.centre.x, station.centre.y},
                          radius,
                          contact.entryAngle,
                          turn});
        length_ += radius * contact.arc;
        const Segment span = route.spans[i];
        const double length = lengthOf(span);
        const QPointF way =
            length > 0 ? QPointF{span.to.x - span.from.x, span.to.y - span.from.y} / length : QPointF{1, 0};
        parts_.push_back({length_, length, {span.from.x, span.from.y}, way, {}, 0, 0, 0});
        length_ += length;
    }
}

QPointF BeltLine::at(double along, double inwards) const {
    double rest = std::fmod(along, length_);
    if (rest < 0) rest += length_;
    const auto after = std::upper_bound(parts_.begin(), parts_.end(), rest,
                                        [](double value, const Part& part) { return value < part.from; });
    const Part& part = after == parts_.begin() ? parts_.front() : *(after - 1);
    rest -= part.from;
    if (part.radius <= 0) {
        const QPointF left{-part.way.y(), part.way.x()};
        return part.start + part.way * rest + left * (inside_ * inwards);
    }
    const double angle = part.angle + part.turn * rest / part.radius;
    // The centre is to the left of a counter-clockwise arc.
    const double radius = part.radius - part.turn * inside_ * inwards;
    return part.centre + QPointF{std::cos(angle), std::sin(angle)} * radius;
}

QPolygonF BeltLine::face(const std::vector<QPointF>& tooth, int count, double inwards) const {
    QPolygonF line;
    const double pitch = length_ / count;
    const double own = tooth.back().x() - tooth.front().x();
    for (int i = 0; i < count; ++i)
        for (const QPointF& point : tooth)
            line << at(pitch * (i + (point.x() - tooth.front().x()) / own), inwards + point.y());
    return line;
}

QPainterPath BeltLine::outline(const belt::Profile& profile, bool teeth) const {
    const double body = bodyOf(profile);
    const double land = cordsOverLand(profile, body);
    const std::vector<QPointF> flat{{0, 0}, {.5, 0}, {1, 0}};
    const int smooth = std::max(8, static_cast<int>(length_ / smoothStep));
    const int count = std::max(1, static_cast<int>(std::lround(length_ / profile.pitch.inMillimetres())));
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    if (teeth)
        path.addPolygon(face(toothOf(profile), count, land));
    else
        path.addPolygon(face(flat, smooth, land));
    path.closeSubpath();
    if (teeth && profile.doubleSided) {
        std::vector<QPointF> back = toothOf(profile);
        for (QPointF& point : back)
            point.setY(-point.y());
        path.addPolygon(face(back, count, land - body));
    } else
        path.addPolygon(face(flat, smooth, land - body));
    path.closeSubpath();
    return path;
}

} // namespace riband::ui
