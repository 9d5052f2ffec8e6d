#include "app/commands.h"
#include "app/options.h"
#include "core/store/backup.h"
#include "ui/words/tr.h"

#include <QJsonObject>

namespace riband::app {

namespace {

Usage usage() {
    return {QStringLiteral("restore"),
            ui::Words::tr("Puts a verified backup in the place of a shop; the shop that was there is kept."),
            {{QStringLiteral("FROM"), ui::Words::tr("the backup")},
             {QStringLiteral("TO"), ui::Words::tr("the shop, which must not be open")}},
            {}};
}

} // namespace

Exit restore(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const QString to = options.positional(1);
    const QString kept =
        QString::fromStdString(store::restore(options.positional(0).toStdString(), to.toStdString()));
    if (options.json()) {
        printJson(QJsonObject{{"restored", to},
                              {"kept", kept.isEmpty() ? QJsonValue(QJsonValue::Null) : QJsonValue(kept)}});
        return Exit::Done;
    }
    print(ui::Words::tr("Restored to %1.").arg(to));
    if (!kept.isEmpty()) print(ui::Words::tr("What was there before is kept as %1.").arg(kept));
    return Exit::Done;
}

} // namespace riband::app
