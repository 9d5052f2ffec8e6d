#include "ui/papers/mounting_block.h"

#include "ui/drawing/pictures.h"
#include "ui/drawing/tooth.h"
#include "ui/papers/paper_words.h"
#include "ui/papers/setup_block.h"
#include "ui/words/cutting_steps.h"
#include "ui/words/words.h"

#include <algorithm>
#include <optional>

namespace riband::ui {
namespace {

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

/// "H8M 1200 · rubber, glass cord · 128.5 mm"
QString pieceLine(const shop::BenchMounting& mounting) {
    QStringList parts{text(mounting.belt.designation)};
    QStringList build;
    if (!mounting.belt.body.empty()) build << text(mounting.belt.body);
    if (!mounting.belt.cord.empty()) build << PaperWords::tr("%1 cord").arg(text(mounting.belt.cord));
    if (!build.isEmpty()) parts << build.join(", ");
    parts << shown(mounting.piece.extent);
    return parts.join(" · ");
}

QString pieceName(const shop::BenchMounting& mounting) {
    const QString code = text(mounting.piece.code);
    return mounting.piece.kind == cutting::PieceKind::Sleeve ? PaperWords::tr("Sleeve %1").arg(code)
                                                             : PaperWords::tr("Remnant %1").arg(code);
}

void paintPlace(QPainter& painter, const QRectF& area, const QString& place) {
    painter.setPen(Look::paper().ink2);
    painter.setFont(paperFont(11));
    paintElided(painter, area, Qt::AlignRight | Qt::AlignTop, PaperWords::tr("place"));
    painter.setPen(Look::paper().ink);
    painter.setFont(paperFont(22, QFont::Bold));
    paintFitted(painter, area, Qt::AlignRight | Qt::AlignBottom, place.isEmpty() ? QString{"—"} : place);
}

/// Between the name of the piece and its place.
QRectF toothBox(const QRectF& inside) { return {inside.right() - 262, inside.top() + 20, 122, 26}; }

/// Names the cutter where there is a choice.
QString countWords(const shop::BenchMounting& mounting, std::size_t number, std::size_t of,
                   const store::ShopSettings& shop) {
    const QString count = PaperWords::tr("mounting %1 of %2").arg(number).arg(of);
    return shop.cutters.size() < 2
               ? count
               : PaperWords::tr("on %1 · %2", "cutter, count").arg(text(mounting.cutter.cutter.name), count);
}

Block headRow(const shop::BenchMounting& mounting, const belt::Profile* profile, const QString& count) {
    const auto tooth = profile ? std::optional{*profile} : std::nullopt;
    return {64, [=](QPainter& painter, const QRectF& area) {
                painter.setPen(QPen{Look::paper().ink, 2});
                painter.drawLine(area.topLeft() + QPointF{0, 8}, area.topRight() + QPointF{0, 8});
                const QRectF inside = area.adjusted(0, 14, 0, -4);
                painter.setPen(Look::paper().ink2);
                painter.setFont(paperFont(11));
                paintElided(painter, inside.adjusted(0, 0, -140, 0), Qt::AlignRight | Qt::AlignTop, count);
                if (tooth) paintTeeth(painter, toothBox(inside), *tooth, 5, Look::paper());
                painter.setPen(Look::paper().ink);
                painter.setFont(paperFont(20, QFont::Bold));
                paintFitted(painter, inside.adjusted(0, 0, -275, -18), Qt::AlignLeft | Qt::AlignVCenter,
                            pieceName(mounting));
                painter.setFont(paperFont(13));
                paintFitted(painter, inside.adjusted(0, 26, -275, 0), Qt::AlignLeft | Qt::AlignVCenter,
                            pieceLine(mounting));
                paintPlace(painter, inside.adjusted(inside.width() - 130, 0, 0, 0),
                           text(mounting.piece.place));
            }};
}

Block bandRow(const shop::BenchMounting& mounting) {
    return {122, [picture = pictureOf(mounting)](QPainter& painter, const QRectF& area) {
                paintBand(painter, area.adjusted(0, 6, 0, -6), picture, Look::paper(), BandSize::Large);
            }};
}

/// One belt to be cut: where the blade stands, and for whom.
struct StopCell {
    QString each, display, whom;
};

/// Where the ticket is for several orders a line alone says nothing.
QString whoFor(const store::TicketCut& cut, const std::vector<store::Order>& orders) {
    if (!cut.line) return PaperWords::tr("shelf");
    for (const store::Order& order : orders)
        for (const auto& line : order.lines) {
            if (line.id != *cut.line) continue;
            const QString position = PaperWords::tr("line %1").arg(line.position);
            return orders.size() > 1 ? text(order.code) + QLatin1Char(' ') + position : position;
        }
    return {};
}

/// Ribbed: in ribs and, since the display shows millimetres, in these.
QString displayText(Extent cumulative, const belt::Profile* profile) {
    if (cumulative.unit() == Unit::Micrometre || !profile) return shown(cumulative);
    const Width pitch = Width::micrometres(profile->pitch.inNanometres() / 1000);
    return PaperWords::tr("%1 = %2").arg(shownNumber(cumulative), shown(cumulative.shownWidth(pitch)));
}

std::vector<StopCell> stopCells(const shop::BenchMounting& mounting, const std::vector<store::Order>& orders,
                                const belt::Profile* profile) {
    std::vector<StopCell> cells;
    std::size_t stop = 0;
    for (const auto& cut : mounting.mounting.cuts)
        for (std::int64_t i = 0; i < cut.count && stop < mounting.stops.size(); ++i, ++stop)
            cells.push_back({shownNumber(mounting.stops[stop]),
                             displayText(mounting.cumulative[stop], profile), whoFor(cut, orders)});
    return cells;
}

QFont eachFont() { return paperFont(16, QFont::Bold); }
QFont displayFont() { return paperFont(13); }
QFont whomFont() { return paperFont(11); }

/// How wide tick and own width, display, and for whom stand in every cell: none is ever shortened.
struct StopWidths {
    double each = 0, display = 0, whom = 0;

