#include "ui/review/report_view.h"
#include "ui/words/override_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

using shop::BothWaysRow;
using shop::OverrideRow;
using shop::Sees;

constexpr std::size_t mostBelts = 12;

QString expectedWords(const OverrideRow& row, const Currency& currency) {
    if (row.expected == 0) return Words::tr("no expectation that day");
    return Words::tr("%1 ± %2").arg(shownSum(row.extra, currency), shownSum(row.uncertain, currency));
}

/// "2 of 124 not followed, shelf refused 1 of 40"
QString rowWords(const OverrideRow& row) {
    const QString words = Words::tr("%1 of %2 not followed").arg(row.departures).arg(row.suggested);
    if (row.shelfRefused == 0) return words;
    return Words::tr("%1, shelf refused %2 of %3").arg(words).arg(row.shelfRefused).arg(row.shelfOffered);
}

QString nameOf(const std::string& name) { return name.empty() ? namelessGroup("reason") : groupWord(name); }

BarRows expectedBars(const std::vector<OverrideRow>& rows, const QString& head, const Currency& currency,
                     Sees sees) {
    BarRows bars{{}, head, Words::tr("Every suggestion was followed.")};
    // Without any expectation the bars are as long as it was often.
    const bool money =
        sees == Sees::Cost &&
        std::any_of(rows.begin(), rows.end(), [](const OverrideRow& row) { return row.expected > 0; });
    for (const OverrideRow& row : rows) {
        if (row.departures == 0) continue;
        bars.rows.push_back({nameOf(row.name),
                             static_cast<double>(money ? row.extra.inMinor() : row.departures),
                             sees == Sees::Cost ? expectedWords(row, currency) : QString{}, rowWords(row)});
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
                             Words::tr("%1 replayed").arg(row.departures)});
    }
    return bars;
}

} // namespace

ReportView overridesView(const shop::Shop& shop, const shop::Period& period) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const shop::OverrideReport report = shop::overrides(shop, period);
    ReportView view;
    view.table = shop::tableOf(report, currency, sees);
    view.headline = followedWords(report);
    if (report.all.suggested == 0) return view;
    view.charts.push_back(chartOf(expectedBars(report.people, Words::tr("People"), currency, sees)));
    view.charts.push_back(chartOf(expectedBars(report.reasons, Words::tr("Reasons given"), currency, sees)));
    if (report.all.departures > 0)
        view.remarks << Words::tr("Expected on the day of each order; F5 replays them both ways with the "
                                  "same demand and tells what they came to.");
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
    view.remarks << followedWords(report);
    return view;
}

} // namespace riband::ui
