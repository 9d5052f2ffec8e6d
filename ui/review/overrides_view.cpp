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
    BarRows bars{{}, head, {}};
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
    BarRows bars{{}, head, {}};
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

namespace {

/// What people said in words of their own, the newest first: as long as it was expected to cost or save.
BarRows wordBars(const shop::Shop& shop, const shop::OverrideReport& report, const Currency& currency,
                 Sees sees) {
    BarRows bars{{}, Words::tr("In their own words"), {}};
    const store::People people{shop.connection};
    for (auto advice = report.departures.rbegin(); advice != report.departures.rend(); ++advice) {
        if (advice->overrideWords.empty() || bars.rows.size() == mostBelts) continue;
        const bool isKnown = sees == Sees::Cost && shop::isExpected(*advice);
        const Money extra = advice->taken.costMoney - advice->suggested.costMoney;
        bars.rows.push_back({Words::tr("“%1”").arg(text(advice->overrideWords)),
                             isKnown ? static_cast<double>(extra.inMinor()) : 0,
                             isKnown ? shownSum(extra, currency) : QString{},
                             Words::tr("%1, %2, %3", "reason, person, day")
                                 .arg(nameOf(shop::reasonOf(*advice)),
                                      text(people.at(advice->person).initials), shown(dayOf(advice->at)))});
    }
    return bars;
}

/// A head without anything under it is not shown.
void addChart(ReportView& view, const BarRows& bars) {
    if (!bars.rows.empty()) view.charts.push_back(chartOf(bars));
}

/// The rows of the report, and below them each decision that departed.
shop::ReportTable withDecisions(const shop::Shop& shop, const shop::ReportTable& rows,
                                const shop::OverrideReport& report, const shop::BothWays* played,
                                const Currency& currency, Sees sees) {
    shop::ReportTable sums = rows;
    sums.columns.erase(sums.columns.begin());
    std::vector<std::pair<std::string, shop::ReportTable>> all;
    for (std::vector<std::string> row : rows.rows) {
        const std::string kind = row.front();
        row.erase(row.begin());
        if (all.empty() || all.back().first != kind) all.push_back({kind, {sums.columns, {}}});
        all.back().second.rows.push_back(std::move(row));
    }
    all.push_back({"order", shop::decisionsOf(shop, report.departures, played, currency, sees)});
    return shop::joined(all);
}

} // namespace

ReportView overridesView(const shop::Shop& shop, const shop::Period& period) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const shop::OverrideReport report = shop::overrides(shop, period);
    ReportView view;
    view.table = withDecisions(shop, shop::tableOf(report, currency, sees), report, nullptr, currency, sees);
    view.behind = behindOverrides(period, view.table, nullptr, sees);
    view.headline = followedWords(report);
    if (report.all.departures == 0) return view;
    addChart(view, expectedBars(report.people, Words::tr("People"), currency, sees));
    addChart(view, expectedBars(report.reasons, Words::tr("Reasons given"), currency, sees));
    addChart(view, wordBars(shop, report, currency, sees));
    view.remarks << Words::tr("Expected on the day of each order; F5 replays them both ways with the "
                              "same demand and tells what they came to.");
    return view;
}

ReportView playedView(const shop::Shop& shop, const shop::Period& period, const foresight::Work& work) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const shop::OverrideReport report = shop::overrides(shop, period);
    const auto played = std::make_shared<const shop::BothWays>(shop::bothWays(shop, period, work));
    ReportView view;
    view.table = withDecisions(shop, shop::tableOf(report, *played, currency, sees), report, played.get(),
                               currency, sees);
    view.behind = behindOverrides(period, view.table, played, sees);
    view.headline = verdictOf(report, *played, currency, sees);
    if (report.all.departures == 0) return view;
    addChart(view, playedBars(played->people, Words::tr("People"), currency, sees));
    addChart(view, playedBars(played->reasons, Words::tr("Reasons given"), currency, sees));
    addChart(view, playedBars(played->belts, Words::tr("Belts"), currency, sees));
    addChart(view, wordBars(shop, report, currency, sees));
    view.remarks << Words::tr(
        "Each belt's orders gone through again from the first one that was done otherwise: "
        "as it was, and as the suggestions would have gone on. What is left on the rack "
        "counts on both sides at hindsight's prices. ± is half of a 95 % interval.");
    if (played->left > 0)
        view.remarks
            << Words::tr("%1 could not be replayed: the book keeps too little of them.").arg(played->left);
    view.remarks << followedWords(report);
    return view;
}

} // namespace riband::ui
