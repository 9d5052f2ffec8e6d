#include "app/commands.h"
#include "app/options.h"
#include "core/store/backup.h"
#include "ui/words/tr.h"

#include <QFileInfo>
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
    const QString from = options.positional(0), to = options.positional(1);
    const QString whole = QFileInfo{from}.canonicalFilePath();
    if (!whole.isEmpty() && whole == QFileInfo{to}.canonicalFilePath())
        throw BadInput(
            ui::Words::tr("%1 is FROM and TO at once. Name the backup first, then the shop.").arg(to));
    const QString kept = QString::fromStdString(store::restore(from.toStdString(), to.toStdString()));
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
