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
void writePdf(const QString& name, const shop::ReportTable& table, const QStringList& words,
              const shop::Shop& shop, const QString& period) {
    const auto settings = store::Settings{shop.connection}.read();
    const QByteArray pdf = ui::pdfOf(ui::ticketSize(settings), [&](QPagedPaintDevice& device) {
        ui::paintOverrides(device, table, words, period, settings);
    });
    QSaveFile file{name};
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size() || !file.commit())
        throw BadInput(Words::tr("%1 can't be written: %2.").arg(name, file.errorString()));
}

} // namespace

Exit reportOverrides(const Options& options, const shop::Shop& shop, const shop::Period& period,
                     shop::Sees sees) {
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    const shop::OverrideReport report = shop::overrides(shop, period);
    const StopOnInterrupt stop;
    shop::BothWays played;
    try {
        played = shop::bothWays(shop, period, StopOnInterrupt::work());
    } catch (const foresight::Stopped&) {
        complain(Words::tr("riband report: stopped; nothing was changed."));
        return Exit::No;
    }
    const shop::ReportTable table = shop::tableOf(report, played, currency, sees);
    const QString verdict = ui::verdictOf(report, played, currency, sees);
    const QString days = ui::shownPeriod(period, dayOf(shop.now()));
    QStringList words{ui::followedWords(report)};
    if (verdict != words.front()) words << verdict;
    if (options.has("pdf")) {
        writePdf(options.value("pdf"), table, words, shop, days);
        return Exit::Done;
    }
    if (options.json()) {
        printJson(QJsonObject{{"rows", jsonOf(table)},
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
