#include "resources/table_texts.h"

#include <QDir>
#include <QFile>

// Outside any namespace: a static library's resources are only found after this call.
static void bringIn() { Q_INIT_RESOURCE(riband); }

namespace riband {

belt::TableTexts tableTexts() {
    bringIn();
    belt::TableTexts texts;
    const QDir folder(QStringLiteral(":/tables"));
    for (const QFileInfo& entry : folder.entryInfoList({QStringLiteral("*.csv")}, QDir::Files)) {
        QFile file(entry.filePath());
        if (file.open(QIODevice::ReadOnly))
            texts.emplace(entry.completeBaseName().toStdString(), file.readAll().toStdString());
    }
    return texts;
}

} // namespace riband
