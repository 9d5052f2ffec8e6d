#include "app/identify_options.h"

#include "app/console.h"
#include "ui/words/tr.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace riband::app {

namespace {

using namespace belt::identify;
using ui::Words;

struct Named {
    const char* name;
    Measure what;
    bool over; ///< N=MM
    const char* help;
};

constexpr Named measures[] = {
    {"pitch-over", Measure::PitchOver, true,
     QT_TRANSLATE_NOOP("Words",
                       "From the middle of a tooth to the middle of the one N further on; may be repeated.")},
    {"teeth", Measure::Teeth, false, QT_TRANSLATE_NOOP("Words", "All teeth, counted.")},
    {"outside", Measure::Outside, false, QT_TRANSLATE_NOOP("Words", "Round the back, by tape.")},
    {"inside", Measure::Inside, false,
     QT_TRANSLATE_NOOP("Words", "Round the inside along the tips, by tape.")},
    {"flat", Measure::Flat, false, QT_TRANSLATE_NOOP("Words", "The length of a belt that is cut open.")},
    {"half-loop", Measure::HalfLoop, false,
     QT_TRANSLATE_NOOP("Words", "The closed belt pressed flat, from bend to bend.")},
    {"thickness", Measure::Thickness, false, QT_TRANSLATE_NOOP("Words", "Tooth and back together.")},
    {"tooth-height", Measure::ToothHeight, false, QT_TRANSLATE_NOOP("Words", "How high the tooth stands.")},
    {"tooth-root", Measure::ToothRoot, false,
     QT_TRANSLATE_NOOP("Words", "How wide the tooth is at its root.")},
    {"ribs", Measure::RibCount, false, QT_TRANSLATE_NOOP("Words", "All ribs, counted.")},
    {"ribs-over", Measure::RibsOver, true,
     QT_TRANSLATE_NOOP("Words", "From the middle of the first to the middle of the Nth rib.")},
    {"width", Measure::Width, false, QT_TRANSLATE_NOOP("Words", "The width.")},
};

struct NamedShape {
    const char* name;
    SeenShape shape;
};

constexpr NamedShape shapes[] = {
    {"trapezoid", SeenShape::Trapezoid},
    {"wide-trapezoid", SeenShape::WideTrapezoid},
    {"half-round", SeenShape::HalfRound},
    {"flat-top-round", SeenShape::FlatTopRound},
    {"dimpled-round", SeenShape::DimpledRound},
    {"full-round", SeenShape::FullRound},
    {"ribs", SeenShape::Ribs},
};

QString allShapes() {
    QStringList names;
    for (const NamedShape& each : shapes)
        names << QLatin1String(each.name);
    return names.join(QLatin1Char('|'));
}

bool isCount(Measure what) { return what == Measure::Teeth || what == Measure::RibCount; }

[[noreturn]] void refuse(const QString& option, const QString& text, const QString& wanted) {
    throw BadInput(Words::tr("--%1 %2: %3").arg(option, text, wanted));
}

/// A comma or a point is the decimal sign.
double numberOf(const QString& option, QString text, const QString& whole) {
    bool good = false;
    const double value = text.replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&good);
    if (!good || !std::isfinite(value)) refuse(option, whole, Words::tr("a number is needed."));
    return value;
}

/// "N=MM".
std::pair<int, double> overOf(const QString& option, const QString& text) {
    const int at = static_cast<int>(text.indexOf(QLatin1Char('=')));
    bool good = false;
    const int over = text.left(at).toInt(&good);
    if (at < 1 || !good) refuse(option, text, Words::tr("write N=MM, for example 20=100.1."));
    return {over, numberOf(option, text.mid(at + 1), text)};
}

SeenShape shapeOf(const QString& text) {
    const auto* shape = std::find_if(std::begin(shapes), std::end(shapes), [&](const NamedShape& each) {
        return text == QLatin1String(each.name);
    });
    if (shape == std::end(shapes))
        refuse(QStringLiteral("shape"), text, Words::tr("say one of %1.").arg(allShapes()));
    return shape->shape;
}

