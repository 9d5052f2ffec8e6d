#include "app/report_json.h"

#include "app/json.h"
#include "core/measure/text.h"

#include <map>

namespace riband::app {

namespace {

using shop::Balance;
using shop::Sees;
using shop::WasteRow;

QJsonValue amount(Money money, const Currency& currency) {
    return QString::fromStdString(printMoney(money, currency)).toDouble();
}

/// The figures of a balance, the reasons of scrap inside of it, each through `value`.
template <class Amount, class Value>
QJsonObject balanceJson(const Balance<Amount>& balance, Value value) {
    QJsonObject json, scrap;
    for (const auto& figure : shop::figures<Amount>) {
        const QString name = QLatin1String(figure.name);
        const bool scrapped = name == QLatin1String("stub") || name == QLatin1String("miscut") ||
                              name == QLatin1String("damaged") || name == QLatin1String("aged");
        (scrapped ? scrap : json).insert(name, value(balance.*figure.value));
    }
    json.insert("scrap", scrap);
    return json;
}

/// `lost` is what all groups of its unit lost.
QJsonObject rowJson(const WasteRow& row, std::int64_t lost, const Currency& currency, Sees sees) {
    QJsonObject json = balanceJson(row.width, [&](std::int64_t count) { return inUnit(row.unit, count); });
    const auto yield = row.width.yield();
    json.insert("group", textValue(row.group));
    json.insert("unit", row.unit == Unit::Rib ? "ribs" : "mm");
    json.insert("yield", yield ? QJsonValue(*yield) : QJsonValue(QJsonValue::Null));
    json.insert("shelf", inUnit(row.unit, row.shelf));
    json.insert("area_m2", QJsonObject{{"used", row.area.used()}, {"lost", row.area.lost()}});
    json.insert("lost_kg", row.weightKnown ? QJsonValue(row.weight.lost()) : QJsonValue(QJsonValue::Null));
    json.insert("lost_share",
                lost > 0 ? QJsonValue(static_cast<double>(row.width.lost()) / static_cast<double>(lost))
                         : QJsonValue(QJsonValue::Null));
    if (sees == Sees::Cost)
        json.insert("money", balanceJson(row.money, [&](std::int64_t minor) {
                        return amount(Money::minor(minor), currency);
                    }));
    return json;
}

QJsonArray totalsJson(const std::vector<WasteRow>& rows, const Currency& currency, Sees sees) {
    QJsonArray json;
    for (const Unit unit : {Unit::Micrometre, Unit::Rib})
        for (const WasteRow& row : rows)
            if (row.unit == unit) {
                const WasteRow total = shop::totalOf(rows, unit);
                json << rowJson(total, total.width.lost(), currency, sees);
                break;
            }
    return json;
}

QJsonValue lastDay(const shop::Period& period) {
    return textValue(printDate(dayOf(period.until - std::chrono::milliseconds{1})));
}

/// How much of a period the book can tell.
QString wordFor(shop::Told told) {
    const char* const words[] = {"whole", "part", "nothing"};
    return QLatin1String(words[static_cast<std::size_t>(told)]);
}

QJsonObject otherJson(const shop::Shop& shop, const shop::Period& period, shop::Told told,
                      const Currency& currency, Sees sees) {
    const auto rows = shop::waste(shop, period, shop::GroupBy::All);
    return {{"from", textValue(printDate(dayOf(period.from)))},
            {"to", lastDay(period)},
            {"told", wordFor(told)},
            {"total", totalsJson(rows, currency, sees)}};
}

/// What a group sold and lost in an earlier period; null where the book begins later.
QJsonValue thenJson(Unit unit, const std::optional<shop::ComparedRow::Then>& then, const Currency& currency,
                    Sees sees) {
    if (!then) return QJsonValue::Null;
    const auto yield = then->width.yield();
    QJsonObject json{{"sold", inUnit(unit, then->width.sold)},
                     {"lost", inUnit(unit, then->width.lost())},
                     {"yield", yield ? QJsonValue(*yield) : QJsonValue(QJsonValue::Null)}};
    if (sees == Sees::Cost) json.insert("cost_lost", amount(Money::minor(then->money.lost()), currency));
    return json;
}

} // namespace

QJsonArray jsonOf(const shop::ReportTable& table) {
    QJsonArray rows;
    for (const auto& row : table.rows) {
        QJsonObject json;
        for (std::size_t i = 0; i < row.size(); ++i)
            json.insert(QString::fromStdString(table.columns[i]),
                        row[i].empty() ? QJsonValue(QJsonValue::Null) : textValue(row[i]));
        rows << json;
    }
    return rows;
}

QJsonObject wasteJson(const shop::Shop& shop, const shop::Compared& compared, const QString& by,
                      const Currency& currency, Sees sees) {
    std::vector<WasteRow> rows;
    for (const shop::ComparedRow& row : compared.groups.front())
        rows.push_back(row.now);
    QJsonArray groups;
    std::map<Unit, std::int64_t> lost;
    for (const Unit unit : {Unit::Micrometre, Unit::Rib})
        lost[unit] = shop::totalOf(rows, unit).width.lost();
    for (const shop::ComparedRow& row : compared.groups.front()) {
        QJsonObject json = rowJson(row.now, lost[row.now.unit], currency, sees);
        json.insert("before", thenJson(row.now.unit, row.before, currency, sees));
        json.insert("year_before", thenJson(row.now.unit, row.yearBefore, currency, sees));
        groups << json;
    }
    return {{"from", textValue(printDate(dayOf(compared.period.from)))},
            {"to", lastDay(compared.period)},
            {"so_far", shop::isRunning(compared.period, dayOf(shop.now()))},
            {"by", by},
            {"groups", groups},
            {"total", totalsJson(rows, currency, sees)},
            {"period_before", otherJson(shop, compared.before, compared.beforeTold, currency, sees)},
            {"year_before", otherJson(shop, compared.yearBefore, compared.yearBeforeTold, currency, sees)}};
}

QJsonObject dayJson(const shop::DayReport& report, Date day, const Currency& currency) {
    QJsonObject made;
    const char* const states[] = {"parked", "quoted", "open", "ready", "handed_over", "cancelled"};
    for (const store::OrdersMade& orders : report.made)
        made.insert(QLatin1String(states[static_cast<std::size_t>(orders.state)]),
                    QJsonObject{{"orders", static_cast<qint64>(orders.orders)},
                                {"total", amount(orders.total, currency)}});
    return {{"day", textValue(printDate(day))},
            {"orders_made", made},
            {"takings", jsonOf(shop::takingsOf(report, currency))},
            {"taken", amount(report.taken, currency)},
            {"open_tickets", static_cast<qint64>(report.openTickets)},
            {"open_orders", static_cast<qint64>(report.openOrders)},
            {"uncollected", jsonOf(shop::uncollectedOf(report, day, currency))}};
}

} // namespace riband::app
