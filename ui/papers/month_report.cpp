#include "ui/papers/month_report.h"

#include "ui/drawing/fates.h"
#include "ui/papers/leaves.h"
#include "ui/papers/month_tables.h"
#include "ui/papers/paper_words.h"
#include "ui/words/compared_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

using shop::GroupBy;
using shop::Sees;
using shop::WasteRow;

Block flowBlock(const WasteRow& row, double width) {
    const FlowPicture picture = flowOf(row, nullptr);
    return {heightOf(picture, width) + 12, [picture](QPainter& painter, const QRectF& area) {
                paintFlow(painter, area, picture, Look::paper());
            }};
}

constexpr double trendHeight = 200;

Block trendBlock(const std::vector<shop::TrendPoint>& points, Unit unit) {
    return {trendHeight, [picture = trendOf(points, unit)](QPainter& painter, const QRectF& area) {
                paintTrend(painter, area, picture, Look::paper());
            }};
}

/// One alone takes the whole width.
Block sideBySide(std::vector<Block> blocks) {
    return blocks.size() == 1 ? std::move(blocks.front())
                              : beside(std::move(blocks[0]), std::move(blocks[1]));
}

/// A head with its table, which stay together.
Block part(const QString& head, const PaperTable& table) {
    std::vector<Block> blocks{headBlock(head)};
    for (Block& block : tableBlocks(table))
        blocks.push_back(std::move(block));
    return stacked(std::move(blocks));
}

bool anyLost(const std::vector<shop::TrendPoint>& points) {
    return std::any_of(points.begin(), points.end(),
                       [](const auto& point) { return point.lost.has_value(); });
}

/// Where the width went: the first page.
void addPictures(std::vector<Block>& blocks, const MonthReport& report, double width) {
    std::vector<const WasteRow*> used;
    for (const WasteRow& row : report.all)
        if (row.width.used() > 0) used.push_back(&row);
    std::vector<Block> flows, trends;
    for (const WasteRow* row : used)
        flows.push_back(flowBlock(*row, used.size() == 1 ? width : width / 2));
    if (!flows.empty()) {
        blocks.push_back(headBlock(PaperWords::tr("Where it went")));
        blocks.push_back(sideBySide(std::move(flows)));
    }
    for (const Unit unit : {Unit::Micrometre, Unit::Rib})
        if (const auto& points = report.trends.of(unit); anyLost(points))
            trends.push_back(trendBlock(points, unit));
    if (trends.empty()) return;
    blocks.push_back(headBlock(PaperWords::tr("News or chance, month by month")));
    blocks.push_back(sideBySide(std::move(trends)));
}

/// What should go, and what the rest brought: the last page.
void addStockAndMargin(std::vector<Block>& blocks, const MonthReport& report, const Currency& currency) {
    if (const PaperTable clear = clearTable(report, currency); !clear.rows.empty())
        blocks.push_back(part(PaperWords::tr("To clear: dead, or enough for more than two years"), clear));
    if (report.sees != Sees::Cost || report.margin.belts.empty()) return;
    blocks.push_back(part(PaperWords::tr("Sold below what the width cost"), belowTable(report, currency)));
    blocks.push_back(
        beside(part(PaperWords::tr("Margin by belt"),
                    marginTable(report.margin.belts, PaperWords::tr("Belt"), currency)),
               part(PaperWords::tr("Margin by customer"),
                    marginTable(report.margin.customers, PaperWords::tr("Customer"), currency))));
}

store::Sale salesOf(const std::vector<shop::MarginRow>& belts) {
    store::Sale sum;
    for (const shop::MarginRow& row : belts) {
        sum.revenue = sum.revenue + row.sale.revenue;
        sum.cost = sum.cost + row.sale.cost;
        sum.uncosted = sum.uncosted + row.sale.uncosted;
    }
    return sum;
}

} // namespace

MonthReport gatherMonth(const shop::Shop& shop, const shop::Period& period, Sees sees) {
    MonthReport report{.sees = sees, .printed = dayOf(shop.now())};
    const auto look = [&shop, sees](const shop::Period& span) {
        return MonthReport::Span{span, shop::toldOf(shop, span), shop::movedByUnit(shop, span),
                                 sees == Sees::Cost
                                     ? store::Revenue{shop.connection, span.from, span.until}.total()
                                     : store::Sale{}};
    };
    auto groups = shop::waste(shop, period, {GroupBy::All, GroupBy::Belt});
    report.all = std::move(groups[0]);
    report.belts = shop::compared(shop, period, {GroupBy::Belt}, {std::move(groups[1])});
    std::sort(report.all.begin(), report.all.end(),
              [](const WasteRow& a, const WasteRow& b) { return a.unit < b.unit; });
    report.before = look(shop::before(period));
    report.yearBefore = look(shop::yearBefore(period));
    report.trends = shop::trends(shop, period.until, 13);
    report.stock = shop::stockReport(shop, dayOf(period.until - std::chrono::milliseconds{1}));
    if (sees == Sees::Cost) report.margin = shop::marginReport(shop, period);
    report.now = {period, shop::Told::Whole, {}, salesOf(report.margin.belts)};
    for (const WasteRow& row : report.all)
        report.now.moved[row.unit] = {row.width, row.money};
    return report;
}

int paintMonthReport(QPagedPaintDevice& device, const MonthReport& report, const store::ShopSettings& shop) {
    const Currency& currency = shop.prices.currency;
    const QStringList underTitle =
        QStringList{PaperWords::tr("From the width ledger; printed %1, money in %2")
                        .arg(shown(report.printed), text(std::string{currency.code()}))} +
        comparedWords(report.belts, report.printed).mid(1);
    std::vector<Block> blocks{
        titleBlock(text(shop.name),
                   PaperWords::tr("Width and money, %1").arg(shownPeriod(report.now.period, report.printed)),
                   underTitle)};
    blocks.push_back(part(PaperWords::tr("In short"), comparison(report, currency)));
    addPictures(blocks, report, leafWidth(device));
    blocks.push_back(part(PaperWords::tr("The book, figure by figure"), equation(report, currency)));
    if (const PaperTable belts = beltsTable(report, currency); !belts.rows.empty())
        blocks.push_back(part(PaperWords::tr("Belts that lost most"), belts));
    blocks.push_back(beside(part(PaperWords::tr("The rack by age, today"), agesTable(report, currency)),
                            part(PaperWords::tr("and by how long it lasts"), coversTable(report, currency)),
                            .43));
    addStockAndMargin(blocks, report, currency);
    return paintLeaves(device, blocks, text(shop.name));
}

} // namespace riband::ui
