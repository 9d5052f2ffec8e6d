#include "ui/which/measures.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <cmath>

namespace riband::ui {

namespace {

using belt::identify::Instrument;
using belt::identify::Measure;

struct MeasureWords {
    Q_DECLARE_TR_FUNCTIONS(MeasureWords)
};

constexpr double millimetresOfInch = 25.4;
constexpr int usualTeeth = 20, usualRibs = 5;

/// A comma or a point is the decimal sign.
std::optional<double> number(QString text) {
    bool good = false;
    const double value = text.trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&good);
    if (!good || !std::isfinite(value)) return std::nullopt;
    return value;
}

} // namespace

bool AskedMeasure::counted() const { return what == Measure::Teeth || what == Measure::RibCount; }

std::vector<AskedMeasure> askedMeasures() {
    return {
        {Measure::PitchOver, MeasureWords::tr("&Distance over so many teeth, mm"), usualTeeth},
        {Measure::Teeth, MeasureWords::tr("&Teeth in all")},
        {Measure::Thickness, MeasureWords::tr("T&hickness in all, mm")},
        {Measure::ToothHeight, MeasureWords::tr("H&eight of the tooth, mm")},
        {Measure::ToothRoot, MeasureWords::tr("Tooth at its &root, mm")},
        {Measure::Width, MeasureWords::tr("&Width, mm")},
        {Measure::Outside, MeasureWords::tr("Round the &back, mm")},
        {Measure::Inside, MeasureWords::tr("Round the &inside, mm")},
        {Measure::Flat, MeasureWords::tr("&Cut open, end to end, mm")},
        {Measure::HalfLoop, MeasureWords::tr("&Loop pressed flat, mm")},
        {Measure::RibCount, MeasureWords::tr("Rib&s in all")},
        {Measure::RibsOver, MeasureWords::tr("Distance &over so many ribs, mm"), usualRibs},
    };
}

QString nameOf(Instrument instrument) {
    switch (instrument) {
    case Instrument::Calliper:
        return MeasureWords::tr("calliper");
    case Instrument::Rule:
        return MeasureWords::tr("rule");
    case Instrument::Tape:
        return MeasureWords::tr("tape");
    }
    return {};
}

std::optional<TypedFigure> readFigure(const QString& typed) {
    static const QRegularExpression form{
        QStringLiteral(
            R"(^\s*([0-9.,]+)\s*(mm|in|inch|"|)\s*(?:(?:±|\+-|\+/-)\s*([0-9.,]+)\s*(?:mm)?)?\s*$)"),
        QRegularExpression::CaseInsensitiveOption};
    const auto match = form.match(typed);
    if (!match.hasMatch()) return std::nullopt;
    const auto value = number(match.captured(1));
    if (!value) return std::nullopt;
    const QString unit = match.captured(2).toLower();
    const bool inches = !unit.isEmpty() && unit != QLatin1String("mm");
    TypedFigure figure{inches ? *value * millimetresOfInch : *value, std::nullopt};
    if (match.captured(3).isEmpty()) return figure;
    figure.error = number(match.captured(3));
    if (!figure.error || *figure.error <= 0) return std::nullopt;
    return figure;
}

} // namespace riband::ui
