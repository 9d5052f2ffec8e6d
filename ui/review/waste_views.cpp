#include "core/shop/reports/compared.h"
#include "ui/drawing/fates.h"
#include "ui/review/report_view.h"
#include "ui/words/compared_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

using shop::Balance;
using shop::GroupBy;
using shop::Period;
using shop::Sees;
using shop::WasteRow;

constexpr std::size_t mostBars = 12;

Currency currencyOf(const shop::Shop& shop) {
    return store::Settings{shop.connection}.read().prices.currency;
}

/// Costs in words for who sees them.
std::function<QString(Money)> moneyWords(const Currency& currency, Sees sees) {
    if (sees == Sees::WidthOnly) return nullptr;
    return [currency](Money money) { return shownSum(money, currency); };
}

/// "opening 1,200 + bought 4,000 + found 0 = left the rack 3,100 + closing 2,100"
QString equationOf(const WasteRow& row) {
    const auto& width = row.width;
    return Words::tr(
               "On the rack at first %1 + bought %2 + found %3 = sold %4 + onto the shelf %5 + lost %6 + "
               "on the rack at last %7")
        .arg(shownSum(row.unit, width.opening), shownSum(row.unit, width.bought),
             shownSum(row.unit, width.found), shownSum(row.unit, width.sold), shownSum(row.unit, width.ready),
             shownSum(row.unit, width.lost()), shownSum(row.unit, width.closing));
}

QString yieldWords(const Balance<std::int64_t>& balance) {
    const auto yield = balance.yield();
    return yield ? shownPercent(*yield) : Words::tr("nothing used");
}

/// The period beside the one before and the same days a year earlier.
class Compared {
public:
    Compared(const shop::Shop& shop, const Period& period, const Currency& currency, Sees sees)
        : today_{dayOf(shop.now())}, currency_{currency}, sees_{sees} {
        for (const Period& each : {period, shop::before(period), shop::yearBefore(period)}) {
            const shop::Told told = shop::toldOf(shop, each);
            spans_.push_back({each, told,
                              told == shop::Told::Nothing ? std::map<Unit, shop::Moved>{}
                                                          : shop::movedByUnit(shop, each)});
        }
    }
    BarRows bars(Unit unit) const {
        BarRows bars{{},
                     unit == Unit::Rib ? Words::tr("Ribbed belts: lost of what was used, compared")
                                       : Words::tr("Toothed belts: lost of what was used, compared"),
                     {}};
        for (const auto& [period, told, moved] : spans_) {
            if (told == shop::Told::Nothing) {
                bars.rows.push_back({shownPeriod(period, today_), 0, QString{}, untoldWords()});
                continue;
            }
            const auto at = moved.find(unit);
            const shop::Moved sums = at == moved.end() ? shop::Moved{} : at->second;
            const auto yield = sums.width.yield();
            QString words = Words::tr("sold %1, lost %2")
                                .arg(shownSum(unit, sums.width.sold), shownSum(unit, sums.width.lost()));
            if (sees_ == Sees::Cost)
                words =
                    Words::tr("%1, cost %2").arg(words, shownSum(Money::minor(sums.money.lost()), currency_));
            bars.rows.push_back({shownPeriod(period, today_), yield ? 1 - *yield : 0,
                                 yield ? shownPercent(1 - *yield) : Words::tr("nothing used"), words});
        }
        return bars;
    }

private:
    Date today_;
    Currency currency_;
    Sees sees_;
    struct Span {
        Period period;
        shop::Told told;
        std::map<Unit, shop::Moved> moved;
    };
    std::vector<Span> spans_;
};

double lostOf(const WasteRow& row, Sees sees) {
    return static_cast<double>(sees == Sees::Cost ? row.money.lost() : row.width.lost());
}

QString lostWords(const WasteRow& row, const Currency& currency, Sees sees) {
    const QString width = shownSum(row.unit, row.width.lost());
    if (sees == Sees::WidthOnly) return width;
    return width + QStringLiteral("   ") + shownSum(Money::minor(row.money.lost()), currency);
}

/// Largest first; the remark adds up what they and those above them lost.
BarRows barsOf(std::vector<WasteRow> rows, const QString& head, const std::string& kind,
               const Currency& currency, Sees sees) {
    std::stable_sort(rows.begin(), rows.end(), [sees](const WasteRow& a, const WasteRow& b) {
        return lostOf(a, sees) > lostOf(b, sees);
    });
    double all = 0, sum = 0;
    for (const WasteRow& row : rows)
        all += lostOf(row, sees);
    BarRows bars{{}, head, Words::tr("Nothing was lost.")};
    for (const WasteRow& row : rows) {
        if (bars.rows.size() == mostBars || lostOf(row, sees) <= 0) break;
        sum += lostOf(row, sees);
        bars.rows.push_back({row.group.empty() ? namelessGroup(kind) : groupWord(row.group),
                             lostOf(row, sees), lostWords(row, currency, sees), shownPercent(sum / all)});
    }
    return bars;
}

/// Rows of one kind of group among those of others: what they are stands first.
void addKind(const std::string& kind, const shop::ReportTable& table, shop::ReportTable& to) {
    to.columns = table.columns;
    to.columns.insert(to.columns.begin(), "kind");
    for (const auto& row : table.rows) {
        to.rows.push_back({kind});
        to.rows.back().insert(to.rows.back().end(), row.begin(), row.end());
    }
}

