#include "ui/drawing/route_picture.h"

#include "ui/drawing/belt_line.h"
#include "ui/words/drive_words.h"
#include "ui/words/tr.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace riband::ui {

namespace {

using namespace belt::drive;

constexpr double labelRoom = 26;     // pixels round the drawing
constexpr double leastPitch = 4;     // pixels: smaller teeth are a grey blur
constexpr double plainBelt = 3;      // pixels: a belt of which no form is known
constexpr double scaleBarMost = 140; // pixels

QPointF pointOf(Point point) { return {point.x, point.y}; }

double radiusOf(const Station& station) { return station.pulley.pitchDiameter / 2; }

/// Everything that is drawn, mm.
QRectF boundsOf(const RoutePicture& picture) {
    QRectF box;
    const auto add = [&box](QPointF centre, double radius) {
        box |= QRectF{centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius};
    };
    for (const Station& station : picture.layout.stations)
        add(pointOf(station.centre), radiusOf(station) * 1.04 + 1);
    if (picture.mover) { // its ends, too
        const Station& station = picture.layout.stations[picture.mover->station];
        const double size = std::hypot(picture.mover->way.x, picture.mover->way.y);
        for (const double move : {picture.mover->farthest, -picture.mover->back})
            add(pointOf(station.centre + (move / size) * picture.mover->way), radiusOf(station) + 1);
    }
    return box;
}

/// "50 mm": the longest round length that fits.
double barLength(double scale) {
    double best = 1;
    for (double length = 1; length * scale <= scaleBarMost; length *= 10)
        for (const double times : {1.0, 2.0, 5.0})
            if (length * times * scale <= scaleBarMost) best = std::max(best, length * times);
    return best;
}

class Drawing {
public:
    Drawing(QPainter& painter, const QRectF& area, const RoutePicture& picture, const Look& look)
        : painter_{painter}, area_{area}, picture_{picture}, look_{look}, found_{routeOf(picture.layout)} {
        const QRectF box = boundsOf(picture);
        const QRectF room = area.adjusted(labelRoom, labelRoom, -labelRoom, -labelRoom);
        scale_ = std::max(1e-3, std::min(room.width() / box.width(), room.height() / box.height()));
        // y goes up in the core and down on the screen
        toScreen_.translate(room.center().x(), room.center().y());
        toScreen_.scale(scale_, -scale_);
        toScreen_.translate(-box.center().x(), -box.center().y());
    }

    double paint() {
        painter_.setRenderHint(QPainter::Antialiasing);
        for (std::size_t i = 0; i < stations().size(); ++i)
            paintPulley(i);
        if (found_) paintBelt(*found_);
        if (picture_.mover) paintMover(*picture_.mover);
        for (std::size_t i = 0; i < stations().size(); ++i)
            paintNumber(i);
        if (found_ && stations().size() == 2) paintDistance();
        paintBar();
        return scale_;
    }

private:
    const std::vector<Station>& stations() const { return picture_.layout.stations; }
    bool atFault(std::size_t i) const {
        if (found_) return false;
        const RouteFault& fault = found_.reason();
        if (fault.kind == RouteFault::Kind::Impossible || fault.kind == RouteFault::Kind::TooFew)
            return false;
        return fault.first == i || (fault.kind != RouteFault::Kind::NotTouched && fault.second == i);
    }

    void paintPulley(std::size_t i) {
        const QPointF centre = toScreen_.map(pointOf(stations()[i].centre));
        const double radius = radiusOf(stations()[i]) * scale_;
        painter_.setPen(QPen{atFault(i) ? look_.danger : look_.ink2, atFault(i) ? 2.5 : 1.2});
        painter_.setBrush(look_.rest);
        painter_.drawEllipse(centre, radius, radius);
        painter_.setPen(QPen{look_.ink2, 1});
        painter_.drawLine(centre - QPointF{5, 0}, centre + QPointF{5, 0});
        painter_.drawLine(centre - QPointF{0, 5}, centre + QPointF{0, 5});
    }

    void paintBelt(const Route& route) {
        const BeltLine line{picture_.layout, route};
        const belt::Profile* profile = picture_.layout.profile;
        if (profile && !profile->ribbed()) {
            const bool teeth = profile->pitch.inMillimetres() * scale_ >= leastPitch;
            painter_.setPen(Qt::NoPen);
            painter_.setBrush(look_.coolFill);
            painter_.drawPath(toScreen_.map(line.outline(*profile, teeth)));
        }
        QPolygonF cords;
        const int points = std::max(60, static_cast<int>(line.length() * scale_ / 3));
        for (int i = 0; i < points; ++i)
            cords << toScreen_.map(line.at(line.length() * i / points, 0));
        painter_.setBrush(Qt::NoBrush);
        const bool thin = profile && !profile->ribbed();
        painter_.setPen(QPen{thin ? look_.warmFill : look_.coolFill, thin ? 1.2 : plainBelt});
        painter_.drawPolygon(cords);
        for (const Segment& span : route.spans)
            paintArrow(span);
    }

    /// The way the belt is told round, in the middle of a run.
    void paintArrow(Segment span) {
        const QPointF from = toScreen_.map(pointOf(span.from)), to = toScreen_.map(pointOf(span.to));
        const QPointF whole = to - from;
        const double length = std::hypot(whole.x(), whole.y());
        if (length < 40) return;
        const QPointF way = whole / length, side{-way.y(), way.x()}, tip = (from + to) / 2 + way * 6;
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(look_.ink);
        painter_.drawPolygon(QPolygonF{{tip, tip - way * 11 + side * 5, tip - way * 11 - side * 5}});
    }

