#include "ui/papers/month_report.h"

#include "ui/drawing/fates.h"
#include "ui/papers/leaves.h"
#include "ui/papers/paper_table.h"
#include "ui/papers/paper_words.h"
#include "ui/words/report_words.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

using shop::GroupBy;
using shop::Sees;
using shop::WasteRow;

constexpr std::size_t mostBelts = 24, mostStock = 18, mostMargin = 18, mostBelow = 12;

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

Date lastDay(const shop::Period& period) { return dayOf(period.until - std::chrono::milliseconds{1}); }

QString percent(const std::optional<double>& share) {
    return share ? shownPercent(*share) : QStringLiteral("–");
}

/// The equation of the book, one line a figure: it must hold to the micrometre and the cent.
PaperTable equation(const WasteRow& row, const Currency& currency, Sees sees) {
    PaperTable table{{{QString{}, 3}, {PaperWords::tr("Width"), 2, true}}, {}};
    if (sees == Sees::Cost) table.columns.push_back({PaperWords::tr("Cost"), 2, true});
    const auto add = [&](const QString& name, std::int64_t width, std::int64_t money, bool sum = false) {
        PaperTable::Row line{{name, shownSum(row.unit, width)}, sum};
        if (sees == Sees::Cost) line.cells << shownSum(Money::minor(money), currency);
        table.rows.push_back(line);
    };
    for (const auto& figure : shop::figures<std::int64_t>) {
        const bool in = figure.value == &shop::Balance<std::int64_t>::opening ||
                        figure.value == &shop::Balance<std::int64_t>::bought ||
                        figure.value == &shop::Balance<std::int64_t>::found;
        if (figure.value == &shop::Balance<std::int64_t>::sold)
            add(PaperWords::tr("Together"), row.width.in(), row.money.in(), true);
        if (in || row.width.*figure.value != 0 || row.money.*figure.value != 0)
            add(columnWord(figure.name), row.width.*figure.value, row.money.*figure.value);
    }
    add(PaperWords::tr("Together"), row.width.out(), row.money.out(), true);
    return table;
}

const WasteRow* ofUnit(const std::vector<WasteRow>& rows, Unit unit) {
    const auto at =
        std::find_if(rows.begin(), rows.end(), [unit](const WasteRow& row) { return row.unit == unit; });
    return at == rows.end() ? nullptr : &*at;
}

PaperTable comparison(const MonthReport& report, Unit unit) {
    PaperTable table{{{QString{}, 3},
                      {PaperWords::tr("Sold"), 2, true},
                      {PaperWords::tr("Lost"), 2, true},
                      {PaperWords::tr("Sold of what was used"), 2, true}},
                     {}};
    const auto add = [&](const QString& name, const shop::Balance<std::int64_t>& width) {
        table.rows.push_back(
            {{name, shownSum(unit, width.sold), shownSum(unit, width.lost()), percent(width.yield())}});
    };
    const auto of = [unit](const std::map<Unit, shop::Balance<std::int64_t>>& moved) {
        const auto at = moved.find(unit);
        return at == moved.end() ? shop::Balance<std::int64_t>{} : at->second;
    };
    add(PaperWords::tr("This period"), shop::totalOf(report.all, unit).width);
    add(PaperWords::tr("The period before"), of(report.before));
    add(PaperWords::tr("The same days a year earlier"), of(report.yearBefore));
    return table;
}

PaperTable beltsTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Belt"), 4},
                      {PaperWords::tr("Bought"), 2, true},
                      {PaperWords::tr("Sold"), 2, true},
                      {PaperWords::tr("Lost"), 2, true},
                      {PaperWords::tr("Sold, %"), 2, true}},
                     {}};
    if (report.sees == Sees::Cost) table.columns.push_back({PaperWords::tr("Cost lost"), 2, true});
    for (const WasteRow& row : report.belts) {
        if (table.rows.size() == mostBelts || row.width.used() == 0) break;
        PaperTable::Row line{{text(row.group), shownSum(row.unit, row.width.bought),
                              shownSum(row.unit, row.width.sold), shownSum(row.unit, row.width.lost()),
                              percent(row.width.yield())}};
        if (report.sees == Sees::Cost) line.cells << shownSum(Money::minor(row.money.lost()), currency);
        table.rows.push_back(line);
    }
    return table;
}

