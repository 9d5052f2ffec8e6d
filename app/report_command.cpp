#include "app/commands.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "app/report.h"
#include "app/report_json.h"
#include "core/measure/text.h"
#include "core/shop/buying/reach.h"
#include "core/shop/reports/accuracy.h"
#include "core/shop/reports/shrinkage.h"
#include "ui/papers/month_report.h"
#include "ui/papers/papers.h"
#include "ui/words/compared_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"

#include <QSaveFile>

#include <algorithm>
#include <cstdio>

namespace riband::app {

namespace {

using shop::GroupBy;
using shop::ReportTable;
using shop::Sees;
using ui::Words;

Usage usage() {
    return {
        QStringLiteral("report"),
        Words::tr("Tells where width and money went, from the ledger."),
        {{QStringLiteral("WHAT"),
          Words::tr("waste, trend, overrides, hindsight, stock, margin, day, shrinkage, accuracy or buy")}},
        {{"shop", Words::tr("The shop."), "FILE"},
         {"from", Words::tr("The first day (the first of this month)."), "DAY"},
         {"to", Words::tr("The last day (today)."), "DAY"},
         {"by",
          Words::tr(
              "waste: all, belt, profile, family, person, place, cause or cutter; shrinkage: cause, "
              "belt or place; accuracy: all, place, belt, person or counter; overrides: group, or order for "
              "each decision."),
          "GROUP", "all"},
         {"aim", Words::tr("margin: the share of the price that a proposed price leaves."), "PERCENT", "40"},
         {"budget", Words::tr("buy: the most that the list may cost."), "MONEY"},
         {"person", Words::tr("The initials of who asks: only an owner sees costs (an owner)."), "INITIALS"},
         {"csv", Words::tr("Print the table as CSV (RFC 4180).")},
         {"pdf",
          Words::tr(
              "waste: the month's report for the accountant; overrides: the report; buy: the purchase list."),
          "FILE"}}};
}

Date dayOf(const Options& options, const char* name, Date otherwise) {
    if (!options.has(name)) return otherwise;
    const QString given = options.value(name);
    if (const auto day = readDate(given.toStdString())) return *day;
    throw BadInput(Words::tr("--%1 %2: a day such as 2026-03-31 is needed.").arg(QLatin1String(name), given));
}

/// Days as the person says them, the last one in it.
shop::Period periodOf(const Options& options, const OpenShop& open) {
    const Date today = riband::dayOf(open.shop().now());
    const std::chrono::year_month_day date{today};
    const Date from = dayOf(options, "from", Date{date.year() / date.month() / 1});
    const Date last = dayOf(options, "to", options.has("from") ? std::max(from, today) : today);
    if (last < from) throw BadInput(Words::tr("--to is before --from."));
    return shop::soFar({Moment{from}, Moment{last + std::chrono::days{1}}}, today);
}

GroupBy groupOf(const QString& word) {
    const char* const words[] = {"all", "belt", "profile", "family", "person", "place", "cause", "cutter"};
    for (std::size_t i = 0; i < std::size(words); ++i)
        if (word == QLatin1String(words[i])) return static_cast<GroupBy>(i);
    throw BadInput(
        Words::tr("--by %1: say all, belt, profile, family, person, place, cause or cutter.").arg(word));
}

Permille aimOf(const Options& options) {
    const auto aim = readPercent(options.value("aim").toStdString());
    if (aim && aim->count() < 1000) return *aim;
    throw BadInput(Words::tr("--aim %1: a share below 100 % is needed.").arg(options.value("aim")));
}

/// Whoever has the file of the shop has all that is in it: without a name it is asked as the owner.
Sees seesOf(const Options& options, const OpenShop& open) {
    return options.has("person") ? shop::seenBy(open.shop()) : Sees::Cost;
}

void demandOwner(Sees sees) {
    if (sees != Sees::Cost) throw BadInput(Words::tr("Only an owner sees margins."));
}

/// In columns, figures right.
void printTable(const ReportTable& table) {
    std::vector<int> room;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        std::size_t most = table.columns[i].size();
        for (const auto& row : table.rows)
            most = std::max(most, row[i].size());
        room.push_back(static_cast<int>(most));
    }
    const auto line = [&room](const std::vector<std::string>& fields) {
        QString text;
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const QString field = QString::fromStdString(fields[i]);
            text += (i == 0 ? field.leftJustified(room[i])
                            : QStringLiteral("  ") + field.rightJustified(room[i]));
        }
        print(text);
    };
    line(table.columns);
    for (const auto& row : table.rows)
        line(row);
}

