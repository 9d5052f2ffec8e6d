#include "app/commands.h"
#include "app/options.h"
#include "app/standard_tables.h"
#include "ui/papers/gauge_card.h"
#include "ui/papers/papers.h"
#include "ui/words/tr.h"

#include <QJsonObject>
#include <QSaveFile>

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {QStringLiteral("gauge"),
            Words::tr("Prints the gauge card: true tooth and rib forms with pitch rules, 1:1."),
            {},
            {{"out", Words::tr("The PDF to write."), "FILE"},
             {"paper", Words::tr("A4 (the default) or Letter."), "PAPER", "A4"}}};
}

QPageSize paperOf(const Options& options) {
    const QString paper = options.value("paper");
    if (paper.compare(QLatin1String("A4"), Qt::CaseInsensitive) == 0) return QPageSize{QPageSize::A4};
    if (paper.compare(QLatin1String("Letter"), Qt::CaseInsensitive) == 0) return QPageSize{QPageSize::Letter};
    throw BadInput(Words::tr("--paper %1: say A4 or Letter.").arg(paper));
}

/// Whole or not at all.
void write(const QString& name, const QByteArray& pdf) {
    QSaveFile file{name};
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size() || !file.commit())
        throw BadInput(Words::tr("%1 can't be written: %2.").arg(name, file.errorString()));
}

} // namespace

Exit gauge(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const QString out = options.needed("out");
    const auto tables = standardTables();
    int pages = 0;
    const QByteArray pdf = ui::pdfOf(
        paperOf(options), [&](QPagedPaintDevice& device) { pages = ui::paintGaugeCard(device, *tables); });
    write(out, pdf);
    if (options.json())
        printJson(QJsonObject{{"file", out}, {"pages", pages}});
    else
        print(Words::tr("%1: %2 pages. Print at 100 % and measure the check line.").arg(out).arg(pages));
    return Exit::Done;
}

} // namespace riband::app
