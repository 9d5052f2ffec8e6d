#include "app/commands.h"
#include "app/options.h"
#include "app/reading_json.h"
#include "app/standard_tables.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::app {

namespace {

Usage usage() {
    return {QStringLiteral("read"),
            ui::Words::tr("Says which belt a text means."),
            {{QStringLiteral("TEXT"), ui::Words::tr("what is printed on a belt, or what a customer says")}},
            {}};
}

QString described(const belt::Reading& reading, const belt::Tables& tables) {
    QStringList parts{QString::number(reading.quantity) + QStringLiteral(" x ") +
                      writtenForm(reading, tables)};
    if (reading.belt.teeth) parts << ui::Words::tr("%1 teeth").arg(reading.belt.teeth->count());
    parts << ui::Words::tr("%1 long").arg(ui::shown(reading.belt.length));
    if (reading.width) parts << ui::Words::tr("%1 wide").arg(ui::shown(*reading.width));
    if (const auto tolerance = toleranceOf(reading, tables))
        parts << ui::Words::tr("tolerance %1 mm").arg(ui::shown(*tolerance));
    if (const belt::Profile* profile = tables.profile(reading.belt.profile))
        parts << QString::fromStdString(profile->standard);
    return parts.join(QStringLiteral(", "));
}

void printReading(const belt::Reading& reading, const belt::Understanding& all, const belt::Tables& tables) {
    print(described(reading, tables));
    if (all.question && all.readings.size() > 1)
        print(QStringLiteral("    ") + ui::tellApart(reading, *all.question, tables));
    for (const auto remark : reading.remarks)
        print(QStringLiteral("    ") + ui::say(remark, reading));
}

void printWords(const belt::Understanding& understanding, const belt::Tables& tables) {
    for (const belt::Reading& reading : understanding.readings)
        printReading(reading, understanding, tables);
    if (understanding.question) print(ui::say(*understanding.question));
}

/// Where the words that can't be used stand, so that they are found in a long text.
void complainAbout(const belt::ReadFault& fault, const QString& text, const belt::Tables& tables) {
    const auto at =
        fault.part.empty() ? -1 : text.indexOf(QString::fromStdString(fault.part), 0, Qt::CaseInsensitive);
    complain(ui::Words::tr("riband read: line 1, column %1: %2")
                 .arg(at < 0 ? 1 : at + 1)
                 .arg(ui::say(fault, tables)));
}

} // namespace

Exit read(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const auto tables = standardTables();
    const QString text = options.positional(0);
    const auto understanding = belt::understand(text.toStdString(), *tables);
    if (options.json())
        printJson(jsonOf(understanding, *tables));
    else
        printWords(understanding, *tables);
    if (understanding.fault) complainAbout(*understanding.fault, text, *tables);
    if (understanding.readings.empty()) return Exit::BadInput;
    return understanding.readings.size() == 1 ? Exit::Done : Exit::No;
}

} // namespace riband::app
