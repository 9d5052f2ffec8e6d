#include "ui/drawing/charts.h"
#include "ui/look/figures.h"

#include <QLineF>
#include <QPainter>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace riband::ui {
namespace {

constexpr double headHeight = 30, axisRoom = 52, nameHeight = 24;

/// The highest value that is shown: of points and bands, but for bands of too few movements.
double topOf(const TrendPicture& picture) {
    double top = 0;
    for (const TrendPicture::Point& point : picture.points) {
        if (point.value) top = std::max(top, *point.value);
        if (point.high < 1) top = std::max(top, point.high);
    }
    return top > 0 ? top : 1;
}

/// A round step, so that four or five of them reach the top.
double stepOf(double top) {
    const double raw = top / 4, ten = std::pow(10.0, std::floor(std::log10(raw)));
    for (const double times : {1.0, 2.0, 2.5, 5.0})
        if (times * ten >= raw * (1 - 1e-9)) return times * ten;
    return 10 * ten;
}

struct Axes {
    QRectF plot;
    double top, step, each;
    double x(std::size_t point) const { return plot.left() + each * (static_cast<double>(point) + 0.5); }
    double y(double value) const { return plot.bottom() - plot.height() * std::min(1.0, value / top); }
};

void paintScale(QPainter& painter, const Axes& axes, const TrendPicture& picture, const Look& look) {
    const int lines = static_cast<int>(std::lround(axes.top / axes.step));
    for (int i = 0; i <= lines; ++i) {
        const double value = axes.step * i, y = axes.y(value);
        painter.setPen(QPen{look.line, 1});
        painter.drawLine(QPointF{axes.plot.left(), y}, QPointF{axes.plot.right(), y});
        painter.setPen(look.ink2);
        paintFigures(painter, {axes.plot.left() - axisRoom, y - 10, axisRoom - 8, 20},
                     Qt::AlignRight | Qt::AlignVCenter, picture.figure(value));
    }
}

/// Every how many months one is named, so that no name touches the next.
std::size_t namedEvery(const QFontMetricsF& metrics, const Axes& axes, const TrendPicture& picture) {
    double widest = 0;
    for (const TrendPicture::Point& point : picture.points)
        widest = std::max(widest, metrics.horizontalAdvance(point.name));
    return std::max<std::size_t>(1, static_cast<std::size_t>(std::ceil((widest + 6) / axes.each)));
}

bool crosses(const QLineF& line, const QRectF& area) {
    constexpr int steps = 60;
    for (int i = 0; i <= steps; ++i)
        if (area.contains(line.pointAt(static_cast<double>(i) / steps))) return true;
    return false;
}

/// Where the figure of a point stands: beside the line, not on it.
QRectF figureBeside(const Axes& axes, std::size_t i, const TrendPicture& picture, const QSizeF& size) {
    constexpr double away = 12;
    const auto pointAt = [&](std::size_t k) { return QPointF{axes.x(k), axes.y(*picture.points[k].value)}; };
    const QPointF at = pointAt(i);
    std::vector<QLineF> lines;
    if (i > 0 && picture.points[i - 1].value) lines.emplace_back(at, pointAt(i - 1));
    if (i + 1 < picture.points.size() && picture.points[i + 1].value) lines.emplace_back(at, pointAt(i + 1));
    const QRectF centred{at.x() - size.width() / 2, at.y() - size.height() / 2, size.width(), size.height()};
    const double up = away + size.height() / 2, aside = away + size.width() / 2;
    const QPointF shifts[] = {{0, -up}, {0, up}, {-aside, 0}, {aside, 0}, {-aside, -up}, {aside, -up}};
    for (const QPointF& shift : shifts) {
        const QRectF area = centred.translated(shift);
        const bool touched = std::any_of(lines.begin(), lines.end(), [&](const QLineF& line) {
            return crosses(line, area.adjusted(-3, -3, 3, 3));
        });
        if (!touched && axes.plot.contains(area)) return area;
    }
    return centred.translated(0, -up);
}

void paintPoint(QPainter& painter, const Axes& axes, std::size_t i, const TrendPicture& picture,
                const Look& look) {
    const TrendPicture::Point& point = picture.points[i];
    const double x = axes.x(i);
    if (!point.value) {
        painter.setPen(look.ink2);
        painter.drawText(
            QRectF{x - axes.each / 2, axes.plot.bottom() - 2 * nameHeight, axes.each, 2 * nameHeight},
            Qt::AlignCenter | Qt::TextWordWrap, picture.none);
        return;
    }
    const QPointF at{x, axes.y(*point.value)};
    painter.setPen(QPen{look.ink, 2});
    painter.setBrush(point.news ? look.warmFill : look.ink);
    if (!point.news) {
        painter.drawEllipse(at, 4, 4);
        return;
    }
    const double r = 8;
    painter.drawPolygon(
        QPolygonF{{at + QPointF{0, -r}, at + QPointF{r, 0}, at + QPointF{0, r}, at + QPointF{-r, 0}}});
    painter.setPen(look.ink);
    const QString figure = picture.figure(*point.value);
    const QFontMetricsF metrics{painter.font()};
    const QSizeF size{metrics.horizontalAdvance(figure) + 2, metrics.height()};
    painter.drawText(figureBeside(axes, i, picture, size), Qt::AlignCenter, figure);
}

/// The newest month is named, and those before it as far as there is room.
void paintNames(QPainter& painter, const Axes& axes, const TrendPicture& picture, const Look& look) {
    const std::size_t every = namedEvery(QFontMetricsF{painter.font()}, axes, picture);
    const double room = axes.each * static_cast<double>(every);
    painter.setPen(look.ink2);
    for (std::size_t back = 0; back < picture.points.size(); back += every) {
        const std::size_t i = picture.points.size() - 1 - back;
        painter.drawText(QRectF{axes.x(i) - room / 2, axes.plot.bottom() + 2, room, nameHeight},
                         Qt::AlignCenter, picture.points[i].name);
    }
}

} // namespace

