#include "app/commands.h"
#include "app/options.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QTextStream>

#include <clocale>
#include <cstdio>
#include <langinfo.h>
#include <string_view>

namespace {

using namespace riband;
using app::Exit;

struct Verb {
    const char* name;
    const char* what;
    Exit (*run)(const QStringList& arguments);
};

constexpr Verb verbs[] = {
    {"read", QT_TRANSLATE_NOOP("Words", "says which belt a text means"), app::read},
    {"plan", QT_TRANSLATE_NOOP("Words", "plans cuts from a stock list and an order list"), app::plan},
    {"suggest", QT_TRANSLATE_NOOP("Words", "says which piece of a shop to cut"), app::suggest},
    {"verify", QT_TRANSLATE_NOOP("Words", "recomputes the book of a shop"), app::verify},
    {"backup", QT_TRANSLATE_NOOP("Words", "copies a shop and verifies the copy"), app::backup},
    {"restore", QT_TRANSLATE_NOOP("Words", "puts a backup in the place of a shop"), app::restore},
    {"import", QT_TRANSLATE_NOOP("Words", "takes a table of stock or belts into a shop"), app::importTable},
    {"export", QT_TRANSLATE_NOOP("Words", "writes the stock or the ledger as a table"), app::exportTable},
};

const Verb* verbNamed(const QString& name) {
    for (const Verb& verb : verbs)
        if (name == QLatin1String(verb.name)) return &verb;
    return nullptr;
}

/// Qt wants a UTF-8 locale and says so on stderr if there is none; scripts often have LC_ALL=C.
void wantUtf8() {
    std::setlocale(LC_ALL, "");
    if (std::string_view{nl_langinfo(CODESET)} != "UTF-8") qputenv("LC_ALL", "C.UTF-8");
}

QString help() {
    QString text = ui::Words::tr("riband [FILE.riband]         opens a shop in its window\n"
                                 "riband VERB ... [--json]     does one thing without a window:\n");
    for (const Verb& verb : verbs)
        text +=
            QStringLiteral("    %1 %2\n").arg(QLatin1String(verb.name), -10).arg(ui::Words::tr(verb.what));
    return text + ui::Words::tr("riband VERB --help           tells more; so does docs/commands.md");
}

Exit told(const QString& verb, const QString& what, Exit exit) {
    for (const QString& line : what.split(QLatin1Char('\n')))
        app::complain(QStringLiteral("riband %1: %2").arg(verb, line));
    return exit;
}

/// The one place where what went wrong becomes words and a status.
Exit runVerb(const Verb& verb, const QStringList& arguments) {
    const QString name = QLatin1String(verb.name);
    try {
        return verb.run(arguments);
    } catch (const app::HelpAsked& asked) {
        app::print(asked.text);
        return Exit::Done;
    } catch (const shop::Refusal& refusal) {
        return told(name, ui::say(refusal), Exit::No);
    } catch (const store::StoreError& error) {
        return told(name, ui::say(error), Exit::BadInput);
    } catch (const std::exception& error) {
        return told(name, QString::fromUtf8(error.what()), Exit::BadInput);
    }
}

Exit unknown(const QString& word) {
    app::complain(ui::Words::tr("riband: “%1” is no verb and no shop file. Try: riband --help").arg(word));
    return Exit::BadInput;
}

Exit run(const QStringList& arguments) {
    const QString first = arguments.value(0);
    if (first == QLatin1String("--help") || first == QLatin1String("-h")) {
        app::print(help());
        return Exit::Done;
    }
    if (first == QLatin1String("--version")) {
        app::print(QStringLiteral("Riband " RIBAND_VERSION));
        return Exit::Done;
    }
    if (const Verb* verb = verbNamed(first)) return runVerb(*verb, arguments.mid(1));
    return unknown(first);
}

} // namespace

int main(int argc, char** argv) {
    wantUtf8();
    QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("Riband"));
    QCoreApplication::setApplicationVersion(QStringLiteral(RIBAND_VERSION));
    return static_cast<int>(run(QCoreApplication::arguments().mid(1)));
}