    void paintMover(const Mover& mover) {
        const Station& station = stations()[mover.station];
        const double size = std::hypot(mover.way.x, mover.way.y);
        const QPointF way = pointOf(mover.way) / size, centre = pointOf(station.centre);
        const QPointF on = toScreen_.map(centre + way * mover.farthest);
        const QPointF back = toScreen_.map(centre - way * mover.back);
        const double radius = radiusOf(station) * scale_;
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(QPen{look_.warm, 1.2, Qt::DashLine});
        painter_.drawEllipse(on, radius, radius);
        painter_.drawEllipse(back, radius, radius);
        painter_.setPen(QPen{look_.warm, 2});
        painter_.drawLine(back, on);
    }

    QString wordsOf(std::size_t i) const {
        const Pulley& pulley = stations()[i].pulley;
        return pulley.teeth ? Words::tr("%1 · %2 teeth").arg(i + 1).arg(pulley.teeth->count())
                            : Words::tr("%1 · %2", "number and diameter of a pulley")
                                  .arg(i + 1)
                                  .arg(shownMillimetres(pulley.pitchDiameter));
    }

    /// In the pulley if it has room, else above or below it.
    void paintNumber(std::size_t i) {
        const QPointF centre = toScreen_.map(pointOf(stations()[i].centre));
        const double radius = radiusOf(stations()[i]) * scale_;
        painter_.setFont(Look::font(TextSize::Small, QFont::DemiBold));
        const QFontMetricsF metrics{painter_.font()};
        QString words = wordsOf(i);
        QString below = found_ ? shownDegrees(found_->contacts[i].arc * 180 / std::numbers::pi) : QString{};
        const bool wide = metrics.horizontalAdvance(words) < 1.6 * radius;
        if (!wide) words = QString::number(i + 1);
        const bool roomy = metrics.height() * 3.4 < 2 * radius;
        painter_.setPen(look_.ink);
        const QPointF top = roomy ? centre - QPointF{0, 10} : centre - QPointF{0, radius + 10};
        drawAt(top, words);
        if (wide && roomy) drawAt(centre + QPointF{0, 14}, below);
    }

    void drawAt(QPointF middle, const QString& words) {
        painter_.drawText(QRectF{middle.x() - 100, middle.y() - 10, 200, 20}, Qt::AlignCenter, words);
    }

    void paintDistance() {
        const QPointF a = toScreen_.map(pointOf(stations()[0].centre));
        const QPointF b = toScreen_.map(pointOf(stations()[1].centre));
        painter_.setPen(QPen{look_.ink2, 1, Qt::DashDotLine});
        painter_.drawLine(a, b);
        painter_.setFont(Look::font(TextSize::Small, QFont::DemiBold));
        painter_.setPen(look_.ink);
        const double r1 = radiusOf(stations()[0]) * scale_, r2 = radiusOf(stations()[1]) * scale_;
        const double middle = (a.x() + r1 + b.x() - r2) / 2;
        drawAt({middle, a.y() - 11}, shownMillimetres(distance(stations()[0].centre, stations()[1].centre)));
    }

    void paintBar() {
        const double length = barLength(scale_);
        const QPointF right = area_.bottomRight() - QPointF{8, 8}, left = right - QPointF{length * scale_, 0};
        painter_.setPen(QPen{look_.ink2, 1.2});
        painter_.drawLine(left, right);
        painter_.drawLine(left - QPointF{0, 4}, left);
        painter_.drawLine(right - QPointF{0, 4}, right);
        painter_.setFont(Look::font(TextSize::Least));
        painter_.drawText(QRectF{right.x() - 120, right.y() - 20, 120, 14}, Qt::AlignRight | Qt::AlignBottom,
                          Words::tr("%1 mm").arg(length));
    }

    QPainter& painter_;
    QRectF area_;
    const RoutePicture& picture_;
    const Look& look_;
    Outcome<Route, RouteFault> found_;
    double scale_ = 1;
    QTransform toScreen_;
};

} // namespace

double paintRoute(QPainter& painter, const QRectF& area, const RoutePicture& picture, const Look& look) {
    if (picture.layout.stations.empty()) return 0;
    painter.save();
    const double scale = Drawing{painter, area, picture, look}.paint();
    painter.restore();
    return scale;
}

QString describe(const RoutePicture& picture) {
    const auto route = routeOf(picture.layout);
    if (!route) return say(route.reason());
    QStringList parts{Words::tr("belt %1").arg(shownMillimetres(route->length))};
    for (std::size_t i = 0; i < route->contacts.size(); ++i)
        parts << describe(route->contacts[i], i + 1);
    return parts.join(QStringLiteral("; "));
}

RouteWidget::RouteWidget(QWidget* parent) : QWidget{parent} {
    setAccessibleName(Words::tr("Drawing of the drive, to scale"));
}

void RouteWidget::show(RoutePicture picture) {
    setAccessibleDescription(describe(picture));
    picture_ = std::move(picture);
    update();
}

void RouteWidget::clear() {
    picture_.reset();
    setAccessibleDescription({});
    update();
}

QSize RouteWidget::sizeHint() const { return {800, 260}; }

QSize RouteWidget::minimumSizeHint() const { return {320, 160}; }

void RouteWidget::paintEvent(QPaintEvent*) {
    if (!picture_) return;
    QPainter painter{this};
    paintRoute(painter, QRectF{rect()}, *picture_, Look::current());
}

} // namespace riband::ui
