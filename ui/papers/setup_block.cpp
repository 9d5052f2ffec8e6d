#include "ui/papers/setup_block.h"

#include "ui/papers/paper_words.h"
#include "ui/words/cutting_steps.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QStringList>

namespace riband::ui {
namespace {

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

QString millimetres(double value, int decimals) {
    return PaperWords::tr("%1 mm").arg(QLocale{}.toString(value, 'f', decimals));
}

/// A figure with what it is above and a remark below.
struct Figure {
    QString name, value, remark;
};

void paintFigure(QPainter& painter, const QRectF& area, const Figure& figure) {
    painter.setPen(Look::paper().ink2);
    painter.setFont(paperFont(11));
    paintFitted(painter, area, Qt::AlignLeft | Qt::AlignTop, figure.name, 9);
    paintFitted(painter, area, Qt::AlignLeft | Qt::AlignBottom, figure.remark, 9);
    painter.setPen(Look::paper().ink);
    painter.setFont(paperFont(17, QFont::DemiBold));
    paintFitted(painter, area, Qt::AlignLeft | Qt::AlignVCenter, figure.value);
}

Figure shaftFigure(const cutting::SetUp& setUp, const cutting::Cutter& cutter) {
    if (setUp.shaft >= cutter.shafts.size()) return {PaperWords::tr("shaft"), "—", {}};
    const cutting::Shaft& shaft = cutter.shafts[setUp.shaft];
    const QLocale locale;
    return {PaperWords::tr("shaft"), text(shaft.name),
            PaperWords::tr("Ø %1 and %2 mm")
                .arg(locale.toString(shaft.diameterDriven), locale.toString(shaft.diameterTension))};
}

/// Just taut: the length is kept by the cords; the tension is closed by feel, never computed.
Figure distanceFigure(const cutting::SetUp& setUp) {
    const int decimals = setUp.approximate ? 0 : 1;
    const QString value = millimetres(setUp.centreDistance, decimals);
    return {PaperWords::tr("distance of shafts"),
            setUp.approximate ? PaperWords::tr("about %1").arg(value) : value,
            PaperWords::tr("± %1, just taut, no tension").arg(QLocale{}.toString(setUp.doubt, 'f', 1))};
}

std::vector<Figure> figuresOf(const shop::BenchMounting& mounting) {
    const cutting::Cutter& cutter = mounting.cutter.cutter;
    std::vector<Figure> figures;
    if (mounting.setUp) figures = {shaftFigure(*mounting.setUp, cutter), distanceFigure(*mounting.setUp)};
    figures.push_back(
        {PaperWords::tr("sleeve to shaft edge"), millimetres(cutter.gap, 0), PaperWords::tr("leave free")});
    figures.push_back({PaperWords::tr("trim first"), shown(mounting.mounting.trim),
                       PaperWords::tr("then zero the display")});
    return figures;
}

Block figuresRow(std::vector<Figure> figures) {
    return {56, [figures = std::move(figures)](QPainter& painter, const QRectF& area) {
                const double wide = area.width() / static_cast<double>(figures.size());
                for (std::size_t i = 0; i < figures.size(); ++i)
                    paintFigure(painter,
                                {area.left() + static_cast<double>(i) * wide, area.top() + 2, wide - 10, 50},
                                figures[i]);
            }};
}

Block warningRow(const QString& words, double width) {
    constexpr double Sign = 26;
    const QFont font = paperFont(14, QFont::Bold);
    return {wrappedHeight(font, words, width - Sign) + 6, [=](QPainter& painter, const QRectF& area) {
                paintWarningSign(painter, area.topLeft() + QPointF{0, 3}, 16);
                painter.setFont(font);
                paintWrapped(painter, area.adjusted(Sign, 3, 0, 0), words);
            }};
}

Block ticksRow(QStringList words) {
    return {22, [words = std::move(words)](QPainter& painter, const QRectF& area) {
                const double wide = area.width() / static_cast<double>(words.size());
                painter.setFont(paperFont(12));
                for (qsizetype i = 0; i < words.size(); ++i)
                    paintTick(
                        painter,
                        {area.left() + static_cast<double>(i) * wide, area.top(), wide - 8, area.height()},
                        words[i]);
            }};
}

} // namespace

void addSetUp(std::vector<Block>& rows, const shop::BenchMounting& mounting, double width) {
    const cutting::Cutter& cutter = mounting.cutter.cutter;
    for (const Warning& warning : warningsOf(mounting))
        rows.push_back(warningRow(warning.words, width));
    rows.push_back(figuresRow(figuresOf(mounting)));
    rows.push_back(ticksRow({PaperWords::tr("right piece: code and belt read"),
                             PaperWords::tr("%1 free at the shaft edge").arg(millimetres(cutter.gap, 0)),
                             PaperWords::tr("sleeve runs true")}));
    rows.push_back(
        ticksRow({PaperWords::tr("blade just marks the shaft"), PaperWords::tr("trimmed, display zeroed"),
                  PaperWords::tr("first belt measured")}));
}

Block cautionsBlock(double width) {
    QStringList sentences;
    for (const QString& sentence : cautions())
        sentences << sentence;
    const QString words = sentences.join(QLatin1Char(' '));
    const QFont font = paperFont(12);
    const double height = wrappedHeight(font, words, width - 62);
    return {height + 28, [=](QPainter& painter, const QRectF& area) {
                const QRectF frame = area.adjusted(.5, 4, -.5, -8);
                painter.setPen(QPen{Look::paper().ink, 1.2});
                painter.setBrush(Qt::NoBrush);
                painter.drawRoundedRect(frame, 4, 4);
                paintWarningSign(painter, {frame.left() + 12, frame.center().y() - 13}, 26);
                painter.setFont(font);
                paintWrapped(painter, frame.adjusted(52, 8, -8, -8), words);
            }};
}

} // namespace riband::ui