void paintTrend(QPainter& painter, const QRectF& area, const TrendPicture& picture, const Look& look) {
    painter.setFont(Look::font(TextSize::Text, QFont::DemiBold));
    painter.setPen(look.ink);
    painter.drawText(QRectF{area.left(), area.top(), area.width(), headHeight}, Qt::AlignLeft | Qt::AlignTop,
                     picture.head);
    painter.setFont(Look::font(TextSize::Small));
    if (picture.points.empty()) return;
    const QRectF plot = area.adjusted(axisRoom, headHeight + 6, -4, -nameHeight - 4);
    const double highest = topOf(picture), each = stepOf(highest);
    const Axes axes{plot, each * std::ceil(highest / each * 1.02), each,
                    plot.width() / static_cast<double>(picture.points.size())};
    for (std::size_t i = 0; i < picture.points.size(); ++i) {
        const TrendPicture::Point& point = picture.points[i];
        if (!point.value || (point.low <= 0 && point.high >= 1)) continue; // chance would allow anything
        const double top = axes.y(point.high), bottom = axes.y(point.low);
        painter.fillRect(QRectF{axes.x(i) - axes.each / 2, top, axes.each, bottom - top}, look.rest);
    }
    paintScale(painter, axes, picture, look);
    painter.setPen(QPen{look.ink, 2});
    for (std::size_t i = 1; i < picture.points.size(); ++i)
        if (picture.points[i - 1].value && picture.points[i].value)
            painter.drawLine(QPointF{axes.x(i - 1), axes.y(*picture.points[i - 1].value)},
                             QPointF{axes.x(i), axes.y(*picture.points[i].value)});
    paintNames(painter, axes, picture, look);
    for (std::size_t i = 0; i < picture.points.size(); ++i)
        paintPoint(painter, axes, i, picture, look);
}

QString describe(const TrendPicture& picture) {
    QStringList words{picture.head};
    for (const TrendPicture::Point& point : picture.points)
        words << point.name + QLatin1Char(' ') + (point.value ? picture.figure(*point.value) : picture.none);
    return words.join(QStringLiteral("; "));
}

} // namespace riband::ui
