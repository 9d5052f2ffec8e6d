#include "ui/drive/entries.h"

#include "core/measure/text.h"

#include <QRegularExpression>

#include <cmath>

namespace riband::ui {

namespace {

using namespace belt::drive;

constexpr qlonglong mostTeeth = 100'000;
constexpr double mostNumber = 1e9;
constexpr double farthest = 1e6; // mm from the origin

std::optional<double> decimal(QString typed) {
    bool good = false;
    const double value = typed.trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&good);
    return good && std::abs(value) <= mostNumber ? std::optional{value} : std::nullopt;
}

std::optional<Teeth> teethOf(const QString& digits) {
    const qlonglong count = digits.toLongLong();
    return count >= 1 && count <= mostTeeth ? std::optional{Teeth{count}} : std::nullopt;
}

/// The number of "-5" without its sign; the sign must be this one, or none.
QRegularExpressionMatch matched(const QString& pattern, const QString& typed) {
    return QRegularExpression{QRegularExpression::anchoredPattern(pattern),
                              QRegularExpression::CaseInsensitiveOption}
        .match(typed.trimmed());
}

const QString number = QStringLiteral("(\\d+(?:[.,]\\d+)?)");

} // namespace

std::optional<SaidPulley> readPulley(const QString& typed, bool toothed, Side side) {
    const auto teeth = matched(QStringLiteral("(?:z\\s*(\\d+)|(\\d+)\\s*(?:z|t|teeth|tooth))"), typed);
    const auto bare = matched(QStringLiteral("(\\d+)"), typed);
    if (teeth.hasMatch() || (toothed && bare.hasMatch())) {
        const QString digits = teeth.hasMatch() ? teeth.captured(1) + teeth.captured(2) : bare.captured(1);
        const auto count = teethOf(digits);
        return count ? std::optional{SaidPulley{count, {}, side}} : std::nullopt;
    }
    const auto marked = matched(QStringLiteral("(?:d|ø|⌀)?\\s*(.+)"), typed);
    const auto diameter = readDistance(marked.captured(1));
    return diameter ? std::optional{SaidPulley{{}, diameter, side}} : std::nullopt;
}

std::optional<double> readDistance(const QString& typed) {
    const auto length = readLength(typed.toStdString());
    if (!length || !(length->inMillimetres() > 0)) return std::nullopt;
    return length->inMillimetres();
}

std::optional<double> readPlace(const QString& typed) {
    const auto place = decimal(typed);
    return place && std::abs(*place) <= farthest ? place : std::nullopt;
}

std::optional<Range> readRange(const QString& typed) {
    const auto either =
        matched(QStringLiteral("(?:±|\\+/-|\\+-)?\\s*") + number + QStringLiteral("(?:\\s*mm)?"), typed);
    if (either.hasMatch()) return Range{*decimal(either.captured(1)), *decimal(either.captured(1))};
    const auto both =
        matched(QStringLiteral("(?:[-−]\\s*") + number + QStringLiteral(")?\\s*/?\\s*(?:\\+\\s*") + number +
                    QStringLiteral(")?(?:\\s*mm)?"),
                typed);
    if (!both.hasMatch() || typed.trimmed().isEmpty()) return std::nullopt;
    const auto nearer = decimal(both.captured(1)), further = decimal(both.captured(2));
    if (!nearer && !further) return std::nullopt;
    return Range{nearer.value_or(0), further.value_or(0)};
}

std::optional<double> readNumber(const QString& typed) {
    const auto value = decimal(typed);
    return value && *value >= 0 ? value : std::nullopt;
}

std::optional<Duty> readDuty(const QString& power, double revolutions, double serviceFactor) {
    const auto read = matched(number + QStringLiteral("\\s*(kw|w|nm)?"), power);
    const auto value = read.hasMatch() ? decimal(read.captured(1)) : std::nullopt;
    if (!value || !(*value > 0)) return std::nullopt;
    const QString unit = read.captured(2).toLower();
    if (unit == QLatin1String("nm")) return dutyOfTorque(*value, revolutions, serviceFactor);
    return Duty{unit == QLatin1String("w") ? *value / 1000 : *value, revolutions, serviceFactor};
}

} // namespace riband::ui
