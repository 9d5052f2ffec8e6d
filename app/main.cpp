#include "app/commands.h"
#include "app/options.h"
#include "app/window_command.h"
#include "resources/translations.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QFileInfo>

#include <algorithm>
#include <clocale>
#include <langinfo.h>
#include <memory>
#include <string_view>

namespace {

using namespace riband;
using app::Exit;

struct Verb {
    const char* name;
    const char* what;
    Exit (*run)(const QStringList& arguments);
    bool paints = false;
};

constexpr Verb verbs[] = {
    {"read", QT_TRANSLATE_NOOP("Words", "says which belt a text means"), app::read},
    {"plan", QT_TRANSLATE_NOOP("Words", "plans cuts from a stock list and an order list"), app::plan},
    {"suggest", QT_TRANSLATE_NOOP("Words", "says which piece of a shop to cut"), app::suggest},
    {"learn", QT_TRANSLATE_NOOP("Words", "fits the worth tables that are due"), app::learn},
    {"identify", QT_TRANSLATE_NOOP("Words", "says which belt it is from what was measured"), app::identify},
    {"drive", QT_TRANSLATE_NOOP("Words", "finds the belts for pulleys and a distance"), app::drive},
    {"verify", QT_TRANSLATE_NOOP("Words", "recomputes the book of a shop"), app::verify},
    {"backup", QT_TRANSLATE_NOOP("Words", "copies a shop and verifies the copy"), app::backup},
    {"restore", QT_TRANSLATE_NOOP("Words", "puts a backup in the place of a shop"), app::restore},
    {"count", QT_TRANSLATE_NOOP("Words", "takes the scans of a count into a shop"), app::count},
    {"import", QT_TRANSLATE_NOOP("Words", "takes a table of stock or belts into a shop"), app::importTable},
    {"receive", QT_TRANSLATE_NOOP("Words", "books a delivery from a table"), app::receive},
    {"move", QT_TRANSLATE_NOOP("Words", "puts pieces at their places from a table"), app::move},
    {"export", QT_TRANSLATE_NOOP("Words", "writes the stock or the ledger as a table"), app::exportTable},
    {"report", QT_TRANSLATE_NOOP("Words", "tells where width and money went"), app::report, true},
    {"advise", QT_TRANSLATE_NOOP("Words", "decides what to cut for a stream of orders"), app::advise},
    {"simulate", QT_TRANSLATE_NOOP("Words", "plays invented shops by a policy"), app::simulate},
    {"replay", QT_TRANSLATE_NOOP("Words", "plays the shop's year again under other rules"), app::replay},
    {"report", QT_TRANSLATE_NOOP("Words", "says what to buy, as text, table or paper"), app::report, true},
    {"gauge", QT_TRANSLATE_NOOP("Words", "prints true tooth forms with pitch rules"), app::gauge, true},
    {"demo", QT_TRANSLATE_NOOP("Words", "writes the demo shop and serves a walk-in"), app::demo, true},
};

const Verb* verbNamed(std::string_view name) {
    const auto* verb =
        std::find_if(std::begin(verbs), std::end(verbs), [name](const Verb& v) { return name == v.name; });
    return verb == std::end(verbs) ? nullptr : verb;
}

/// Qt wants a UTF-8 locale and says so on stderr if there is none; scripts often have LC_ALL=C.
void wantUtf8() {
    std::setlocale(LC_ALL, "");
    if (std::string_view{nl_langinfo(CODESET)} != "UTF-8") qputenv("LC_ALL", "C.UTF-8");
}

bool hasDisplay() {
    for (const char* name : {"QT_QPA_PLATFORM", "WAYLAND_DISPLAY", "DISPLAY"})
        if (qEnvironmentVariableIsSet(name)) return true;
    return false;
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

Exit answer(const QString& text) {
    app::print(text);
    return Exit::Done;
}

Exit refuse(const QString& text) {
    app::complain(QStringLiteral("riband: ") + text);
    return Exit::BadInput;
}

/// A word like a verb rather than like a file: told in the terminal at once, not in a window.
bool isMistypedVerb(const QString& word) {
    const bool likeAFile = word.contains(QLatin1Char('.')) || word.contains(QLatin1Char('/'));
    return !word.isEmpty() && !likeAFile && !QFileInfo::exists(word);
}

/// What is neither a verb nor an option is the shop to open.
Exit runWindow(const QStringList& arguments) {
    for (const QString& argument : arguments)
        if (argument.startsWith(QLatin1Char('-')))
            return refuse(ui::Words::tr("the option %1 is not known. Try: riband --help").arg(argument));
    if (const QString word = arguments.value(0); isMistypedVerb(word))
        return refuse(ui::Words::tr("“%1” is no verb and no shop file. Try: riband --help").arg(word));
    if (!hasDisplay())
        return refuse(ui::Words::tr("there is no display for the window. Try a verb: riband --help"));
    return app::openWindow(arguments);
}

bool asksFor(const QStringList& arguments, std::initializer_list<const char*> options) {
    return std::any_of(options.begin(), options.end(),
                       [&](const char* option) { return arguments.value(0) == QLatin1String(option); });
}

Exit run(const Verb* verb, const QStringList& arguments) {
    if (verb) return runVerb(*verb, arguments.mid(1));
    if (asksFor(arguments, {"--help", "-h"})) return answer(help());
    if (asksFor(arguments, {"--version", "-v"})) return answer(QStringLiteral("Riband " RIBAND_VERSION));
    return runWindow(arguments);
}

/// The offscreen window system says what it can't do for windows that nobody will see: only real trouble is
/// told.
void keepQuiet() {
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& words) {
        if (type == QtCriticalMsg || type == QtFatalMsg) app::complain(words);
    });
}

/// Only what paints needs the window system; the demo paints without showing anything.
std::unique_ptr<QCoreApplication> applicationFor(const Verb* verb, int& argc, char** argv) {
    const bool windowed = !verb && hasDisplay() && (argc < 2 || argv[1][0] != '-');
    if (verb && verb->paints) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        keepQuiet();
    }
    if (windowed || (verb && verb->paints)) return std::make_unique<QApplication>(argc, argv);
    return std::make_unique<QCoreApplication>(argc, argv);
}

} // namespace

int main(int argc, char** argv) {
    wantUtf8();
    const Verb* verb = argc > 1 ? verbNamed(argv[1]) : nullptr;
    const auto application = applicationFor(verb, argc, argv);
    loadTranslation();
    QCoreApplication::setOrganizationName(QStringLiteral("Riband"));
    QCoreApplication::setApplicationName(QStringLiteral("Riband"));
    QCoreApplication::setApplicationVersion(QStringLiteral(RIBAND_VERSION));
    return static_cast<int>(run(verb, QCoreApplication::arguments().mid(1)));
}
