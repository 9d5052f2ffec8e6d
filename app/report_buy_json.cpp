#include "app/json.h"
#include "app/report.h"
#include "core/measure/text.h"
#include "ui/words/buying_words.h"

#include <QJsonArray>

#include <cmath>

namespace riband::app {

namespace {

using foresight::Keeping;
using foresight::Method;
using foresight::Pattern;

// Fixed words of the documented form, so neither translated nor changed.
QString wordFor(Method method) {
    switch (method) {
    case Method::Mean:
        return QStringLiteral("mean");
    case Method::Smoothing:
        return QStringLiteral("smoothing");
    case Method::Croston:
        return QStringLiteral("croston");
    case Method::SyntetosBoylan:
        return QStringLiteral("sba");
    case Method::TeunterSyntetosBabai:
        return QStringLiteral("tsb");
    case Method::Bootstrap:
        break;
    }
    return QStringLiteral("bootstrap");
}

QString wordFor(Pattern pattern) {
    switch (pattern) {
    case Pattern::None:
        return QStringLiteral("none");
    case Pattern::Smooth:
        return QStringLiteral("smooth");
    case Pattern::Erratic:
        return QStringLiteral("erratic");
    case Pattern::Intermittent:
        return QStringLiteral("intermittent");
    case Pattern::Lumpy:
        break;
    }
    return QStringLiteral("lumpy");
}

QString wordFor(Keeping keeping) {
    switch (keeping) {
    case Keeping::Keep:
        return QStringLiteral("keep");
    case Keeping::NotAskedFor:
        return QStringLiteral("not_asked_for");
    case Keeping::TooSlow:
        return QStringLiteral("too_slow");
    case Keeping::CostsMoreThanItEarns:
        break;
    }
    return QStringLiteral("costs_more_than_it_earns");
}

/// Expectations are rounded to what can be meant by them.
double toPlaces(double value, int places) {
    const double tens = std::pow(10, places);
    return std::round(value * tens) / tens;
}

class Form {
public:
    Form(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook)
        : list_{list}, outlook_{outlook} {}

    QJsonObject whole() const {
        QJsonArray lines;
        for (const shop::PurchaseLine& line : list_.lines)
            lines << lineOf(line);
        return {{"day", textValue(printDate(outlook_.today))},
                {"days_known", outlook_.days},
                {"service", outlook_.terms.service},
                {"review_days", outlook_.terms.reviewDays},
                {"currency", textValue(std::string{currency().code()})},
                {"budget", list_.budget ? money(*list_.budget) : QJsonValue{QJsonValue::Null}},
                {"wanted", money(list_.wanted)},
                {"cost", money(list_.cost)},
                {"keeps", expected(list_.keeps)},
                {"keeps_at_most", expected(list_.keepsAtMost)},
                {"proven", list_.proven},
                {"lines", lines}};
    }

private:
    const Currency& currency() const { return outlook_.settings.prices.currency; }
    QJsonValue money(Money amount) const {
        return QString::fromStdString(printMoney(amount, currency())).toDouble();
    }
    /// Expected minor units, as an amount.
    QJsonValue expected(double minor) const {
        return money(Money::minor(static_cast<std::int64_t>(std::llround(minor))));
    }
    static QJsonValue width(double expectedWidth, Unit unit) {
        return unit == Unit::Rib ? toPlaces(expectedWidth, 2) : toPlaces(expectedWidth / 1000, 2);
    }

    QJsonObject forecastOf(const shop::PurchaseLine& line, Unit unit) const {
        const foresight::Forecast& forecast = line.advice.forecast;
        QJsonArray trials;
        for (const foresight::Trial& trial : forecast.trials)
            trials << QJsonObject{{"method", wordFor(trial.method)},
                                  {keyOf("error", unit), width(trial.error, unit)},
                                  {keyOf("bias", unit), width(trial.bias, unit)}};
        return {{"method", wordFor(forecast.method)},
                {"pattern", wordFor(line.advice.pattern.pattern)},
                {"interval_weeks", toPlaces(line.advice.pattern.interval, 3)},
                {"variation", toPlaces(line.advice.pattern.variation, 3)},
                {keyOf("a_week", unit), width(forecast.expected, unit)},
                {"tests", forecast.origins},
                {"trials", trials}};
    }

    QJsonArray widthsOf(const shop::PurchaseLine& line, Unit unit) const {
        QJsonArray widths;
        for (const foresight::WidthAdvice& each : line.advice.widths)
            widths << QJsonObject{
                {keyOf("sleeve", unit), inUnit(unit, each.sleeve.width)},
                {"each", each.sleeve.cost > 0 ? expected(each.sleeve.cost) : QJsonValue{QJsonValue::Null}},
                {"delivery_days", each.sleeve.leadDays},
                {"waste_percent", toPlaces(100 * each.consumption.wasteShare(), 2)},
                {"sleeves_a_year", toPlaces(each.sleevesPerYear, 3)},
                {"cost_a_year", expected(each.year.total())}};
        return widths;
    }

    static QJsonArray preCutOf(const shop::PurchaseLine& line, Unit unit) {
        QJsonArray preCut;
        for (const auto& each : line.advice.preCut)
            preCut << QJsonObject{{keyOf("width", unit), inUnit(unit, each.width)}, {"belts", each.belts}};
        return preCut;
    }

    QJsonObject lineOf(const shop::PurchaseLine& line) const {
        const shop::BuyingBelt& belt = outlook_.belts[line.belt];
        const Unit unit = belt.belt.unit;
        const foresight::BuyingAdvice& advice = line.advice;
        return {{"belt", textValue(belt.belt.designation)},
                {"sleeves", line.sleeves},
                {"wanted", line.wanted},
                {keyOf("sleeve", unit), inUnit(line.width)},
                {"each", line.costKnown() ? money(line.each) : QJsonValue{QJsonValue::Null}},
                {"cost", line.costKnown() ? money(line.cost()) : QJsonValue{QJsonValue::Null}},
                {"delivery_days", line.leadDays},
                {"sleeves_here", belt.here()},
                {"sleeves_expected", belt.expected},
                {"remnants_here", static_cast<int>(belt.buying.remnants.size())},
                {"risk", toPlaces(advice.risk, 4)},
                {"horizon_days", advice.horizonDays},
                {"reorder_point", advice.reorderPoint},
                {"lot", advice.lot},
                {"orders_a_year", toPlaces(advice.ordersPerYear, 2)},
                {keyOf("asked_a_year", unit), width(advice.widthPerYear, unit)},
                {"forecast", forecastOf(line, unit)},
                {"widths", widthsOf(line, unit)},
                {"keeping", wordFor(advice.keeping)},
                {"earns_a_year", expected(advice.earnsPerYear)},
                {"pre_cut", preCutOf(line, unit)},
                {"why", ui::whyOf(line, outlook_).join(QLatin1Char(' '))}};
    }

    const shop::PurchaseList& list_;
    const shop::BuyingOutlook& outlook_;
};

} // namespace

QJsonObject jsonOf(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook) {
    return Form{list, outlook}.whole();
}

} // namespace riband::app
