#include "core/measure/text.h"
#include "ui/review/report_view.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

using shop::Period;
using shop::Sees;
using shop::StockRow;
using Part = BandPicture::Part;

constexpr std::size_t mostBars = 12;
constexpr Permille usualAim{400};

Currency currencyOf(const shop::Shop& shop) {
    return store::Settings{shop.connection}.read().prices.currency;
}

/// The last day of the period that has begun.
Date lastDay(const shop::Shop& shop, const Period& period) {
    return std::min(dayOf(period.until - std::chrono::milliseconds{1}), dayOf(shop.now()));
}

QString ageWords(const shop::AgeRow& row) {
    return row.belowDays ? Words::tr("%1 to %2 days").arg(row.fromDays).arg(*row.belowDays - 1)
                         : Words::tr("%1 days and more").arg(row.fromDays);
}

BarRows ageBars(const shop::StockReport& report, const Currency& currency, Sees sees) {
    BarRows bars{{}, Words::tr("How old the rubber is"), Words::tr("The rack is empty.")};
    for (const shop::AgeRow& row : report.ages)
        bars.rows.push_back(
            {ageWords(row),
             sees == Sees::Cost ? static_cast<double>(row.cost.inMinor()) : static_cast<double>(row.pieces),
             sees == Sees::Cost ? shownSum(row.cost, currency) : QString{},
             Words::tr("pieces: %1").arg(row.pieces), Part::Kept});
    return bars;
}

QString coverWords(const shop::CoverRow& row) {
    if (!row.fromDays) return Words::tr("none sold in a year");
    return row.belowDays ? Words::tr("%1 to %2 days").arg(*row.fromDays).arg(*row.belowDays - 1)
                         : Words::tr("%1 days and more").arg(*row.fromDays);
}

BarRows coverBars(const shop::StockReport& report, const Currency& currency, Sees sees) {
    BarRows bars{
        {}, Words::tr("How long it lasts at the pace of the last year"), Words::tr("The rack is empty.")};
    for (const shop::CoverRow& row : report.covers) {
        const bool money = sees == Sees::Cost;
        bars.rows.push_back({coverWords(row), static_cast<double>(money ? row.cost.inMinor() : row.pieces),
                             money ? Words::tr("%1   worth %2", "cost, worth")
                                         .arg(shownSum(row.cost, currency), shownSum(row.worth, currency))
                                   : QString{},
                             Words::tr("belts: %1").arg(row.belts), row.fromDays ? Part::Kept : Part::Lost});
    }
    return bars;
}

QString coverWords(const StockRow& row) {
    if (!row.coverDays) return Words::tr("none sold in a year");
    return Words::tr("lasts %1 days").arg(*row.coverDays);
}

BarRows clearList(const shop::StockReport& report, const Currency& currency, Sees sees) {
    BarRows bars{{},
                 Words::tr("To clear: nothing sold in a year, or enough for more than two"),
                 Words::tr("Everything on the rack moves.")};
    for (const StockRow& row : report.belts) {
        if (row.pace != StockRow::Pace::Dead && row.pace != StockRow::Pace::Slow) continue;
        if (bars.rows.size() == mostBars) break;
        QString figures = shownSum(row.unit, row.width);
        if (sees == Sees::Cost) figures += QStringLiteral("   ") + shownSum(row.cost, currency);
        if (sees == Sees::Cost && row.worth)
            figures += QStringLiteral("   ") + Words::tr("worth %1").arg(shownSum(*row.worth, currency));
        bars.rows.push_back(
            {QString::fromStdString(row.designation),
             sees == Sees::Cost ? static_cast<double>(row.cost.inMinor()) : static_cast<double>(row.width),
             figures, coverWords(row), row.pace == StockRow::Pace::Dead ? Part::Lost : Part::Kept});
    }
    return bars;
}

BarRows marginBars(const std::vector<shop::MarginRow>& rows, const QString& head, const Currency& currency) {
    BarRows bars{{}, head, Words::tr("Nothing was sold.")};
    std::vector<shop::MarginRow> best{rows.rbegin(), rows.rend()};
    for (const shop::MarginRow& row : best) {
        if (bars.rows.size() == mostBars) break;
        const auto share = row.share();
        QString remark = share ? shownPercent(static_cast<double>(share->count()) / 1000) : QString{};
        if (row.margin() < Money::minor(0)) remark += QLatin1Char(' ') + Words::tr("below cost");
        if (row.sale.uncosted > Money::minor(0) && row.sale.costKnown())
            remark +=
                QLatin1Char(' ') + Words::tr("cost unknown of %1").arg(shownSum(row.sale.uncosted, currency));
        bars.rows.push_back(
            {row.name.empty() ? Words::tr("walk-ins") : QString::fromStdString(row.name),
             static_cast<double>(row.margin().inMinor()),
             row.sale.costKnown() ? shownSum(row.margin(), currency) : Words::tr("cost unknown"), remark,
             Part::Belt});
    }
    return bars;
}

BarRows belowBars(const shop::MarginReport& report, const Currency& currency) {
    BarRows bars{
        {}, Words::tr("List prices below what the belt really costs (with its waste)"), Words::tr("None.")};
    for (const shop::MarginRow& row : report.belts) {
        if (!row.listBelowCost() || bars.rows.size() == mostBars) continue;
        const auto proposed = row.proposed(usualAim, currency);
        bars.rows.push_back(
            {QString::fromStdString(row.name),
             static_cast<double>(row.fullCost->inThousandths() - row.price.inThousandths()),
             Words::tr("price %1, costs %2")
                 .arg(QString::fromStdString(printWidthPrice(row.price, currency)),
                      QString::fromStdString(printWidthPrice(*row.fullCost, currency))),
             proposed
                 ? Words::tr("propose %1").arg(QString::fromStdString(printWidthPrice(*proposed, currency)))
                 : QString{},
             Part::Trim});
    }
    return bars;
}

} // namespace