/// With its days below where a person reads it.
void answerFor(const Options& options, const OpenShop& open, const shop::Period& period,
               const ReportTable& table) {
    answerWith(options, table);
    if (!options.has("csv")) print(ui::shownPeriod(period, riband::dayOf(open.shop().now())));
}

void writePdf(const QString& name, const shop::Shop& shop, const shop::Period& period, Sees sees) {
    const ui::MonthReport report = ui::gatherMonth(shop, period, sees);
    const auto settings = store::Settings{shop.connection}.read();
    const QByteArray pdf = ui::pdfOf(ui::ticketSize(settings), [&](QPagedPaintDevice& device) {
        ui::paintMonthReport(device, report, settings);
    });
    QSaveFile file{name};
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size() || !file.commit())
        throw BadInput(Words::tr("%1 can't be written: %2.").arg(name, file.errorString()));
}

void reportWaste(const Options& options, const OpenShop& open, const Currency& currency) {
    const Sees sees = seesOf(options, open);
    const shop::Period period = periodOf(options, open);
    if (options.has("pdf")) return writePdf(options.value("pdf"), open.shop(), period, sees);
    const std::vector<GroupBy> by{groupOf(options.value("by"))};
    const auto compared = shop::compared(open.shop(), period, by, shop::waste(open.shop(), period, by));
    if (options.json())
        return printJson(wasteJson(open.shop(), compared, options.value("by"), currency, sees));
    answerFor(options, open, period, shop::tableOf(compared.groups.front(), currency, sees));
    if (options.has("csv")) return;
    for (const QString& words : ui::comparedWords(compared, riband::dayOf(open.shop().now())))
        print(words);
}

void reportTrend(const Options& options, const OpenShop& open) {
    const shop::Period period = periodOf(options, open);
    const shop::Trends trends = shop::trends(open.shop(), period.until, 13);
    ReportTable table;
    for (const Unit unit : {Unit::Micrometre, Unit::Rib}) {
        ReportTable part = shop::tableOf(trends.of(unit), unit);
        table.columns = part.columns;
        table.rows.insert(table.rows.end(), part.rows.begin(), part.rows.end());
    }
    if (options.json()) return printJson(QJsonObject{{"months", jsonOf(table)}});
    answerFor(options, open, period, table);
}

void reportHindsight(const Options& options, const OpenShop& open) {
    const shop::Period period = periodOf(options, open);
    const auto belts = shop::reach(open.shop(), period);
    const ReportTable table = shop::tableOf(belts);
    if (!options.json()) return answerFor(options, open, period, table);
    QJsonArray totals;
    for (const Unit unit : {Unit::Micrometre, Unit::Rib})
        if (const auto sum = shop::totalOf(belts, unit))
            totals.append(QJsonObject{{"unit", unit == Unit::Rib ? "ribs" : "mm"},
                                      {"yield", sum->used > 0 ? QJsonValue{sum->had()} : QJsonValue{}},
                                      {"hindsight_yield", sum->reachable()}});
    printJson(QJsonObject{{"total", totals}, {"belts", jsonOf(table)}});
}

void reportStock(const Options& options, const OpenShop& open, const Currency& currency) {
    const Sees sees = seesOf(options, open);
    const auto report =
        shop::stockReport(open.shop(), dayOf(options, "to", riband::dayOf(open.shop().now())));
    const ReportTable belts = shop::tableOf(report, currency, sees);
    if (!options.json()) return answerWith(options, belts);
    printJson(QJsonObject{{"belts", jsonOf(belts)},
                          {"ages", jsonOf(shop::agesOf(report, currency, sees))},
                          {"covers", jsonOf(shop::coversOf(report, currency, sees))}});
}

void reportMargin(const Options& options, const OpenShop& open, const Currency& currency) {
    demandOwner(seesOf(options, open));
    const Permille aim = aimOf(options);
    const shop::Period period = periodOf(options, open);
    const auto report = shop::marginReport(open.shop(), period);
    const ReportTable belts = shop::tableOf(report.belts, aim, currency);
    if (!options.json()) return answerFor(options, open, period, belts);
    printJson(QJsonObject{{"belts", jsonOf(belts)},
                          {"customers", jsonOf(shop::tableOf(report.customers, aim, currency))},
                          {"below_cost", jsonOf(shop::tableOf(report.below, open.shop(), currency))}});
}

