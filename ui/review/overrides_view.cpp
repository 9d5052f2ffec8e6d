#include "ui/review/report_view.h"
#include "ui/words/override_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

using shop::BothWaysRow;
using shop::OverrideRow;
using shop::Sees;

constexpr std::size_t mostBelts = 12;

QString expectedWords(const OverrideRow& row, const Currency& currency) {
    return Words::tr("%1 ± %2").arg(shownSum(row.extra, currency), shownSum(row.uncertain, currency));
}

QString followedWords(const OverrideRow& row) {
    return Words::tr("%1 of %2 done otherwise").arg(row.overridden).arg(row.suggested);
}

QString nameOf(const std::string& name) { return name.empty() ? namelessGroup("reason") : groupWord(name); }

BarRows expectedBars(const std::vector<OverrideRow>& rows, const QString& head, const Currency& currency,
                     Sees sees) {
    BarRows bars{{}, head, Words::tr("Every suggestion was followed.")};
    for (const OverrideRow& row : rows) {
        if (row.overridden == 0) continue;
        const bool money = sees == Sees::Cost;
        bars.rows.push_back({nameOf(row.name),
                             static_cast<double>(money ? row.extra.inMinor() : row.overridden),
                             money ? expectedWords(row, currency) : QString{}, followedWords(row)});
    }
    return bars;
}

BarRows playedBars(const std::vector<BothWaysRow>& rows, const QString& head, const Currency& currency,
                   Sees sees) {
    BarRows bars{{}, head, Words::tr("Every suggestion was followed.")};
    for (const BothWaysRow& row : rows) {
        if (bars.rows.size() == mostBelts) break;
        const QString cost = costOf(row, currency, sees);
        bars.rows.push_back({nameOf(row.name), row.width,
                             row.width < 0 ? Words::tr("saved %1").arg(cost) : cost,
                             Words::tr("%1 replayed").arg(row.overridden)});
    }
    return bars;
}

void addCounts(const shop::OverrideReport& report, ReportView& view) {
    view.remarks << Words::tr("Suggestions: %1, done otherwise: %2; belts for the shelf not wanted: %3.")
                        .arg(report.all.suggested)
                        .arg(report.all.overridden)
                        .arg(report.shelfDeclined);
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
    view.headline =
        report.all.overridden == 0 ? Words::tr("Every suggestion was followed.") : followedWords(report.all);
    view.charts.push_back(chartOf(expectedBars(report.people, Words::tr("People"), currency, sees)));
    view.charts.push_back(chartOf(expectedBars(report.reasons, Words::tr("Reasons given"), currency, sees)));
    if (report.all.overridden > 0)
        view.remarks << Words::tr("Expected on the day of each order; F5 replays them both ways with the "
                                  "same demand and tells what they came to.");
    addCounts(report, view);
    return view;
}

ReportView playedView(const shop::Shop& shop, const shop::Period& period, const foresight::Work& work) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const shop::OverrideReport report = shop::overrides(shop, period);
    const shop::BothWays played = shop::bothWays(shop, period, work);
    ReportView view;
    view.table = shop::tableOf(report, played, currency, sees);
    view.headline = verdictOf(report, played, currency, sees);
    if (report.all.suggested == 0) return view;
    view.charts.push_back(chartOf(playedBars(played.people, Words::tr("People"), currency, sees)));
    view.charts.push_back(chartOf(playedBars(played.reasons, Words::tr("Reasons given"), currency, sees)));
    view.charts.push_back(chartOf(playedBars(played.belts, Words::tr("Belts"), currency, sees)));
    view.remarks << Words::tr(
        "Each belt's orders gone through again from the first one that was done otherwise: "
        "as it was, and as the suggestions would have gone on. What is left on the rack "
        "counts on both sides at hindsight's prices. ± is half of a 95 % interval.");
    if (played.left > 0)
        view.remarks
            << Words::tr("%1 could not be replayed: the book keeps too little of them.").arg(played.left);
    addCounts(report, view);
    return view;
}

} // namespace riband::ui
