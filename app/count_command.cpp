#include "app/commands.h"
#include "app/count_file.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "ui/words/tr.h"

#include <QJsonArray>

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {
        QStringLiteral("count"),
        Words::tr("Takes the scans of a hand-held collector into the counts of their places: all of them, "
                  "or none if a row is bad. “-” is standard input."),
        {{QStringLiteral("CSV"), Words::tr("the scans")}},
        {{"shop", Words::tr("The shop."), "FILE"},
         {"person", Words::tr("Initials of who counted; else the first of the shop."), "INITIALS"},
         {"close", Words::tr("The places are done: what was not seen is missing.")}}};
}

void tell(const QJsonObject& done) {
    QHash<QString, int> verdicts;
    for (const QJsonValue& row : done["rows"].toArray()) {
        const QJsonObject scan = row.toObject();
        ++verdicts[scan["verdict"].toString()];
        if (scan["verdict"] == QLatin1String("again"))
            print(Words::tr("Line %1: measure %2 a second time.")
                      .arg(scan["line"].toInteger())
                      .arg(scan["piece"].toString()));
    }
    for (const QJsonValue& row : done["missing"].toArray())
        print(Words::tr("%1: %2 is missing.")
                  .arg(row.toObject()["place"].toString(), row.toObject()["piece"].toString()));
    print(Words::tr("Places: %1. Agree: %2, differ: %3, to be measured again: %4, without label: %5.")
              .arg(done["places"].toInteger())
              .arg(verdicts["agrees"] + verdicts["within"])
              .arg(verdicts["differs"])
              .arg(verdicts["again"])
              .arg(verdicts["found"]));
}

} // namespace

Exit count(const QStringList& arguments) {
    const Options options(usage(), arguments);
    OpenShop open(options.needed("shop"), store::Connection::Mode::Open, options.value("person"));
    const QJsonObject done =
        countFile(open.shop(), options.positional(0), options.has(QStringLiteral("close")));
    if (options.json())
        printJson(done);
    else
        tell(done);
    return Exit::Done;
}

} // namespace riband::app