/// Which of the words `--by` says; the first where it says nothing.
template <class By>
By wordOf(const Options& options, std::initializer_list<const char*> words) {
    const QString said = options.value("by");
    if (!options.has("by")) return By{};
    int at = 0;
    QStringList all;
    for (const char* word : words) {
        if (said == QLatin1String(word)) return static_cast<By>(at);
        all << QLatin1String(word);
        ++at;
    }
    throw BadInput(Words::tr("--by %1: say one of %2.").arg(said, all.join(QStringLiteral(", "))));
}

void reportShrinkage(const Options& options, const OpenShop& open, const Currency& currency) {
    const auto by = wordOf<shop::ShrinkageBy>(options, {"cause", "belt", "place"});
    const shop::Period period = periodOf(options, open);
    const auto rows = shop::shrinkage(open.shop(), period, by);
    const Sees sees = seesOf(options, open);
    const ReportTable table = shop::tableOf(rows, currency, sees);
    if (!options.json()) return answerFor(options, open, period, table);
    std::vector<shop::ShrinkageRow> total;
    for (const Unit unit : {Unit::Micrometre, Unit::Rib})
        total.push_back(shop::totalOf(rows, unit));
    printJson(QJsonObject{{"rows", jsonOf(table)}, {"total", jsonOf(shop::tableOf(total, currency, sees))}});
}

void reportAccuracy(const Options& options, const OpenShop& open, const Currency& currency) {
    const auto by = wordOf<shop::AccuracyBy>(options, {"all", "place", "belt", "person", "counter"});
    const shop::Period period = periodOf(options, open);
    const ReportTable table = shop::tableOf(shop::accuracy(open.shop(), period, by));
    const ReportTable proved =
        shop::tableOf(shop::provedShare(open.shop(), period.until), currency, seesOf(options, open));
    if (options.json()) return printJson(QJsonObject{{"rows", jsonOf(table)}, {"proved", jsonOf(proved)}});
    answerFor(options, open, period, table);
    if (!options.has("csv")) printTable(proved);
}

void reportDay(const Options& options, const OpenShop& open, const Currency& currency) {
    const Date today = riband::dayOf(open.shop().now());
    const Date day = dayOf(options, "to", today);
    const auto report = shop::dayReport(open.shop(), day);
    if (options.json()) return printJson(dayJson(report, day, currency));
    answerWith(options, shop::takingsOf(report, currency));
    if (options.has("csv")) return;
    print(Words::tr("%1 open tickets, %2 orders to be cut, %3 ready and not collected.")
              .arg(report.openTickets)
              .arg(report.openOrders)
              .arg(report.uncollected.size()));
    if (!report.uncollected.empty()) printTable(shop::uncollectedOf(report, today, currency));
}

} // namespace

void answerWith(const Options& options, const ReportTable& table) {
    if (!options.has("csv")) return printTable(table);
    const std::string text = shop::csvOf(table);
    if (std::fwrite(text.data(), 1, text.size(), stdout) != text.size() || std::fflush(stdout) != 0)
        throw BadInput(Words::tr("The table could not be written to its end."));
}

Exit report(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const QString what = options.positional(0);
    if (what == QLatin1String("buy")) return reportBuy(options);
    OpenShop open(options.needed("shop"), store::Connection::Mode::ReadOnly, options.value("person"));
    const Currency currency = store::Settings{open.shop().connection}.read().prices.currency;
    if (what == QLatin1String("waste"))
        reportWaste(options, open, currency);
    else if (what == QLatin1String("trend"))
        reportTrend(options, open);
    else if (what == QLatin1String("overrides"))
        return reportOverrides(options, open.shop(), periodOf(options, open), seesOf(options, open));
    else if (what == QLatin1String("hindsight"))
        reportHindsight(options, open);
    else if (what == QLatin1String("stock"))
        reportStock(options, open, currency);
    else if (what == QLatin1String("margin"))
        reportMargin(options, open, currency);
    else if (what == QLatin1String("shrinkage"))
        reportShrinkage(options, open, currency);
    else if (what == QLatin1String("accuracy"))
        reportAccuracy(options, open, currency);
    else if (what == QLatin1String("day"))
        reportDay(options, open, currency);
    else
        throw BadInput(
            Words::tr("“%1” can't be reported; say waste, trend, overrides, hindsight, stock, margin, day, "
                      "shrinkage, accuracy or buy.")
                .arg(what));
    return Exit::Done;
}

} // namespace riband::app
