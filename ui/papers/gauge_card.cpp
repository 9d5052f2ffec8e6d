#include "ui/papers/gauge_card.h"

#include "ui/drawing/tooth.h"
#include "ui/papers/leaves.h"
#include "ui/papers/paper_words.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QPagedPaintDevice>

namespace riband::ui {
namespace {

constexpr double perMm = 96 / 25.4;
constexpr double margin = 10;
constexpr double headHeight = 15; ///< title, what to do, the check line
constexpr double footHeight = 5;
constexpr double familyHeight = 6.5;
constexpr double captionHeight = 4.2;
constexpr double belowTeeth = .8; ///< between the tips and the rule
constexpr double longMark = 3.2, middleMark = 2.2, shortMark = 1.2;
constexpr double numberHeight = 3.4;
constexpr double rowGap = 2.6;
constexpr double hair = .12; ///< mm: thickness of a mark

double teethHeight(const belt::Profile& profile) { return toothOutline(profile, 1).boundingRect().height(); }

QString number(double value) { return QLocale{}.toString(value, 'g', 6); }

QString captionOf(const belt::Profile& profile) {
    QStringList parts{QString::fromStdString(profile.name),
                      PaperWords::tr("pitch %1 mm").arg(number(profile.pitch.inMillimetres()))};
    if (profile.form.height) parts << PaperWords::tr("tooth %1").arg(number(*profile.form.height));
    if (profile.form.total) parts << PaperWords::tr("in all %1").arg(number(*profile.form.total));
    parts << QString::fromStdString(profile.standard);
    if (toothIsApproximate(profile)) parts << PaperWords::tr("form about so");
    return parts.join(QStringLiteral(" · "));
}

QString overWords(const belt::Profile& profile, int pitches) {
    const QString millimetres = number(pitches * profile.pitch.inMillimetres());
    return profile.ribbed() ? PaperWords::tr("%1 ribs = %2 mm").arg(pitches).arg(millimetres)
                            : PaperWords::tr("%1 teeth = %2 mm").arg(pitches).arg(millimetres);
}

double markLength(int tooth) {
    if (tooth % 10 == 0) return longMark;
    return tooth % 5 == 0 ? middleMark : shortMark;
}

/// A line of one thickness, from point to point.
void drawLine(QPainter& painter, const QPointF& from, const QPointF& to, double thickness) {
    painter.setPen(QPen{Look::paper().ink, thickness, Qt::SolidLine, Qt::FlatCap});
    painter.drawLine(from, to);
}

/// How far each ten teeth are apart if the words for them are to fit between two marks.
constexpr double wideEnough = 30;

/// Left of its mark, so that nothing stands past the end of the rule; a short rule has its words behind it.
void paintNumber(QPainter& painter, const QPointF& mark, double scale, bool behind, const QString& words) {
    const double width = 40 * scale, gap = .8 * scale;
    const QPointF corner = mark + QPointF{behind ? gap : -width - gap, (longMark - 1) * scale};
    painter.setPen(Look::paper().ink);
    painter.setFont(paperFont(std::max(6, static_cast<int>(2.5 * scale))));
    paintElided(painter, {corner, QSizeF{width, numberHeight * scale}},
                Qt::AlignTop | (behind ? Qt::AlignLeft : Qt::AlignRight), words);
}

void paintRule(QPainter& painter, const QPointF& start, const belt::Profile& profile, int pitches,
               double scale) {
    const double pitch = profile.pitch.inMillimetres() * scale;
    const bool wide = pitches < 10 || 10 * pitch >= wideEnough * scale;
    drawLine(painter, start, start + QPointF{pitches * pitch, 0}, hair * scale);
    for (int tooth = 0; tooth <= pitches; ++tooth) {
        const QPointF mark = start + QPointF{tooth * pitch, 0};
        const bool last = tooth == pitches;
        drawLine(painter, mark, mark + QPointF{0, (last ? longMark : markLength(tooth)) * scale},
                 hair * scale);
        if (tooth > 0 && (tooth % 10 == 0 || last))
            paintNumber(painter, mark, scale, last && !wide,
                        last || wide ? overWords(profile, tooth) : QString::number(tooth));
    }
}

void paintCheckLine(QPainter& painter, const QPointF& start) {
    const double length = GaugeCard::checkLength * perMm;
    drawLine(painter, start, start + QPointF{length, 0}, .2 * perMm);
    for (int millimetre = 0; millimetre <= 100; millimetre += 10) {
        const double down = (millimetre % 50 == 0 ? 2.5 : 1.4) * perMm;
        const QPointF mark = start + QPointF{millimetre * perMm, 0};
        drawLine(painter, mark, mark + QPointF{0, down}, hair * perMm);
    }
    painter.setFont(paperFont(10));
    paintElided(painter, {start + QPointF{0, -4.6 * perMm}, QSizeF{length, 4 * perMm}}, Qt::AlignLeft,
                PaperWords::tr("100 mm: measure it. If it is not, the card is not true; print at 100 %."));
}

void paintHead(QPainter& painter, const GaugeCard& card) {
    const double left = margin * perMm;
    const double width = (card.checkLine.x() - 2 * margin) * perMm;
    painter.setFont(paperFont(17, QFont::DemiBold));
    paintFitted(painter, {left, margin * perMm, width, 7 * perMm}, Qt::AlignLeft,
                PaperWords::tr("Gauge card 1:1"));
    painter.setFont(paperFont(10));
    paintWrapped(painter, {left, (margin + 6) * perMm, width, 9 * perMm},
                 PaperWords::tr(
                     "Lay the belt flat on its row, teeth up: the right one stays in step to the last mark. "
                     "Then compare the form from the side."));
    paintCheckLine(painter, card.checkLine * perMm);
}

void paintFoot(QPainter& painter, const GaugeCard& card, int page) {
    painter.setPen(Look::paper().ink2);
    painter.setFont(paperFont(10));
    const QRectF line{margin * perMm, (card.size.height() - margin - footHeight) * perMm,
                      (card.size.width() - 2 * margin) * perMm, footHeight * perMm};
    paintElided(painter, line, Qt::AlignRight | Qt::AlignBottom,
                PaperWords::tr("page %1 of %2").arg(page + 1).arg(card.pages));
}

void paintFamily(QPainter& painter, const GaugeRow& row) {
    painter.setPen(Look::paper().ink);
    painter.setFont(paperFont(13, QFont::DemiBold));
    const QRectF line{row.topLeft.x() * perMm, (row.topLeft.y() - familyHeight) * perMm, 180 * perMm,
                      (familyHeight - 1) * perMm};
    paintElided(painter, line, Qt::AlignLeft | Qt::AlignBottom, say(row.profile->family));
}

} // namespace

double GaugeRow::left() const { return topLeft.x(); }
double GaugeRow::rule() const { return topLeft.y() + captionHeight + teethHeight(*profile) + belowTeeth; }
double GaugeRow::span() const { return pitches * profile->pitch.inMillimetres(); }
double GaugeRow::height() const { return gaugeRowHeight(*profile); }

double gaugeRowHeight(const belt::Profile& profile) {
    return captionHeight + teethHeight(profile) + belowTeeth + longMark + numberHeight - 1 + rowGap;
}

int gaugePitches(const belt::Profile& profile, double width) {
    for (const int pitches : {20, 10, 5})
        if (pitches * profile.pitch.inMillimetres() <= width) return pitches;
    return 2;
}

GaugeCard layOutGaugeCard(const belt::Tables& tables, const QSizeF& paper) {
    GaugeCard card{
        QSizeF{std::max(paper.width(), paper.height()), std::min(paper.width(), paper.height())}, {}, 1, {}};
    card.checkLine = {card.size.width() - margin - GaugeCard::checkLength, margin + 6};
    const double top = margin + headHeight, bottom = card.size.height() - margin - footHeight;
    double y = top;
    const belt::Profile* before = nullptr;
    for (const belt::Profile& profile : tables.profiles()) {
        if (profile.doubleSided) continue;
        const bool begins = !before || before->family != profile.family;
        const double needed = gaugeRowHeight(profile) + (begins ? familyHeight : 0);
        if (y + needed > bottom) {
            ++card.pages;
            y = top;
        }
        y += begins ? familyHeight : 0;
        card.rows.push_back({&profile,
                             gaugePitches(profile, card.size.width() - 2 * margin),
                             card.pages - 1,
                             {margin, y},
                             begins});
        y += gaugeRowHeight(profile);
        before = &profile;
    }
    return card;
}

void paintGaugeRow(QPainter& painter, const QPointF& topLeft, const belt::Profile& profile, int pitches,
                   double scale) {
    const double height = teethHeight(profile) * scale;
    const double span = pitches * profile.pitch.inMillimetres() * scale;
    painter.setPen(Look::paper().ink);
    painter.setFont(paperFont(std::max(7, static_cast<int>(2.9 * scale)), QFont::DemiBold));
    paintElided(painter, {topLeft, QSizeF{180 * scale, captionHeight * scale}}, Qt::AlignLeft,
                captionOf(profile));
    const QPointF teeth = topLeft + QPointF{0, captionHeight * scale};
    paintTeeth(painter, {teeth, QSizeF{span, height}}, profile, pitches, Look::paper());
    paintRule(painter, teeth + QPointF{0, height + belowTeeth * scale}, profile, pitches, scale);
}

int paintGaugeCard(QPagedPaintDevice& device, const belt::Tables& tables) {
    device.setPageOrientation(QPageLayout::Landscape);
    PaperPainter paper{device};
    const GaugeCard card = layOutGaugeCard(tables, paper.size() / perMm);
    int page = -1;
    for (const GaugeRow& row : card.rows) {
        if (row.page != page) {
            if (page >= 0) paper.nextPage();
            page = row.page;
            paintHead(paper.painter(), card);
            paintFoot(paper.painter(), card, page);
        }
        if (row.beginsFamily) paintFamily(paper.painter(), row);
        paintGaugeRow(paper.painter(), row.topLeft * perMm, *row.profile, row.pitches, perMm);
    }
    return card.pages;
}

} // namespace riband::ui
