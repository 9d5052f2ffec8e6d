#pragma once

#include <QCommandLineParser>
#include <QStringList>

namespace riband::app {

/// How a verb is called.
struct Usage {
    QString verb;
    QString summary;
    struct Positional {
        QString name;
        QString what;
    };
    QList<Positional> positionals; ///< all are needed
    QList<QCommandLineOption> options;
};

/// `--help` stood among the arguments: print this and be done.
struct HelpAsked {
    QString text;
};

/// What was typed behind a verb. Every verb takes --json and --help.
class Options {
public:
    /// Throws BadInput for an option that is not known or a positional that is missing or too many;
    /// HelpAsked.
    Options(const Usage& usage, const QStringList& arguments);
    bool has(const QString& option) const { return parser_.isSet(option); }
    bool json() const { return has(QStringLiteral("json")); }
    QString value(const QString& option) const { return parser_.value(option); }
    QStringList values(const QString& option) const { return parser_.values(option); } ///< in their order
    /// Throws BadInput if it was not given.
    QString needed(const QString& option) const;
    QString positional(int index) const { return parser_.positionalArguments().at(index); }

private:
    QString verb_;
    QCommandLineParser parser_;
};

} // namespace riband::app