ReportView stockView(const shop::Shop& shop, const Period& period) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = currencyOf(shop);
    const shop::StockReport report = shop::stockReport(shop, lastDay(shop, period));
    ReportView view;
    Money dead = Money::minor(0);
    int belts = 0;
    for (const StockRow& row : report.belts)
        if (row.pace == StockRow::Pace::Dead) {
            dead = dead + row.cost;
            ++belts;
        }
    view.headline = Words::tr("Belts of which nothing was sold in a year: %1").arg(belts);
    if (sees == Sees::Cost)
        view.headline += Words::tr(", %1 of the %2 on the rack")
                             .arg(shownSum(dead, currency), shownSum(report.cost, currency));
    view.charts.push_back(chartOf(clearList(report, currency, sees)));
    view.charts.push_back(chartOf(coverBars(report, currency, sees)));
    view.charts.push_back(chartOf(ageBars(report, currency, sees)));
    view.table = shop::joined({{"belt", shop::tableOf(report, currency, sees)},
                               {"age", shop::agesOf(report, currency, sees)},
                               {"cover", shop::coversOf(report, currency, sees)}});
    view.behind = behindStock(report, lastDay(shop, period), view.table, sees);
    if (sees == Sees::Cost && report.costOfKnown > Money::minor(0))
        view.remarks << Words::tr(
                            "What cost %1 is worth %2: what can be cut from it and sold within two years, at "
                            "the price of a sleeve.")
                            .arg(shownSum(report.costOfKnown, currency), shownSum(report.worth, currency));
    if (sees == Sees::Cost && report.uncosted > 0)
        view.remarks << Words::tr("Pieces that came in without a cost: %1. They count as nothing in what the "
                                  "rack cost.")
                            .arg(report.uncosted);
    view.remarks << Words::tr("The rack as it is now; sales of the 365 days up to the end of the period.");
    return view;
}

ReportView marginView(const shop::Shop& shop, const Period& period) {
    const Currency currency = currencyOf(shop);
    const shop::MarginReport report = shop::marginReport(shop, period);
    Money revenue = Money::minor(0), cost = Money::minor(0), uncosted = Money::minor(0);
    for (const shop::MarginRow& row : report.belts) {
        uncosted = uncosted + row.sale.uncosted;
        revenue = revenue + row.sale.revenue;
        cost = cost + row.sale.cost;
    }
    ReportView view;
    view.headline = Words::tr("Sold for %1, width that cost %2; lines below cost: %3")
                        .arg(shownSum(revenue, currency), shownSum(cost, currency))
                        .arg(report.below.size());
    if (uncosted > Money::minor(0)) {
        view.headline += Words::tr("; cost unknown of %1").arg(shownSum(uncosted, currency));
        view.remarks << Words::tr("What was cut from pieces that came in without a cost is in no margin, "
                                  "since nobody knows what it "
                                  "cost. Goods in (F8 on the Rack) takes the cost of each; a sleeve's cost "
                                  "stands in Shop → Belts.");
    }
    view.charts.push_back(chartOf(marginBars(report.belts, Words::tr("Belts by margin"), currency)));
    view.charts.push_back(chartOf(belowBars(report, currency)));
    view.charts.push_back(chartOf(marginBars(report.customers, Words::tr("Customers by margin"), currency)));
    view.table = shop::joined({{"belt", shop::tableOf(report.belts, usualAim, currency)},
                               {"customer", shop::tableOf(report.customers, usualAim, currency)},
                               {"below cost", shop::tableOf(report.below, shop, currency)}});
    view.behind = behindMargin(report, period, view.table);
    view.remarks << Words::tr("Without tax, less the cost of the width sold; work and rent are not in it. A "
                              "proposed price leaves 40 % over the cost with waste.");
    return view;
}

ReportView dayView(const shop::Shop& shop, const Period& period) {
    const Currency currency = currencyOf(shop);
    const Date day = lastDay(shop, period);
    const shop::DayReport report = shop::dayReport(shop, day);
    ReportView view;
    view.headline = Words::tr("%1: %2 taken").arg(shown(day), shownSum(report.taken, currency));
    BarRows takings{{}, Words::tr("Takings by kind of payment"), {}};
    for (const shop::DayReport::Paid& paid : report.takings)
        takings.rows.push_back({say(paid.kind), static_cast<double>(paid.amount.inMinor()),
                                shownSum(paid.amount, currency), Words::tr("orders: %1").arg(paid.orders),
                                Part::Belt});
    view.charts.push_back(chartOf(takings));
    BarRows made{{}, Words::tr("Orders made that day, as they stand now"), Words::tr("No order was made.")};
    for (const store::OrdersMade& orders : report.made)
        made.rows.push_back({say(orders.state), static_cast<double>(orders.total.inMinor()),
                             shownSum(orders.total, currency), Words::tr("orders: %1").arg(orders.orders),
                             Part::Kept});
    view.charts.push_back(chartOf(made));
    view.table = shop::joined({{"payment", shop::takingsOf(report, currency)},
                               {"made", shop::madeOf(report, currency)},
                               {"uncollected", shop::uncollectedOf(report, day, currency)}});
    view.behind = behindDay(report, day, view.table);
    view.remarks << Words::tr(
                        "Now: %1 open tickets, %2 orders to be cut, %3 ready and not collected (the figures "
                        "list them).")
                        .arg(report.openTickets)
                        .arg(report.openOrders)
                        .arg(report.uncollected.size());
    return view;
}

} // namespace riband::ui