PaperTable agesTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Age of the rubber"), 4}, {PaperWords::tr("Pieces"), 2, true}}, {}};
    if (report.sees == Sees::Cost) table.columns.push_back({PaperWords::tr("Cost"), 2, true});
    std::int64_t pieces = 0;
    for (const shop::AgeRow& age : report.stock.ages) {
        const QString name = age.belowDays
                                 ? PaperWords::tr("%1 to %2 days").arg(age.fromDays).arg(*age.belowDays - 1)
                                 : PaperWords::tr("%1 days and more").arg(age.fromDays);
        PaperTable::Row line{{name, QString::number(age.pieces)}};
        if (report.sees == Sees::Cost) line.cells << shown(age.cost, currency);
        table.rows.push_back(line);
        pieces += age.pieces;
    }
    PaperTable::Row sum{{PaperWords::tr("Together"), QString::number(pieces)}, true};
    if (report.sees == Sees::Cost) sum.cells << shown(report.stock.cost, currency);
    table.rows.push_back(sum);
    return table;
}

PaperTable clearTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Belt"), 4},
                      {PaperWords::tr("On rack and shelf"), 2, true},
                      {PaperWords::tr("Sold in a year"), 2, true},
                      {PaperWords::tr("Lasts, days"), 2, true}},
                     {}};
    if (report.sees == Sees::Cost) {
        table.columns.push_back({PaperWords::tr("Cost"), 2, true});
        table.columns.push_back({PaperWords::tr("Worth"), 2, true});
    }
    for (const shop::StockRow& row : report.stock.belts) {
        if (row.pace != shop::StockRow::Pace::Dead && row.pace != shop::StockRow::Pace::Slow) continue;
        if (table.rows.size() == mostStock) break;
        PaperTable::Row line{{text(row.designation), shownSum(row.unit, row.width),
                              shownSum(row.unit, row.soldInYear),
                              row.coverDays ? QString::number(*row.coverDays) : QStringLiteral("–")}};
        if (report.sees == Sees::Cost)
            line.cells << shown(row.cost, currency)
                       << (row.worth ? shown(*row.worth, currency) : QStringLiteral("–"));
        table.rows.push_back(line);
    }
    return table;
}

/// Those that brought most come first.
PaperTable marginTable(const std::vector<shop::MarginRow>& rows, const QString& name,
                       const Currency& currency) {
    PaperTable table{{{name, 4},
                      {PaperWords::tr("Sold for"), 2, true},
                      {PaperWords::tr("Width cost"), 2, true},
                      {PaperWords::tr("Margin"), 2, true},
                      {PaperWords::tr("%"), 1, true}},
                     {}};
    for (auto row = rows.rbegin(); row != rows.rend() && table.rows.size() < mostMargin; ++row) {
        const auto share = row->share();
        table.rows.push_back({{row->name.empty() ? PaperWords::tr("walk-ins") : text(row->name),
                               shown(row->sale.revenue, currency), shown(row->sale.cost, currency),
                               shown(row->margin(), currency),
                               share ? shownTenths(static_cast<double>(share->count()) / 10) : QString{}}});
    }
    return table;
}

PaperTable belowTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Order"), 2},
                      {PaperWords::tr("Day"), 2},
                      {PaperWords::tr("Customer"), 3},
                      {PaperWords::tr("Sold for"), 2, true},
                      {PaperWords::tr("Width cost"), 2, true}},
                     {}};
    for (const store::BelowCost& line : report.margin.below) {
        if (table.rows.size() == mostBelow) break;
        table.rows.push_back({{text(line.order), shown(dayOf(line.at)), text(line.customer),
                               shown(line.revenue, currency), shown(line.cost, currency)}});
    }
    return table;
}