QString lostHead(const QString& by, Sees sees) {
    return sees == Sees::Cost ? Words::tr("%1: what was lost, by its cost; right: added up").arg(by)
                              : Words::tr("%1: what was lost; right: added up").arg(by);
}

} // namespace

ReportView flowView(const shop::Shop& shop, const Period& period) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = currencyOf(shop);
    auto rows = shop::waste(shop, period, GroupBy::All);
    std::sort(rows.begin(), rows.end(), [](const WasteRow& a, const WasteRow& b) { return a.unit < b.unit; });
    ReportView view;
    const auto causes = shop::waste(shop, period, GroupBy::Cause);
    view.table = shop::tableOf(causes, currency, sees);
    view.behind = behindWaste(causes);
    view.headline = Words::tr("Nothing moved in this period.");
    const Compared compared{shop, period, currency, sees};
    for (const WasteRow& row : rows) {
        if (row.width.used() != 0 || row.width.ready != 0)
            view.charts.push_back(chartOf(flowOf(row, moneyWords(currency, sees))));
        view.charts.push_back(chartOf(compared.bars(row.unit)));
        view.remarks << equationOf(row);
        view.headline = Words::tr("Sold of what was used: %1").arg(yieldWords(row.width));
    }
    if (rows.size() == 2)
        view.headline = Words::tr("Sold of what was used: %1 of the toothed belts, %2 of the ribbed ones")
                            .arg(yieldWords(shop::totalOf(rows, Unit::Micrometre).width),
                                 yieldWords(shop::totalOf(rows, Unit::Rib).width));
    return view;
}

ReportView paretoView(const shop::Shop& shop, const Period& period) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = currencyOf(shop);
    const auto rows = shop::waste(shop, period, GroupBy::Belt);
    ReportView view;
    view.table = shop::tableOf(rows, currency, sees);
    const BarRows bars = barsOf(rows, lostHead(Words::tr("Belts"), sees), "belt", currency, sees);
    view.headline = bars.rows.empty() ? Words::tr("Nothing was lost in this period.")
                                      : Words::tr("%1 loses most; the first %2 of %3 belts are %4 of it")
                                            .arg(bars.rows.front().name)
                                            .arg(bars.rows.size())
                                            .arg(rows.size())
                                            .arg(bars.rows.back().remark);
    view.charts.push_back(chartOf(bars));
    view.behind = behindWaste(rows);
    return view;
}

ReportView groupsView(const shop::Shop& shop, const Period& period) {
    const Sees sees = shop::seenBy(shop);
    const Currency currency = currencyOf(shop);
    ReportView view;
    view.headline = Words::tr("Where, by whom, and with what it was lost");
    const struct {
        const char* kind; ///< in the file
        QString name;
    } groups[] = {{"family", Words::tr("Families")}, {"profile", Words::tr("Profiles")},
                  {"person", Words::tr("People")},   {"cutter", Words::tr("Cutters")},
                  {"place", Words::tr("Places")},    {"cause", Words::tr("Causes")}};
    const auto found = shop::waste(shop, period,
                                   {GroupBy::Family, GroupBy::Profile, GroupBy::Person, GroupBy::Cutter,
                                    GroupBy::Place, GroupBy::Cause});
    std::vector<WasteRow> all;
    for (std::size_t i = 0; i < found.size(); ++i) {
        const auto& rows = found[i];
        addKind(groups[i].kind, shop::tableOf(rows, currency, sees), view.table);
        all.insert(all.end(), rows.begin(), rows.end());
        view.charts.push_back(
            chartOf(barsOf(rows, lostHead(groups[i].name, sees), groups[i].kind, currency, sees)));
    }
    view.behind = behindWaste(all);
    view.remarks << Words::tr(
        "A person's “on the rack” is what they brought to it less what they took: below "
        "zero for who cuts what others receive. A cutter's is what was cut there; by hand is what "
        "was bought, sold from the shelf, thrown away or corrected. A place is where the piece lies now.");
    return view;
}

ReportView trendView(const shop::Shop& shop, const Period& period) {
    const shop::Trends trends = shop::trends(shop, period.until, 13);
    ReportView view;
    std::vector<store::Behind> months;
    int news = 0;
    for (const Unit unit : {Unit::Micrometre, Unit::Rib}) {
        const auto& points = trends.of(unit);
        const shop::ReportTable table = shop::tableOf(points, unit);
        view.table.columns = table.columns;
        bool any = false;
        for (const shop::TrendPoint& point : points) {
            any = any || point.lost;
            news += point.news() ? 1 : 0;
        }
        if (!any) continue;
        view.table.rows.insert(view.table.rows.end(), table.rows.begin(), table.rows.end());
        for (const shop::TrendPoint& point : points) {
            store::Behind& month = months.emplace_back(store::Behind{point.month.from, point.month.until});
            month.unit = unit;
        }
        view.charts.push_back(chartOf(trendOf(points, unit)));
    }
    view.headline = news == 0
                        ? Words::tr("No month differs by more than chance would make it")
                        : Words::tr("Months that differ by more than chance would make them: %1").arg(news);
    view.behind = behindMonths(std::move(months), view.table);
    view.remarks << Words::tr(
        "Grey: where 19 months in 20 would lie if nothing changed but chance. Only a month "
        "outside of it (a diamond) is worth a question, and 1 in 20 is outside by chance.");
    return view;
}

} // namespace riband::ui
