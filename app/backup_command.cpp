#include "app/commands.h"
#include "app/options.h"
#include "app/verification_json.h"
#include "core/store/backup.h"
#include "ui/words/tr.h"

namespace riband::app {

namespace {

Usage usage() {
    return {QStringLiteral("backup"),
            ui::Words::tr("Copies a shop, consistent while it is in use, and verifies the copy."),
            {{QStringLiteral("FILE"), ui::Words::tr("the shop")},
             {QStringLiteral("TO"), ui::Words::tr("the copy; a file that is not there yet")}},
            {}};
}

} // namespace

Exit backup(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const QString to = options.positional(1);
    store::Connection from(options.positional(0).toStdString()); // SQLite copies only for those who may write
    const store::Verification found = store::backup(from, to.toStdString());
    QJsonObject json = jsonOf(found);
    json.insert("backup", to);
    if (options.json()) {
        printJson(json);
    } else {
        print(ui::Words::tr("Copied to %1.").arg(to));
        printVerification(found);
    }
    return found.agrees() ? Exit::Done : Exit::No;
}

} // namespace riband::app