void take(const Options& options, const Named& named, const Errors& errors, Sample& sample) {
    const QString option = QLatin1String(named.name);
    for (const QString& text : options.values(option)) {
        Measurement measurement{named.what, 0, errors.of(named.what), 0};
        if (named.over)
            std::tie(measurement.over, measurement.value) = overOf(option, text);
        else
            measurement.value = numberOf(option, text, text);
        sample.measured.push_back(measurement);
    }
}

QString allNames() {
    QStringList names;
    for (const Named& each : measures)
        names << QLatin1String(each.name);
    return names.join(QStringLiteral(", "));
}

void takeError(const QString& text, Errors& errors) {
    const QString option = QStringLiteral("error");
    const QString name = text.section(QLatin1Char('='), 0, 0);
    const auto* named = std::find_if(std::begin(measures), std::end(measures),
                                     [&](const Named& each) { return name == QLatin1String(each.name); });
    if (named == std::end(measures) || !text.contains(QLatin1Char('=')))
        refuse(option, text,
               Words::tr("write NAME=MM, for example thickness=0.2; the names are %1.").arg(allNames()));
    const double error = numberOf(option, text.section(QLatin1Char('='), 1), text);
    if (!(error > 0)) refuse(option, text, Words::tr("an error is more than nothing."));
    errors.set(named->what, error);
}

Condition conditionOf(const Options& options) {
    const bool fresh = options.has("new"), used = options.has("used");
    if (fresh && used) throw BadInput(Words::tr("A belt is new or used: say one of them."));
    return fresh ? Condition::New : used ? Condition::Used : Condition::Unknown;
}

} // namespace

Usage identifyUsage() {
    Usage usage{QStringLiteral("identify"),
                Words::tr("Says which belt it may be, from any of these measures, and what to measure next."),
                {},
                {}};
    for (const Named& each : measures)
        usage.options.append({QLatin1String(each.name), Words::tr(each.help),
                              each.over            ? QStringLiteral("N=MM")
                              : isCount(each.what) ? QStringLiteral("N")
                                                   : QStringLiteral("MM")});
    usage.options.append({"shape", Words::tr("The tooth from the side: %1.").arg(allShapes()), "SHAPE"});
    usage.options.append({"error", Words::tr("Another error of a measure; may be repeated."), "NAME=MM"});
    usage.options.append({"new", Words::tr("The belt never ran.")});
    usage.options.append({"used", Words::tr("The belt ran: it measures long, its teeth thin.")});
    usage.options.append({"double-sided", Words::tr("There are teeth on both sides.")});
    usage.options.append({"open-ended", Words::tr("A piece by the metre, not a loop.")});
    usage.options.append({"keep-width", Words::tr("Keep the width as measured.")});
    usage.options.append({"shop", Words::tr("What this shop has sold is likelier."), "FILE"});
    return usage;
}

QString optionOf(Measure what) {
    if (what == Measure::Shape) return QStringLiteral("shape");
    const auto* named = std::find_if(std::begin(measures), std::end(measures),
                                     [what](const Named& each) { return each.what == what; });
    return QLatin1String(named->name);
}

Errors errorsOf(const Options& options, const Instruments& measuring) {
    Errors errors = belt::identify::errorsOf(measuring, conditionOf(options));
    QStringList named;
    for (const QString& text : options.values(QStringLiteral("error"))) {
        const QString name = text.section(QLatin1Char('='), 0, 0);
        if (named.contains(name)) refuse(QStringLiteral("error"), text, Words::tr("it has one already."));
        named << name;
        takeError(text, errors);
    }
    return errors;
}

Sample sampleOf(const Options& options, const Errors& errors) {
    Sample sample;
    for (const Named& each : measures)
        take(options, each, errors, sample);
    if (options.has("shape")) sample.shape = shapeOf(options.value("shape"));
    if (options.has("double-sided")) sample.doubleSided = true;
    sample.openEnded = options.has("open-ended");
    sample.condition = conditionOf(options);
    return sample;
}

} // namespace riband::app
