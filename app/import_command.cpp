#include "app/commands.h"
#include "app/import.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "ui/words/tr.h"

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {
        QStringLiteral("import"),
        Words::tr("Takes a table into a shop: all of it, or nothing if a row is bad. “-” is standard input."),
        {{QStringLiteral("WHAT"), Words::tr("stock or belts")},
         {QStringLiteral("CSV"), Words::tr("the table")}},
        {{"shop", Words::tr("The shop."), "FILE"},
         {"person", Words::tr("Initials of who does it; else the first of the shop."), "INITIALS"}}};
}

QString taken(qint64 rows, const QString& csv) {
    return rows == 1 ? Words::tr("One row of %1 was taken in.").arg(csv)
                     : Words::tr("%1 rows of %2 were taken in.").arg(rows).arg(csv);
}

} // namespace

Exit importTable(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const QString what = options.positional(0);
    if (what != QLatin1String("stock") && what != QLatin1String("belts"))
        throw BadInput(Words::tr("“%1” can't be imported; say stock or belts.").arg(what));
    OpenShop open(options.needed("shop"), store::Connection::Mode::Open, options.value("person"));
    const QString csv = options.positional(1);
    const QJsonObject done =
        what == QLatin1String("stock") ? importStock(open.shop(), csv) : importBelts(open.shop(), csv);
    if (options.json())
        printJson(done);
    else
        print(taken(done.value("rows").toInteger(), csv));
    return Exit::Done;
}

} // namespace riband::app
