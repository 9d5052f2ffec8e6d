#include "ui/drawing/charts.h"
#include "ui/drawing/hatch.h"
#include "ui/look/figures.h"

#include <QPainter>
#include <QPainterPath>
#include <QStringList>

#include <algorithm>

namespace riband::ui {
namespace {

using Part = BandPicture::Part;
using Stream = FlowPicture::Stream;

constexpr double headHeight = 30, bandHeight = 46, gapHeight = 34, keyGap = 12, keyHeight = 24, swatch = 22;
constexpr double leastKey = 220; ///< room for a name and its figures

bool isLost(const Stream& stream) { return stream.part == Part::Trim || stream.part == Part::Lost; }

double sumOf(const std::vector<Stream>& streams, bool lostOnly) {
    double sum = 0;
    for (const Stream& stream : streams)
        if (!lostOnly || isLost(stream)) sum += std::max(0.0, stream.amount);
    return sum;
}

/// The name of a strip, where it has the room.
void paintName(QPainter& painter, const QRectF& strip, const Stream& stream, const Look& look) {
    const double room = painter.fontMetrics().horizontalAdvance(stream.name);
    if (room + 12 > strip.width()) return;
    const QRectF back{strip.center().x() - room / 2 - 5, strip.center().y() - 10, room + 10, 20};
    painter.fillRect(back, hatchGround(stream.part, look));
    painter.setPen(hatchInk(stream.part, look));
    painter.drawText(strip, Qt::AlignCenter, stream.name);
}

/// A band of the streams, side by side to scale; where those that were lost begin.
double paintStrips(QPainter& painter, const QRectF& band, const std::vector<Stream>& streams, bool lostOnly,
                   const Look& look) {
    const double sum = sumOf(streams, lostOnly);
    double x = band.left(), lostFrom = band.right();
    if (sum <= 0) return lostFrom;
    for (const Stream& stream : streams) {
        if ((lostOnly && !isLost(stream)) || stream.amount <= 0) continue;
        const QRectF strip{x, band.top(), band.width() * stream.amount / sum, band.height()};
        if (isLost(stream)) lostFrom = std::min(lostFrom, x);
        paintHatch(painter, strip, stream.part, look);
        painter.setPen(QPen{look.ink2, 1});
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(strip);
        paintName(painter, strip, stream, look);
        x = strip.right();
    }
    return lostFrom;
}

/// From the lost end of the upper band to the whole lower one.
void paintFan(QPainter& painter, double from, const QRectF& upper, const QRectF& lower, const Look& look) {
    QPainterPath fan;
    fan.moveTo(from, upper.bottom());
    fan.lineTo(upper.right(), upper.bottom());
    fan.lineTo(lower.right(), lower.top());
    fan.lineTo(lower.left(), lower.top());
    fan.closeSubpath();
    painter.setPen(QPen{look.line, 1});
    painter.setBrush(look.sunk);
    painter.drawPath(fan);
}

/// Of the key.
std::size_t columnsOf(double width) { return width < 2 * (leastKey + 12) ? 1 : 2; }

void paintKey(QPainter& painter, const QRectF& area, const std::vector<Stream>& streams, const Look& look) {
    const std::size_t columns = columnsOf(area.width());
    const double half = area.width() / static_cast<double>(columns) - (columns > 1 ? 12 : 0);
    const std::size_t perColumn = (streams.size() + columns - 1) / columns;
    for (std::size_t i = 0; i < streams.size(); ++i) {
        const double x = area.left() + (i < perColumn ? 0 : half + 24);
        const double y = area.top() + keyHeight * static_cast<double>(i % perColumn);
        const QRectF box{x, y + 4, swatch, keyHeight - 8};
        paintHatch(painter, box, streams[i].part, look);
        painter.setPen(QPen{look.ink2, 1});
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box);
        painter.setPen(look.ink);
        painter.drawText(QRectF{x + swatch + 8, y, half - swatch - 8, keyHeight},
                         Qt::AlignLeft | Qt::AlignVCenter, streams[i].name);
        paintFigures(painter, {x, y, half, keyHeight}, Qt::AlignRight | Qt::AlignVCenter, streams[i].figure);
    }
}

} // namespace

void paintFlow(QPainter& painter, const QRectF& area, const FlowPicture& picture, const Look& look) {
    painter.setFont(Look::font(TextSize::Text, QFont::DemiBold));
    painter.setPen(look.ink);
    painter.drawText(QRectF{area.left(), area.top(), area.width(), headHeight}, Qt::AlignLeft | Qt::AlignTop,
                     picture.head);
    painter.setFont(Look::font(TextSize::Remark));
    const QRectF upper{area.left() + 1, area.top() + headHeight, area.width() - 2, bandHeight};
    const QRectF lower = upper.translated(0, bandHeight + gapHeight);
    double keyTop = upper.bottom() + keyGap;
    if (sumOf(picture.streams, true) > 0) {
        const double from = paintStrips(painter, upper, picture.streams, false, look);
        paintFan(painter, from, upper, lower, look);
        paintStrips(painter, lower, picture.streams, true, look);
        keyTop = lower.bottom() + keyGap;
    } else {
        paintStrips(painter, upper, picture.streams, false, look);
    }
    paintKey(painter, {area.left(), keyTop, area.width(), area.bottom() - keyTop}, picture.streams, look);
}

double heightOf(const FlowPicture& picture, double width) {
    const double bands = sumOf(picture.streams, true) > 0 ? 2 * bandHeight + gapHeight : bandHeight;
    const std::size_t columns = columnsOf(width);
    return headHeight + bands + keyGap +
           keyHeight * static_cast<double>((picture.streams.size() + columns - 1) / columns);
}

QString describe(const FlowPicture& picture) {
    QStringList words{picture.head};
    for (const Stream& stream : picture.streams)
        words << stream.name + QLatin1Char(' ') + stream.figure;
    return words.join(QStringLiteral("; "));
}

} // namespace riband::ui
