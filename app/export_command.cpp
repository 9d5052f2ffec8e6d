#include "app/commands.h"
#include "app/export.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "ui/words/tr.h"

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {
        QStringLiteral("export"),
        Words::tr("Writes the stock or the width ledger as CSV (RFC 4180), or as JSON, on standard output."),
        {{QStringLiteral("WHAT"), Words::tr("stock or ledger")}},
        {{"shop", Words::tr("The shop."), "FILE"}}};
}

} // namespace

Exit exportTable(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const QString what = options.positional(0);
    if (what != QLatin1String("stock") && what != QLatin1String("ledger"))
        throw BadInput(Words::tr("“%1” can't be exported; say stock or ledger.").arg(what));
    OpenShop open(options.needed("shop"), store::Connection::Mode::ReadOnly);
    TableWriter writer(stdout, options.json());
    what == QLatin1String("stock") ? exportStock(open.shop(), writer) : exportLedger(open.shop(), writer);
    writer.finish();
    return Exit::Done;
}

} // namespace riband::app
