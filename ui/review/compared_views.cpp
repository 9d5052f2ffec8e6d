#include "ui/review/report_view.h"
#include "ui/words/compared_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"

#include <algorithm>

namespace riband::ui {

namespace {

using shop::ComparedRow;
using shop::GroupBy;
using shop::Period;
using shop::Sees;

constexpr std::size_t mostBars = 12;

std::int64_t lostOf(const shop::WasteRow& row, Sees sees) {
    return sees == Sees::Cost ? row.money.lost() : row.width.lost();
}

/// Those that lost most, each with the share that it lost now and then.
BarRows barsOf(std::vector<ComparedRow> rows, const QString& head, const std::string& kind, Sees sees) {
    std::stable_sort(rows.begin(), rows.end(), [sees](const ComparedRow& a, const ComparedRow& b) {
        return lostOf(a.now, sees) > lostOf(b.now, sees);
    });
    BarRows bars{{}, head, Words::tr("Nothing was used.")};
    for (const ComparedRow& row : rows) {
        const auto yield = row.now.width.yield();
        if (!yield || bars.rows.size() == mostBars) continue;
        bars.rows.push_back({row.now.group.empty() ? namelessGroup(kind) : groupWord(row.now.group),
                             1 - *yield, shownPercent(1 - *yield), lostThen(row)});
    }
    return bars;
}

struct Group {
    GroupBy by;
    const char* kind; ///< in the file
    QString name;
};

ReportView viewOf(const shop::Shop& shop, const Period& period, const std::vector<Group>& groups) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    std::vector<GroupBy> by;
    for (const Group& group : groups)
        by.push_back(group.by);
    const shop::Compared compared = shop::compared(shop, period, by, shop::waste(shop, period, by));
    ReportView view;
    std::vector<std::pair<std::string, shop::ReportTable>> tables;
    std::vector<ComparedRow> all;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        const auto& rows = compared.groups[i];
        tables.emplace_back(groups[i].kind, shop::shortTableOf(rows, currency, sees));
        all.insert(all.end(), rows.begin(), rows.end());
        view.charts.push_back(chartOf(
            barsOf(rows, Words::tr("%1: lost of what was used").arg(groups[i].name), groups[i].kind, sees)));
    }
    view.table = groups.size() == 1 ? std::move(tables.front().second) : shop::joined(tables);
    view.behind = behindCompared(all, compared);
    const QStringList words = comparedWords(compared, dayOf(shop.now()));
    view.headline = words.front();
    view.remarks = words.mid(1);
    return view;
}

} // namespace

ReportView comparedBelts(const shop::Shop& shop, const Period& period) {
    return viewOf(shop, period, {{GroupBy::Belt, "belt", Words::tr("Belts")}});
}

ReportView comparedGroups(const shop::Shop& shop, const Period& period) {
    return viewOf(shop, period,
                  {{GroupBy::Family, "family", Words::tr("Families")},
                   {GroupBy::Profile, "profile", Words::tr("Profiles")},
                   {GroupBy::Person, "person", Words::tr("People")},
                   {GroupBy::Cutter, "cutter", Words::tr("Cutters")},
                   {GroupBy::Place, "place", Words::tr("Places")},
                   {GroupBy::Cause, "cause", Words::tr("Causes")}});
}

} // namespace riband::ui
