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
        {{QStringLiteral("WHAT"), Words::tr("stock, belts or offers")},
         {QStringLiteral("CSV"), Words::tr("the table")}},
        {{"shop", Words::tr("The shop."), "FILE"},
         {"column",
          Words::tr(
              "Of a stock: what a column holds, such as “Artikel=belt”; “Remark=” leaves it out. May stand "
              "several times."),
          "HEAD=FIELD"},
         {"unit", Words::tr("Of a stock: mm, cm or in, for widths that tell none."), "UNIT"},
         {"person", Words::tr("Initials of who does it; else the first of the shop."), "INITIALS"}}};
}

QString taken(qint64 rows, const QString& csv) {
    return rows == 1 ? Words::tr("One row of %1 was taken in.").arg(csv)
                     : Words::tr("%1 rows of %2 were taken in.").arg(rows).arg(csv);
}

QJsonObject take(const QString& what, const shop::Shop& shop, const QString& csv, const SheetHints& hints) {
    if (what == QLatin1String("stock")) return importStock(shop, csv, hints);
    if (what == QLatin1String("belts")) return importBelts(shop, csv);
    if (what == QLatin1String("offers")) return importOffers(shop, csv);
    throw BadInput(Words::tr("“%1” can't be imported; say stock, belts or offers.").arg(what));
}

} // namespace

Exit importTable(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const QString what = options.positional(0);
    OpenShop open(options.needed("shop"), store::Connection::Mode::Open, options.value("person"));
    const QString csv = options.positional(1);
    const QJsonObject done = take(what, open.shop(), csv, {options.values("column"), options.value("unit")});
    if (options.json())
        printJson(done);
    else
        print(taken(done.value("rows").toInteger(), csv));
    return Exit::Done;
}

} // namespace riband::app
