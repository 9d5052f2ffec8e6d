#include "app/what_if_options.h"

#include "app/console.h"
#include "core/measure/text.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QStringList>

#include <functional>
#include <map>

namespace riband::app {

namespace {

using ui::Words;

constexpr int mostDays = 365;
constexpr int mostRemnants = 100;

[[noreturn]] void refuse(const QString& key, const QString& value, const QString& how) {
    throw BadInput(Words::tr("--what-if %1=%2: %3").arg(key, value, how));
}

/// "500", "500 mm" or "3 ribs".
Extent extentOf(const QString& key, const QString& value) {
    const QString word = value.trimmed();
    const bool ribs = word.endsWith(QLatin1String("ribs")) || word.endsWith(QLatin1String("rib"));
    QString number = word;
    for (const char* unit : {"ribs", "rib", "mm"})
        if (number.endsWith(QLatin1String(unit))) {
            number.chop(static_cast<int>(qstrlen(unit)));
            break;
        }
    const auto extent = readExtent(number.trimmed().toStdString(), ribs ? Unit::Rib : Unit::Micrometre);
    if (!extent) refuse(key, value, ui::say(extent.reason()));
    if (extent->count() > 2'000'000) refuse(key, value, Words::tr("No cutter takes so much."));
    return *extent;
}

double percentOf(const QString& key, const QString& value, double least, double most) {
    QString number = value.trimmed();
    if (number.endsWith(QLatin1Char('%'))) number.chop(1);
    bool isNumber = false;
    const double percent = QLocale::c().toDouble(number.trimmed(), &isNumber);
    if (!isNumber || percent < least || percent > most)
        refuse(key, value, Words::tr("say a percentage from %1 to %2.").arg(least).arg(most));
    return percent;
}

int countOf(const QString& key, const QString& value, int least, int most) {
    bool isNumber = false;
    const int count = value.toInt(&isNumber);
    if (!isNumber || count < least || count > most)
        refuse(key, value, Words::tr("say a whole number from %1 to %2.").arg(least).arg(most));
    return count;
}

bool yesOrNo(const QString& key, const QString& value) {
    if (value == QLatin1String("yes")) return true;
    if (value == QLatin1String("no")) return false;
    refuse(key, value, Words::tr("say yes or no."));
}

void take(shop::WhatIf& what, const QString& key, const QString& value) {
    using Take = std::function<void()>;
    const std::map<QString, Take> keys{
        {"trim", [&] { what.trim = extentOf(key, value); }},
        {"kerf", [&] { what.kerf = extentOf(key, value); }},
        {"sleeve", [&] { what.sleeve = extentOf(key, value); }},
        {"least", [&] { what.leastRemnant = extentOf(key, value); }},
        {"price", [&] { what.price = 1 + percentOf(key, value, -90, 900) / 100; }},
        {"service", [&] { what.service = percentOf(key, value, 50, 99.9) / 100; }},
        {"lead", [&] { what.leadDays = countOf(key, value, 1, mostDays); }},
        {"review", [&] { what.reviewDays = countOf(key, value, 1, mostDays); }},
        {"remnants", [&] { what.remnants = countOf(key, value, 0, mostRemnants); }},
        {"together", [&] { what.together = yesOrNo(key, value); }},
    };
    const auto found = keys.find(key);
    if (found == keys.end())
        throw BadInput(
            Words::tr("--what-if: “%1” can't be changed; say %2.")
                .arg(key, QStringLiteral("trim, kerf, sleeve, least, price, service, lead, review, "
                                         "remnants or together")));
    found->second();
}

} // namespace

shop::WhatIf whatIfOf(const QString& text) {
    shop::WhatIf what;
    what.name = text.toStdString();
    for (const QString& part : text.split(QLatin1Char(','))) {
        const qsizetype sign = part.indexOf(QLatin1Char('='));
        if (sign < 1) throw BadInput(Words::tr("--what-if %1: say KEY=VALUE.").arg(text));
        take(what, part.left(sign).trimmed(), part.mid(sign + 1).trimmed());
    }
    return what;
}

} // namespace riband::app
