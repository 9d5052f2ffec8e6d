#include "ui/review/report_view.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

using shop::OverrideRow;
using shop::Sees;

QString extraWords(const OverrideRow& row, const Currency& currency) {
    return Words::tr("%1 ± %2").arg(shownSum(row.extra, currency), shownSum(row.uncertain, currency));
}

QString followedWords(const OverrideRow& row) {
    return Words::tr("%1 of %2 done otherwise").arg(row.overridden).arg(row.suggested);
}

BarRows barsOf(const std::vector<OverrideRow>& rows, const QString& head, const Currency& currency,
               Sees sees) {
    BarRows bars{{}, head, Words::tr("Every suggestion was followed.")};
    for (const OverrideRow& row : rows) {
        if (row.overridden == 0) continue;
        const bool money = sees == Sees::Cost;
        bars.rows.push_back({row.name.empty() ? Words::tr("no reason given") : groupWord(row.name),
                             static_cast<double>(money ? row.extra.inMinor() : row.overridden),
                             money ? extraWords(row, currency) : QString{}, followedWords(row)});
    }
    return bars;
}

QString verdict(const OverrideRow& all, const Currency& currency) {
    if (all.overridden == 0) return Words::tr("Every suggestion was followed.");
    if (!all.told())
        return Words::tr("Doing otherwise cost %1: no more than chance").arg(extraWords(all, currency));
    return all.extra > Money::minor(0)
               ? Words::tr("Doing otherwise is expected to cost %1").arg(extraWords(all, currency))
               : Words::tr("Doing otherwise is expected to have saved %1")
                     .arg(Words::tr("%1 ± %2").arg(shownSum(-all.extra, currency),
                                                   shownSum(all.uncertain, currency)));
}

} // namespace

ReportView overridesView(const shop::Shop& shop, const shop::Period& period) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const shop::OverrideReport report = shop::overrides(shop, period);
    ReportView view;
    view.table = shop::tableOf(report, currency, sees);
    if (report.all.suggested == 0) {
        view.headline = Words::tr("No order of this period kept what was suggested for it.");
        return view;
    }
    view.headline = sees == Sees::Cost ? verdict(report.all, currency) : followedWords(report.all);
    view.charts.push_back(chartOf(barsOf(report.people, Words::tr("People"), currency, sees)));
    view.charts.push_back(chartOf(barsOf(report.reasons, Words::tr("Reasons given"), currency, sees)));
    view.remarks << Words::tr(
        "Expected on the day of each order. ± is 1.96 standard deviations of such a sum; it "
        "tells how much the decisions differ, not how wrong the outlook may be.");
    view.remarks << Words::tr("Suggestions: %1, done otherwise: %2; belts for the shelf not wanted: %3.")
                        .arg(report.all.suggested)
                        .arg(report.all.overridden)
                        .arg(report.shelfDeclined);
    return view;
}

} // namespace riband::ui
