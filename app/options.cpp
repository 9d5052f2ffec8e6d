#include "app/options.h"

#include "app/console.h"
#include "ui/words/tr.h"

namespace riband::app {

namespace {

void refuseCount(const Usage& usage, const QStringList& given) {
    if (given.size() < usage.positionals.size())
        throw BadInput(ui::Words::tr("%1 is missing. Try: riband %2 --help")
                           .arg(usage.positionals.at(given.size()).name, usage.verb));
    if (given.size() > usage.positionals.size())
        throw BadInput(ui::Words::tr("“%1” is too much. Put a text with spaces in quotes.")
                           .arg(given.at(usage.positionals.size())));
}

/// Which of two values is meant nobody can tell; the last one would win without a word. An option that says
/// a key with its value (N=MM) may be repeated.
void refuseTwice(const Usage& usage, const QCommandLineParser& parser) {
    for (const QCommandLineOption& option : usage.options) {
        const QString name = option.names().constFirst();
        if (option.valueName().isEmpty() || option.valueName().contains(QLatin1Char('='))) continue;
        if (const QStringList values = parser.values(name); values.size() > 1)
            throw BadInput(ui::Words::tr("--%1 is given twice, %2 and %3: give it once.")
                               .arg(name, values.at(0), values.at(1)));
    }
}

/// Qt names the program by its path and knows of no verbs; the rest of its text is good.
QString helpOf(const Usage& usage, const QCommandLineParser& parser) {
    QString first = QStringLiteral("Usage: riband %1 [options]").arg(usage.verb);
    for (const Usage::Positional& positional : usage.positionals)
        first += QLatin1Char(' ') + positional.name;
    const QString text = parser.helpText();
    return first + text.mid(text.indexOf(QLatin1Char('\n'))).trimmed().prepend(QLatin1Char('\n'));
}

} // namespace

Options::Options(const Usage& usage, const QStringList& arguments) : verb_{usage.verb} {
    parser_.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    parser_.setApplicationDescription(usage.summary);
    for (const Usage::Positional& positional : usage.positionals)
        parser_.addPositionalArgument(positional.name, positional.what);
    parser_.addOptions(usage.options);
    parser_.addOption({QStringLiteral("json"), ui::Words::tr("Print the answer as JSON.")});
    const QCommandLineOption help{{QStringLiteral("h"), QStringLiteral("help")},
                                  ui::Words::tr("Print this.")};
    parser_.addOption(help);
    if (!parser_.parse(QStringList{QStringLiteral("riband")} + arguments))
        throw BadInput(parser_.errorText() + QLatin1Char(' ') +
                       ui::Words::tr("Try: riband %1 --help").arg(verb_));
    if (parser_.isSet(help)) throw HelpAsked{helpOf(usage, parser_)};
    refuseTwice(usage, parser_);
    refuseCount(usage, parser_.positionalArguments());
}

QString Options::needed(const QString& option) const {
    if (!has(option))
        throw BadInput(ui::Words::tr("--%1 is missing. Try: riband %2 --help").arg(option, verb_));
    return value(option);
}

} // namespace riband::app
