#include "ui/look/figures.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace riband::ui {
namespace {

double digitRoom(const QFontMetricsF& metrics) {
    double room = 0;
    for (char digit = '0'; digit <= '9'; ++digit)
        room = std::max(room, metrics.horizontalAdvance(QLatin1Char{digit}));
    return room;
}

double roomOf(const QFontMetricsF& metrics, QChar c, double digit) {
    return c >= '0' && c <= '9' ? digit : metrics.horizontalAdvance(c);
}

double startOf(const QRectF& area, Qt::Alignment alignment, double width) {
    if (alignment & Qt::AlignRight) return area.right() - width;
    if (alignment & Qt::AlignHCenter) return area.center().x() - width / 2;
    return area.left();
}

double baselineOf(const QRectF& area, Qt::Alignment alignment, const QFontMetricsF& metrics) {
    if (alignment & Qt::AlignBottom) return area.bottom() - metrics.descent();
    if (alignment & Qt::AlignVCenter) return area.center().y() + (metrics.ascent() - metrics.descent()) / 2;
    return area.top() + metrics.ascent();
}

} // namespace

double figuresWidth(const QFont& font, const QString& text) {
    const QFontMetricsF metrics{font};
    const double digit = digitRoom(metrics);
    double width = 0;
    for (QChar c : text)
        width += roomOf(metrics, c, digit);
    return width;
}

double paintFigures(QPainter& painter, const QRectF& area, Qt::Alignment alignment, const QString& text) {
    const QFontMetricsF metrics{painter.font()};
    const double digit = digitRoom(metrics);
    const double width = figuresWidth(painter.font(), text);
    double x = startOf(area, alignment, width);
    const double y = baselineOf(area, alignment, metrics);
    for (QChar c : text) {
        const double room = roomOf(metrics, c, digit);
        painter.drawText(QPointF{x + (room - metrics.horizontalAdvance(c)) / 2, y}, QString{c});
        x += room;
    }
    return width;
}

} // namespace riband::ui
