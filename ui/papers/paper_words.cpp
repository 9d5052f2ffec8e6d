#include "ui/papers/paper_words.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace riband::ui {
namespace {

constexpr double tickSize = 12;
constexpr double tickGap = 7;

} // namespace

QFont paperFont(int pixels, QFont::Weight weight) {
    QFont font = Look::font(pixels, weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

double textWidth(const QFont& font, const QString& text) {
    return QFontMetricsF{font}.horizontalAdvance(text);
}

double lineHeight(const QFont& font) { return std::ceil(QFontMetricsF{font}.height()); }

double paintElided(QPainter& painter, const QRectF& area, Qt::Alignment alignment, const QString& text) {
    const QFontMetricsF metrics{painter.font()};
    const QString shown = metrics.elidedText(text, Qt::ElideRight, area.width() + .01);
    painter.drawText(area, static_cast<int>(alignment) | Qt::TextSingleLine | Qt::TextDontClip, shown);
    return metrics.horizontalAdvance(shown);
}

double paintFitted(QPainter& painter, const QRectF& area, Qt::Alignment alignment, const QString& text,
                   int least) {
    QFont font = painter.font();
    while (font.pixelSize() > least && textWidth(font, text) > area.width())
        font.setPixelSize(font.pixelSize() - 1);
    painter.setFont(font);
    return paintElided(painter, area, alignment, text);
}

namespace {

/// Lays the text out in lines; a word longer than a line is broken where it must be.
double layLines(QTextLayout& layout, double width) {
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    double y = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, y});
        y += line.height();
    }
    layout.endLayout();
    return y;
}

} // namespace

double wrappedHeight(const QFont& font, const QString& text, double width) {
    QTextLayout layout{text, font};
    return std::ceil(layLines(layout, width));
}

void paintWrapped(QPainter& painter, const QRectF& area, const QString& text) {
    QTextLayout layout{text, painter.font()};
    layLines(layout, area.width());
    layout.draw(&painter, area.topLeft());
}

void paintTick(QPainter& painter, const QRectF& area, const QString& words) {
    const QPen pen = painter.pen();
    painter.setPen(QPen{Look::paper().ink, 1.1});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF{area.left() + .5, area.center().y() - tickSize / 2, tickSize, tickSize});
    painter.setPen(pen);
    paintFitted(painter, area.adjusted(tickSize + tickGap, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, words);
}

void paintWarningSign(QPainter& painter, const QPointF& topLeft, double size) {
    const double w = size * 1.12;
    painter.save();
    painter.translate(topLeft);
    painter.setPen(QPen{Look::paper().ink, size * .09, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(QPolygonF{{{w / 2, size * .06}, {w * .96, size * .94}, {w * .04, size * .94}}});
    painter.drawLine(QPointF{w / 2, size * .36}, QPointF{w / 2, size * .62});
    painter.setPen(Qt::NoPen);
    painter.setBrush(Look::paper().ink);
    painter.drawEllipse(QPointF{w / 2, size * .77}, size * .06, size * .06);
    painter.restore();
}

void paintBlank(QPainter& painter, const QRectF& area, const QString& words) {
    const double used =
        paintFitted(painter, area.adjusted(0, 0, -40, 0), Qt::AlignLeft | Qt::AlignBottom, words);
    const QPen pen = painter.pen();
    painter.setPen(QPen{Look::paper().ink2, .8});
    painter.drawLine(QPointF{area.left() + used + 6, area.bottom() - 2},
                     QPointF{area.right(), area.bottom() - 2});
    painter.setPen(pen);
}

} // namespace riband::ui
