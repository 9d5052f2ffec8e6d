#include "resources/translations.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

// Outside any namespace: a static library's resources are only found after this call.
static void bringIn() { Q_INIT_RESOURCE(riband_translations); }

namespace riband {

void loadTranslation() {
    bringIn();
    auto* translator = new QTranslator(QCoreApplication::instance());
    const QString folder = QStringLiteral(":/translations");
    if (translator->load(QLocale(), QStringLiteral("riband"), QStringLiteral("_"), folder) ||
        translator->load(QStringLiteral("riband_en"), folder))
        QCoreApplication::installTranslator(translator);
}

} // namespace riband
