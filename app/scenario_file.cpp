#include "app/scenario_file.h"

#include "app/console.h"
#include "ui/words/tr.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cmath>

namespace riband::app {

namespace {

using namespace foresight;
using ui::Words;

/// The fields of one shop, read with the shop's name at hand for what is wrong.
class Fields {
public:
    Fields(const QJsonObject& object, QString where) : object_{object}, where_{std::move(where)} {}
    double number(const char* name, double usual) const {
        return object_.contains(QLatin1String(name)) ? number(name) : usual;
    }
    double number(const char* name) const {
        const QJsonValue value = object_.value(QLatin1String(name));
        if (!value.isDouble()) fault(name);
        return value.toDouble();
    }
    std::vector<double> numbers(const char* name) const {
        std::vector<double> all;
        for (const auto& value : object_.value(QLatin1String(name)).toArray()) {
            if (!value.isDouble() || value.toDouble() < 0) fault(name);
            all.push_back(value.toDouble());
        }
        return all;
    }
    Fields within(const char* name) const { return {object_.value(QLatin1String(name)).toObject(), where_}; }
    bool has(const char* name) const { return object_.contains(QLatin1String(name)); }
    [[noreturn]] void fault(const char* name) const {
        throw BadInput(
            Words::tr("Scenario “%1”: “%2” is missing or can't be used.").arg(where_, QLatin1String(name)));
    }

private:
    QJsonObject object_;
    QString where_;
};

Scenario readScenario(const QJsonObject& object) {
    Scenario shop;
    const QString name = object.value(QLatin1String("name")).toString();
    const Fields fields{object, name};
    shop.name = name.toStdString();
    auto& setting = shop.setting;
    setting.ribs = object.value(QLatin1String("unit")).toString() == QLatin1String("ribs");
    const auto sized = [&](double spoken) {
        return static_cast<Size>(std::llround(setting.ribs ? spoken : spoken * 1000));
    };
    setting.sleeve = sized(fields.number("sleeve"));
    for (const double width : fields.numbers("listed"))
        setting.listed.push_back(sized(width));
    shop.mix = fields.numbers("mix");
    if (shop.mix.size() != setting.listed.size()) fields.fault("mix");
    shop.otherMix = fields.numbers("season_mix");
    if (!shop.otherMix.empty() && shop.otherMix.size() != shop.mix.size()) fields.fault("season_mix");
    if (fields.has("custom")) {
        const auto odd = fields.within("custom");
        shop.odd = {odd.number("share"), sized(odd.number("from")), sized(odd.number("to")),
                    sized(odd.number("step"))};
        if (shop.odd.from <= 0 || shop.odd.to < shop.odd.from || shop.odd.step <= 0) fields.fault("custom");
    }
    shop.trueOrdersPerYear = fields.number("orders_per_year");
    setting.ordersPerYear = fields.number("guessed_orders_per_year", shop.trueOrdersPerYear);
    shop.years = fields.number("years");
    shop.severalLines = fields.number("several_lines", 0);
    shop.bulk = fields.number("bulk", 0);
    shop.growth = fields.number("growth", 0);
    setting.rackLimit = static_cast<int>(fields.number("rack_limit", 10));
    setting.ageLimitDays = fields.number("age_limit_days", 1800);
    const auto rules = fields.within("rules");
    setting.rules = {sized(rules.number("trim", setting.ribs ? 1 : 2.5)), sized(rules.number("kerf", 0)),
                     sized(rules.number("end", setting.ribs ? 1 : 5)),
                     sized(rules.number("stub", setting.ribs ? 3 : 15)),
                     rules.number("mounting_cost", setting.ribs ? 1.1 : 4) * (setting.ribs ? 1 : 1000)};
    setting.holdingCost = fields.number("holding_cost", setting.ribs ? 0.56 : 2) * (setting.ribs ? 1 : 1000);
    if (const auto fault = setting.fault(); !fault.empty())
        throw BadInput(Words::tr("Scenario “%1”: %2.").arg(name, QString::fromStdString(fault)));
    if (!(shop.trueOrdersPerYear > 0 && shop.trueOrdersPerYear * shop.years < 1e6)) fields.fault("years");
    return shop;
}

QByteArray contentOf(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        throw BadInput(Words::tr("“%1” is neither a scenario nor a file that can be read.").arg(path));
    return file.readAll();
}

} // namespace

std::vector<Scenario> readScenarios(const QByteArray& json) {
    QJsonParseError error;
    const auto document = QJsonDocument::fromJson(json, &error);
    const auto list = document.object().value(QLatin1String("scenarios")).toArray();
    if (error.error != QJsonParseError::NoError)
        throw BadInput(
            Words::tr("Byte %1: this is no JSON: %2.").arg(error.offset + 1).arg(error.errorString()));
    if (list.isEmpty()) throw BadInput(Words::tr("There are no “scenarios” in it."));
    std::vector<Scenario> shops;
    for (const auto& value : list)
        shops.push_back(readScenario(value.toObject()));
    return shops;
}

std::vector<Scenario> scenariosNamed(const QString& name) {
    const auto practice = readScenarios(contentOf(QStringLiteral(":/scenarios/practice.json")));
    if (name == QLatin1String("practice")) return practice;
    for (const auto& shop : practice)
        if (QString::fromStdString(shop.name) == name) return {shop};
    if (name.startsWith(QLatin1String("drawn "))) {
        bool isNumber = false;
        const auto number = name.mid(6).toULongLong(&isNumber);
        if (isNumber) return {drawnScenario(number)};
    }
    return readScenarios(contentOf(name));
}

} // namespace riband::app
