#include "core/shop/reports/accuracy.h"
#include "core/shop/reports/shrinkage.h"
#include "ui/review/report_view.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>
#include <cstdlib>

namespace riband::ui {

namespace {

using shop::AccuracyRow;
using shop::Period;
using shop::Sees;
using shop::ShrinkageRow;
using Part = BandPicture::Part;

constexpr std::size_t mostBars = 12;

QString widthOf(Unit unit, std::int64_t count) {
    const QString sign = count < 0 ? QString::fromUtf8("−") : QString{};
    return sign + shown(Extent::of(unit, std::abs(count)));
}

/// Lost is warm; what turned out to be more than the book is kept.
BarRows lossBars(const std::vector<ShrinkageRow>& rows, Unit unit, const QString& head,
                 const Currency& currency, Sees sees) {
    BarRows bars{{}, head, Words::tr("Counting found nothing of them.")};
    for (const ShrinkageRow& row : rows) {
        if (row.unit != unit || bars.rows.size() == mostBars) continue;
        QString figure = widthOf(unit, row.lost);
        if (sees == Sees::Cost) figure += QStringLiteral("   ") + shown(row.cost, currency);
        QString remark = Words::tr("settled: %1").arg(row.settled);
        if (row.sold != 0)
            remark += QStringLiteral(", ") + Words::tr("sold after all: %1").arg(widthOf(unit, row.sold));
        bars.rows.push_back({row.group.empty() ? Words::tr("no place") : groupWord(row.group),
                             static_cast<double>(std::abs(row.lost)), figure, remark,
                             row.lost > 0 ? Part::Lost : Part::Kept});
    }
    return bars;
}

/// As long as many were wrong, the worst first.
BarRows accuracyBars(const std::vector<AccuracyRow>& rows, const QString& head, const QString& unnamed) {
    BarRows bars{{}, head, Words::tr("Nothing was counted.")};
    for (const AccuracyRow& row : rows) {
        const auto share = row.share();
        if (!share || bars.rows.size() == mostBars) continue;
        QString name = row.group.empty() ? unnamed : QString::fromStdString(row.group);
        if (!row.month.empty()) name += QLatin1Char(' ') + QString::fromStdString(row.month);
        const std::int64_t all = row.counted + row.missing;
        QString remark = Words::tr("%1 of %2 right", "pieces").arg(row.right).arg(all);
        if (row.missing > 0) remark += QStringLiteral(", ") + Words::tr("missing: %1").arg(row.missing);
        bars.rows.push_back(
            {name, static_cast<double>(all - row.right), shownPercent(*share), remark, Part::Lost});
    }
    return bars;
}

/// The rows of several tables in one, what each is by in a first column.
void append(shop::ReportTable& all, const char* kind, shop::ReportTable part) {
    if (all.columns.empty()) {
        all.columns = part.columns;
        all.columns.insert(all.columns.begin(), "kind");
    }
    for (auto& row : part.rows) {
        row.insert(row.begin(), kind);
        all.rows.push_back(std::move(row));
    }
}

} // namespace

ReportView shrinkageView(const shop::Shop& shop, const Period& period) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const auto causes = shop::shrinkage(shop, period, shop::ShrinkageBy::Cause);
    const auto belts = shop::shrinkage(shop, period, shop::ShrinkageBy::Belt);
    const auto places = shop::shrinkage(shop, period, shop::ShrinkageBy::Place);
    const ShrinkageRow toothed = shop::totalOf(causes, Unit::Micrometre);
    const ShrinkageRow ribbed = shop::totalOf(causes, Unit::Rib);
    ReportView view;
    view.headline = Words::tr("Counting found lost: %1").arg(widthOf(Unit::Micrometre, toothed.lost));
    if (ribbed.settled > 0)
        view.headline += Words::tr(" and %1", "ribs").arg(widthOf(Unit::Rib, ribbed.lost));
    if (sees == Sees::Cost)
        view.headline += Words::tr(", that cost %1").arg(shown(toothed.cost + ribbed.cost, currency));
    for (const Unit unit : {Unit::Micrometre, Unit::Rib}) {
        if (unit == Unit::Rib && ribbed.settled == 0) continue;
        const bool ribs = unit == Unit::Rib;
        view.charts.push_back(chartOf(lossBars(
            causes, unit, ribs ? Words::tr("Causes, ribbed") : Words::tr("Causes"), currency, sees)));
        view.charts.push_back(chartOf(
            lossBars(belts, unit, ribs ? Words::tr("Belts, ribbed") : Words::tr("Belts"), currency, sees)));
        view.charts.push_back(chartOf(lossBars(
            places, unit, ribs ? Words::tr("Places, ribbed") : Words::tr("Places"), currency, sees)));
    }
    append(view.table, "cause", shop::tableOf(causes, currency, sees));
    append(view.table, "belt", shop::tableOf(belts, currency, sees));
    append(view.table, "place", shop::tableOf(places, currency, sees));
    view.remarks << Words::tr(
        "Differences settled in the period and not taken back. Less than the book = more + "
        "sold after all + lost.");
    return view;
}

ReportView accuracyView(const shop::Shop& shop, const Period& period) {
    using By = shop::AccuracyBy;
    const Sees sees = shop::seenBy(shop);
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const auto all = shop::accuracy(shop, period, By::All);
    const auto places = shop::accuracy(shop, period, By::Place);
    const auto belts = shop::accuracy(shop, period, By::Belt);
    const auto people = shop::accuracy(shop, period, By::Person);
    const shop::ProvedShare proved = shop::provedShare(shop, period.until);
    ReportView view;
    const auto share = all.empty() ? std::nullopt : all.front().share();
    view.headline = share
                        ? Words::tr("The book was right for %1 of what was counted").arg(shownPercent(*share))
                        : Words::tr("Nothing was counted");
    const auto part = [](double of, double whole) { return whole > 0 ? of / whole : 0; };
    view.remarks << Words::tr("Proved within %1 days: %2 of %3 pieces, %4.")
                        .arg(proved.days)
                        .arg(proved.proved)
                        .arg(proved.pieces)
                        .arg(shownPercent(
                            part(static_cast<double>(proved.proved), static_cast<double>(proved.pieces))));
    if (sees == Sees::Cost)
        view.remarks << Words::tr("Of the rack's cost, %1 of %2 is proved.")
                            .arg(shown(proved.provedCost, currency), shown(proved.cost, currency));
    view.charts.push_back(chartOf(accuracyBars(places, Words::tr("Places"), Words::tr("no place"))));
    view.charts.push_back(chartOf(accuracyBars(belts, Words::tr("Belts"), {})));
    view.charts.push_back(chartOf(accuracyBars(
        people, Words::tr("Who cut last since the count before, by month"), Words::tr("nobody"))));
    append(view.table, "all", shop::tableOf(all));
    append(view.table, "place", shop::tableOf(places));
    append(view.table, "belt", shop::tableOf(belts));
    append(view.table, "person", shop::tableOf(people));
    append(view.table, "counter", shop::tableOf(shop::accuracy(shop, period, By::Counter)));
    view.remarks << Words::tr("A bar is as long as many were wrong. Right is what measures as the book says, "
                              "as near as the way of measuring can tell; "
                              "what was not there is wrong.");
    return view;
}

} // namespace riband::ui
