#include "app/long_work.h"
#include "app/report.h"
#include "app/report_json.h"
#include "ui/papers/overrides_paper.h"
#include "ui/papers/papers.h"
#include "ui/words/override_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"

#include <QSaveFile>

#include <cmath>

namespace riband::app {

namespace {

using ui::Words;

/// Whole or not at all.
void writePdf(const QString& name, const shop::ReportTable& table, const shop::ReportTable& decisions,
              const QStringList& words, const shop::Shop& shop, const QString& period) {
    const auto settings = store::Settings{shop.connection}.read();
    const QByteArray pdf = ui::pdfOf(ui::ticketSize(settings), [&](QPagedPaintDevice& device) {
        ui::paintOverrides(device, table, decisions, words, period, settings);
    });
    QSaveFile file{name};
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size() || !file.commit())
        throw BadInput(Words::tr("%1 can't be written: %2.").arg(name, file.errorString()));
}

/// A line an order that was done otherwise, or sums.
bool isByOrder(const Options& options) {
    const QString by = options.has("by") ? options.value("by") : QStringLiteral("group");
    if (by == QLatin1String("order")) return true;
    if (by == QLatin1String("group")) return false;
    throw BadInput(Words::tr("--by %1: say one of %2.").arg(by, QStringLiteral("group, order")));
}

} // namespace

Exit reportOverrides(const Options& options, const shop::Shop& shop, const shop::Period& period,
                     shop::Sees sees) {
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const bool byOrder = isByOrder(options);
    const shop::OverrideReport report = shop::overrides(shop, period);
    const StopOnInterrupt stop;
    shop::BothWays played;
    try {
        played = shop::bothWays(shop, period, StopOnInterrupt::work());
    } catch (const foresight::Stopped&) {
        complain(Words::tr("riband report: stopped; nothing was changed."));
        return Exit::No;
    }
    const shop::ReportTable decisions = shop::decisionsOf(shop, report.departures, &played, currency, sees);
    const shop::ReportTable table = byOrder ? decisions : shop::tableOf(report, played, currency, sees);
    const QString verdict = ui::verdictOf(report, played, currency, sees);
    const QString days = ui::shownPeriod(period, dayOf(shop.now()));
    QStringList words{ui::followedWords(report)};
    if (verdict != words.front()) words << verdict;
    if (options.has("pdf")) {
        writePdf(options.value("pdf"), shop::tableOf(report, played, currency, sees), decisions, words, shop,
                 days);
        return Exit::Done;
    }
    if (options.json()) {
        printJson(QJsonObject{{"rows", jsonOf(shop::tableOf(report, played, currency, sees))},
                              {"decisions", jsonOf(decisions)},
                              {"shelf_declined", static_cast<qint64>(report.all.shelfRefused)},
                              {"not_replayed", static_cast<qint64>(played.left)},
                              {"as_done_mm", std::round(played.asDone * 1000) / 1000},
                              {"as_suggested_mm", std::round(played.asSuggested * 1000) / 1000},
                              {"verdict", verdict}});
        return Exit::Done;
    }
    answerWith(options, table);
    if (options.has("csv")) return Exit::Done;
    for (const QString& sentence : words + QStringList{days})
        print(sentence);
    return Exit::Done;
}

} // namespace riband::app
