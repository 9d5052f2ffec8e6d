#include "ui/drawing/charts.h"
#include "ui/drawing/hatch.h"
#include "ui/look/figures.h"

#include <QPainter>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace riband::ui {
namespace {

constexpr double headHeight = 30, rowHeight = 26, barHeight = 16;

struct Columns {
    double name, figure, remark;
};

Columns columnsOf(const QFont& font, const BarRows& bars, double width) {
    const QFontMetricsF metrics{font};
    Columns room{0, 0, 0};
    for (const BarRows::Row& row : bars.rows) {
        room.name = std::max(room.name, metrics.horizontalAdvance(row.name) + 12);
        room.figure = std::max(room.figure, figuresWidth(font, row.figure) + 18);
        room.remark = std::max(room.remark, figuresWidth(font, row.remark) + 18);
    }
    room.name = std::min(room.name, width / 3);
    return room;
}

void paintRow(QPainter& painter, const QRectF& line, const BarRows::Row& row, const Columns& room,
              double most, const Look& look) {
    painter.setPen(look.ink);
    const QFontMetricsF metrics{painter.font()};
    painter.drawText(QRectF{line.left(), line.top(), room.name, line.height()},
                     Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(row.name, Qt::ElideRight, room.name - 8));
    const double left = line.left() + room.name;
    const double full = std::max(10.0, line.width() - room.name - room.figure - room.remark);
    const double length = most > 0 ? full * std::abs(row.amount) / most : 0;
    const QRectF bar{left, line.center().y() - barHeight / 2, length, barHeight};
    if (row.amount > 0) paintHatch(painter, bar, row.part, look);
    painter.setPen(QPen{look.ink2, 1});
    painter.setBrush(Qt::NoBrush);
    if (length > 0) painter.drawRect(bar);
    painter.setPen(look.ink);
    paintFigures(painter, {line.right() - room.remark - room.figure, line.top(), room.figure, line.height()},
                 Qt::AlignRight | Qt::AlignVCenter, row.figure);
    painter.setPen(look.ink2);
    paintFigures(painter, {line.right() - room.remark, line.top(), room.remark, line.height()},
                 Qt::AlignRight | Qt::AlignVCenter, row.remark);
}

} // namespace

double heightOf(const BarRows& bars) {
    return headHeight + rowHeight * std::max(1.0, static_cast<double>(bars.rows.size()));
}

void paintBars(QPainter& painter, const QRectF& area, const BarRows& bars, const Look& look) {
    painter.setFont(Look::font(TextSize::Text, QFont::DemiBold));
    painter.setPen(look.ink);
    painter.drawText(QRectF{area.left(), area.top(), area.width(), headHeight}, Qt::AlignLeft | Qt::AlignTop,
                     bars.head);
    painter.setFont(Look::font(TextSize::Remark));
    QRectF line{area.left(), area.top() + headHeight, area.width(), rowHeight};
    if (bars.rows.empty()) {
        painter.setPen(look.ink2);
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, bars.none);
    }
    double most = 0;
    for (const BarRows::Row& row : bars.rows)
        most = std::max(most, std::abs(row.amount));
    const Columns room = columnsOf(painter.font(), bars, area.width());
    for (const BarRows::Row& row : bars.rows) {
        if (line.bottom() > area.bottom() + 1) return;
        paintRow(painter, line, row, room, most, look);
        line.translate(0, rowHeight);
    }
}

QString describe(const BarRows& bars) {
    QStringList words{bars.head};
    for (const BarRows::Row& row : bars.rows)
        words << QStringList{row.name, row.figure, row.remark}.join(QLatin1Char(' ')).trimmed();
    if (bars.rows.empty()) words << bars.none;
    return words.join(QStringLiteral("; "));
}

} // namespace riband::ui
