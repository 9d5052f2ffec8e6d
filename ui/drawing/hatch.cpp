#include "ui/drawing/hatch.h"

#include <QPainter>

#include <cmath>

namespace riband::ui {
namespace {

using Part = BandPicture::Part;
constexpr double spacing = 7; ///< between the lines of a hatch, pixels
constexpr double dotSpacing = 7;
constexpr double dotRadius = 1;

/// Lines that lean to the right (+1) or left (-1), on one grid for all strips of the same place.
void slanted(QPainter& painter, const QRectF& r, double lean) {
    const double reach = r.height();
    const double first = std::floor((r.left() - reach) / spacing) * spacing;
    for (double x = first; x < r.right() + reach; x += spacing)
        painter.drawLine(QPointF{x, r.bottom()}, QPointF{x + lean * reach, r.top()});
}

void dots(QPainter& painter, const QRectF& r) {
    for (double y = r.top() + dotSpacing / 2; y < r.bottom(); y += dotSpacing)
        for (double x = r.left() + dotSpacing / 2; x < r.right(); x += dotSpacing)
            painter.drawEllipse(QPointF{x, y}, dotRadius, dotRadius);
}

QColor hatchLine(Part part, const Look& look) {
    if (part == Part::Lost) return look.ink2;
    return part == Part::ShelfBelt ? look.onFill : look.edge;
}

} // namespace

QColor hatchGround(Part part, const Look& look) {
    switch (part) {
    case Part::Trim:
        return look.warmFill;
    case Part::Belt:
    case Part::ShelfBelt:
        return look.coolFill;
    case Part::Kept:
        return look.rest;
    case Part::Lost:
        return look.card;
    }
    return look.card;
}

QColor hatchInk(Part part, const Look& look) {
    return part == Part::Belt || part == Part::ShelfBelt ? look.onFill : look.ink;
}

void paintHatch(QPainter& painter, const QRectF& strip, Part part, const Look& look) {
    painter.save();
    painter.setClipRect(strip, Qt::IntersectClip);
    painter.fillRect(strip, hatchGround(part, look));
    const QColor line = hatchLine(part, look);
    painter.setPen(QPen{line, part == Part::Trim ? 2.0 : 1.0});
    if (part == Part::Trim || part == Part::Lost) slanted(painter, strip, 1);
    if (part == Part::Lost) slanted(painter, strip, -1);
    if (part == Part::ShelfBelt) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(line);
        dots(painter, strip);
    }
    painter.restore();
}

} // namespace riband::ui