Block flowBlock(const WasteRow& row) {
    const FlowPicture picture = flowOf(row, nullptr);
    return {190 + 12.0 * static_cast<double>(picture.streams.size()),
            [picture](QPainter& painter, const QRectF& area) {
                paintFlow(painter, area, picture, Look::paper());
            }};
}

Block trendBlock(const std::vector<shop::TrendPoint>& points) {
    return {220, [picture = trendOf(points, Unit::Micrometre)](QPainter& painter, const QRectF& area) {
                paintTrend(painter, area, picture, Look::paper());
            }};
}

class Pages {
public:
    void head(const QString& words) { add({headBlock(words)}); }
    void table(const QString& head, const PaperTable& table) {
        if (table.rows.empty()) return;
        add({headBlock(head)});
        add(tableBlocks(table));
    }
    void add(std::vector<Block> blocks) {
        blocks_.insert(blocks_.end(), std::make_move_iterator(blocks.begin()),
                       std::make_move_iterator(blocks.end()));
    }
    const std::vector<Block>& blocks() const { return blocks_; }

private:
    std::vector<Block> blocks_;
};

QString unitName(Unit unit) {
    return unit == Unit::Rib ? PaperWords::tr("Ribbed belts, in ribs")
                             : PaperWords::tr("Toothed belts, in mm");
}

} // namespace

MonthReport gatherMonth(const shop::Shop& shop, const shop::Period& period, Sees sees) {
    MonthReport report{period, sees, dayOf(shop.now()), {}, {}, {}, {}, {}, {}, {}};
    auto groups = shop::waste(shop, period, {GroupBy::All, GroupBy::Belt});
    report.all = std::move(groups[0]);
    report.belts = std::move(groups[1]);
    report.before = shop::movedByUnit(shop, shop::before(period));
    report.yearBefore = shop::movedByUnit(shop, shop::yearBefore(period));
    report.trend = shop::trends(shop, period.until, 13).toothed;
    report.stock = shop::stockReport(shop, lastDay(period));
    if (sees == Sees::Cost) report.margin = shop::marginReport(shop, period);
    return report;
}

int paintMonthReport(QPagedPaintDevice& device, const MonthReport& report, const store::ShopSettings& shop) {
    const Currency& currency = shop.prices.currency;
    Pages pages;
    pages.add({titleBlock(text(shop.name),
                          PaperWords::tr("Width and money, %1 to %2")
                              .arg(shown(dayOf(report.period.from)), shown(lastDay(report.period))),
                          PaperWords::tr("From the width ledger; %1 in %2")
                              .arg(PaperWords::tr("printed %1").arg(shown(report.printed)),
                                   text(std::string{currency.code()})))});
    for (const Unit unit : {Unit::Micrometre, Unit::Rib}) {
        const WasteRow* row = ofUnit(report.all, unit);
        if (!row) continue;
        pages.head(unitName(unit));
        if (row->width.used() > 0) pages.add({flowBlock(*row)});
        pages.add(tableBlocks(equation(*row, currency, report.sees)));
        pages.add(tableBlocks(comparison(report, unit)));
    }
    pages.head(PaperWords::tr("News or chance: toothed belts, month by month"));
    pages.add({trendBlock(report.trend)});
    pages.table(PaperWords::tr("Belts that lost most"), beltsTable(report, currency));
    pages.table(PaperWords::tr("The rack by age, on the day of printing"), agesTable(report, currency));
    pages.table(PaperWords::tr("To clear: dead, or enough for more than two years"),
                clearTable(report, currency));
    if (report.sees == Sees::Cost) {
        pages.table(PaperWords::tr("Margin by belt, without tax"),
                    marginTable(report.margin.belts, PaperWords::tr("Belt"), currency));
        pages.table(PaperWords::tr("Margin by customer"),
                    marginTable(report.margin.customers, PaperWords::tr("Customer"), currency));
        pages.table(PaperWords::tr("Sold below what the width cost"), belowTable(report, currency));
    }
    return paintLeaves(device, pages.blocks(), text(shop.name));
}

} // namespace riband::ui