    static StopWidths of(const std::vector<StopCell>& cells) {
        constexpr double Tick = 20, Gap = 10;
        StopWidths widths;
        for (const StopCell& cell : cells) {
            widths.each = std::max(widths.each, Tick + textWidth(eachFont(), cell.each) + Gap);
            widths.display = std::max(widths.display, textWidth(displayFont(), cell.display) + Gap);
            widths.whom = std::max(widths.whom, textWidth(whomFont(), cell.whom) + 2 * Gap);
        }
        return widths;
    }
    double whole() const { return each + display + whom; }
};

void paintStop(QPainter& painter, const QRectF& area, const StopCell& cell, const StopWidths& widths) {
    const auto part = [&](double from, double wide) {
        return QRectF{area.left() + from, area.top(), wide, area.height()};
    };
    painter.setPen(Look::paper().ink);
    painter.setFont(eachFont());
    paintTick(painter, part(0, widths.each), cell.each);
    painter.setFont(displayFont());
    paintFitted(painter, part(widths.each, widths.display), Qt::AlignLeft | Qt::AlignVCenter, cell.display);
    painter.setPen(Look::paper().ink2);
    painter.setFont(whomFont());
    paintFitted(painter, part(widths.each + widths.display, widths.whom), Qt::AlignLeft | Qt::AlignVCenter,
                cell.whom, 9);
}

Block stopsHead(Unit unit) {
    return {34, [unit](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(13, QFont::DemiBold));
                paintElided(painter, area.adjusted(0, 2, 0, 0), Qt::AlignLeft | Qt::AlignTop,
                            PaperWords::tr("Stops, from the trimmed edge"));
                painter.setFont(paperFont(11));
                painter.setPen(Look::paper().ink2);
                const QString bold =
                    unit == Unit::Rib
                        ? PaperWords::tr(
                              "bold: ribs of the belt, display zeroed after each · behind it: ribs "
                              "and display if it is not zeroed")
                        : PaperWords::tr("bold: the belt's own width in mm, display zeroed after each · "
                                         "behind it: display if it is not zeroed");
                paintFitted(painter, area, Qt::AlignLeft | Qt::AlignBottom, bold, 10);
            }};
}

Block stopsRow(std::vector<StopCell> cells, const StopWidths& widths, std::size_t columns, double height) {
    return {height, [=](QPainter& painter, const QRectF& area) {
                const double wide = area.width() / static_cast<double>(columns);
                for (std::size_t i = 0; i < cells.size(); ++i)
                    paintStop(painter,
                              {area.left() + static_cast<double>(i) * wide, area.top(), wide, area.height()},
                              cells[i], widths);
            }};
}

void addStops(std::vector<Block>& rows, const std::vector<StopCell>& cells, Unit unit, double width) {
    rows.push_back(stopsHead(unit));
    const StopWidths widths = StopWidths::of(cells);
    const auto fit = static_cast<std::size_t>(width / std::max(widths.whole(), 1.0));
    const std::size_t columns = std::clamp<std::size_t>(fit, 1, 4);
    const std::size_t lines = (cells.size() + columns - 1) / columns;
    const double height = lines > 20 ? 18 : 24; // a sleeve full of narrow belts still fits one page
    for (std::size_t i = 0; i < cells.size(); i += columns)
        rows.push_back(
            stopsRow({cells.begin() + static_cast<std::ptrdiff_t>(i),
                      cells.begin() + static_cast<std::ptrdiff_t>(std::min(i + columns, cells.size()))},
                     widths, columns, height));
}

/// What each of the widths may differ by.
Block toleranceRow(const shop::BenchMounting& mounting, double width) {
    const QString each = tolerancesOf(mounting);
    const QString allowed = mounting.piece.extent.unit() == Unit::Rib ? PaperWords::tr("whole ribs")
                            : each.isEmpty()                          ? PaperWords::tr("no standard gives it")
                                                                      : each;
    const QString words = PaperWords::tr("Width may differ: %1").arg(allowed);
    const QFont font = paperFont(13, QFont::DemiBold);
    return {wrappedHeight(font, words, width) + 6, [=](QPainter& painter, const QRectF& area) {
                painter.setPen(Look::paper().ink);
                painter.setFont(font);
                paintWrapped(painter, area.adjusted(0, 2, 0, 0), words);
            }};
}

QString leftWords(const shop::BenchMounting& mounting) {
    const QString left = shown(mounting.mounting.left);
    if (mounting.mounting.left.isNone()) return PaperWords::tr("Nothing is left.");
    if (!mounting.mounting.restKept) return PaperWords::tr("Left %1: scrap.").arg(left);
    return PaperWords::tr("Left %1: back to the rack with a new label.").arg(left);
}

Block leftRow(const shop::BenchMounting& mounting) {
    return {58, [mounting](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(15, QFont::DemiBold));
                paintFitted(painter, area.adjusted(0, 6, 0, 0), Qt::AlignLeft | Qt::AlignTop,
                            leftWords(mounting));
                painter.setFont(paperFont(12));
                const double third = area.width() / 3;
                const QRectF low(area.left(), area.top() + 28, third - 16, 22);
                paintBlank(painter, low, PaperWords::tr("really left"));
                paintBlank(painter, low.translated(third, 0), PaperWords::tr("put at"));
                paintBlank(painter, low.translated(2 * third, 0), PaperWords::tr("cut by"));
            }};
}

} // namespace

Block mountingBlock(const shop::BenchMounting& mounting, const std::vector<store::Order>& orders,
                    std::size_t number, std::size_t of, const store::ShopSettings& shop,
                    const belt::Tables& tables, double width) {
    const belt::Profile* profile = tables.profile(mounting.belt.belt.profile);
    std::vector<Block> rows{headRow(mounting, profile, countWords(mounting, number, of, shop))};
    addSetUp(rows, mounting, width);
    rows.push_back(bandRow(mounting));
    rows.push_back(toleranceRow(mounting, width));
    addStops(rows, stopCells(mounting, orders, profile), mounting.piece.extent.unit(), width);
    rows.push_back(leftRow(mounting));
    return stacked(std::move(rows));
}

} // namespace riband::ui
