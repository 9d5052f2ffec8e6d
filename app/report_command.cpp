#include "app/commands.h"
#include "app/report.h"
#include "ui/words/tr.h"

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {QStringLiteral("report"),
            Words::tr("Reports for the owner, with cost prices."),
            {{QStringLiteral("WHAT"), Words::tr("buy: the purchase list")}},
            {{"shop", Words::tr("The shop."), "FILE"},
             {"budget", Words::tr("buy: the most that the list may cost."), "MONEY"},
             {"csv", Words::tr("Print the table as CSV (RFC 4180).")},
             {"pdf", Words::tr("The PDF to write."), "FILE"},
             {"person", Words::tr("The initials of who asks; only an owner sees costs."), "INITIALS"}}};
}

using Report = Exit (*)(const Options& options);

Report reportNamed(const QString& what) {
    if (what == QLatin1String("buy")) return reportBuy;
    throw BadInput(Words::tr("There is no report “%1”; say buy.").arg(what));
}

} // namespace

Exit report(const QStringList& arguments) {
    const Options options(usage(), arguments);
    return reportNamed(options.positional(0))(options);
}

} // namespace riband::app
