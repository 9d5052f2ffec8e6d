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

/// Inter shows other signs between figures and capitals (a higher hyphen in "T2B-6"), of which a PDF knows no
/// characters: the code could be neither searched nor copied. So signs are shaped apart from their
/// neighbours.
bool isSign(QChar c) { return !c.isLetterOrNumber() && !c.isSpace() && !c.isMark(); }

void shapeSignsApart(QTextLayout& layout) {
    QList<QTextLayout::FormatRange> ranges;
    const QString text = layout.text();
    for (int i = 0; i < text.size(); ++i)
        if (isSign(text[i])) ranges.append({i, 1, {}});
    layout.setFormats(ranges);
}

/// Lays the text out in lines; returns their height.
double layLines(QTextLayout& layout, QTextOption::WrapMode wrap, double width) {
    QTextOption option;
    option.setWrapMode(wrap);
    layout.setTextOption(option);
    shapeSignsApart(layout);
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

double startOf(const QRectF& area, Qt::Alignment alignment, double width) {
    if (alignment & Qt::AlignRight) return area.right() - width;
    return alignment & Qt::AlignHCenter ? area.center().x() - width / 2 : area.left();
}

double topOf(const QRectF& area, Qt::Alignment alignment, double height) {
    if (alignment & Qt::AlignBottom) return area.bottom() - height;
    return alignment & Qt::AlignVCenter ? area.center().y() - height / 2 : area.top();
}

} // namespace

QFont paperFont(int pixels, QFont::Weight weight) {
    QFont font = Look::font(pixels, weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

double textWidth(const QFont& font, const QString& text) {
    QTextLayout layout{text, font};
    layLines(layout, QTextOption::NoWrap, 1e6);
    return layout.lineCount() == 0 ? 0 : layout.lineAt(0).naturalTextWidth();
}

double lineHeight(const QFont& font) { return std::ceil(QFontMetricsF{font}.height()); }

double paintElided(QPainter& painter, const QRectF& area, Qt::Alignment alignment, const QString& text) {
    const QFontMetricsF metrics{painter.font()};
    QTextLayout layout{metrics.elidedText(text, Qt::ElideRight, area.width() + .5), painter.font()};
    const double height = layLines(layout, QTextOption::NoWrap, 1e6);
    if (layout.lineCount() == 0) return 0;
    const double width = layout.lineAt(0).naturalTextWidth();
    layout.draw(&painter, {startOf(area, alignment, width), topOf(area, alignment, height)});
    return width;
}

double paintFitted(QPainter& painter, const QRectF& area, Qt::Alignment alignment, const QString& text,
                   int least) {
    QFont font = painter.font();
    while (font.pixelSize() > least && textWidth(font, text) > area.width())
        font.setPixelSize(font.pixelSize() - 1);
    painter.setFont(font);
    return paintElided(painter, area, alignment, text);
}

double wrappedHeight(const QFont& font, const QString& text, double width) {
    QTextLayout layout{text, font};
    return std::ceil(layLines(layout, QTextOption::WrapAtWordBoundaryOrAnywhere, width));
}

void paintWrapped(QPainter& painter, const QRectF& area, const QString& text) {
    QTextLayout layout{text, painter.font()};
    layLines(layout, QTextOption::WrapAtWordBoundaryOrAnywhere, area.width());
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
