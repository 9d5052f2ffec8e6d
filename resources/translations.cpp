#include "resources/translations.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

// Outside any namespace: a static library's resources are only found after this call.
static void bringIn() { Q_INIT_RESOURCE(riband_translations); }

namespace riband {

namespace {

/// At run time a class asks by its full name, riband::ui::RackPage; Qt's lupdate, which does not see into
/// `namespace riband::ui`, files its texts under RackPage.
class ShortNamed final : public QTranslator {
public:
    using QTranslator::QTranslator;
    QString translate(const char* context, const char* source, const char* comment,
                      int count) const override {
        const char* name = context;
        for (const char* at = context; at && *at; ++at)
            if (*at == ':') name = at + 1;
        return QTranslator::translate(name, source, comment, count);
    }
};

} // namespace

void loadTranslation() {
    bringIn();
    auto* translator = new ShortNamed(QCoreApplication::instance());
    const QString folder = QStringLiteral(":/translations");
    if (translator->load(QLocale(), QStringLiteral("riband"), QStringLiteral("_"), folder) ||
        translator->load(QStringLiteral("riband_en"), folder))
        QCoreApplication::installTranslator(translator);
}

} // namespace riband
