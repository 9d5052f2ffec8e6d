#include "tests/catch.h"

#include "resources/translations.h"

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>

namespace {

QString english(const char* context, const char* source, int count) {
    return QCoreApplication::translate(context, source, nullptr, count);
}

} // namespace

TEST_CASE("One day is a day, two are days", "[words]") {
    int argc = 0;
    const QCoreApplication application(argc, nullptr);
    riband::loadTranslation();
    CHECK(english("Words", "%n ribs", 1) == "1 rib");
    CHECK(english("Words", "%n ribs", 6) == "6 ribs");
    CHECK(english("Words", "%n ribs", 0) == "0 ribs");
    CHECK(english("riband::ui::UnderstoodStrip", "%n belts", 1) == "1 belt"); // as the class itself asks
}

TEST_CASE("Every plural of English is finished", "[words]") {
    QFile file(QStringLiteral(RIBAND_SOURCE_DIR "/resources/translations/riband_en.ts"));
    REQUIRE(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(file.readAll());
    CHECK_FALSE(text.contains("unfinished"));
    CHECK_FALSE(text.contains("<numerusform></numerusform>"));
    CHECK(text.count("<message") > 15);
}
