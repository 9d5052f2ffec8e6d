#include "app/import.h"

#include "app/json.h"
#include "app/plan_files.h"
#include "core/shop/receive.h"

#include <QJsonArray>

namespace riband::app {

namespace {

/// What is known of a piece's age: the day it was made, or else the day it came.
std::optional<Date> ageOf(TableFile& file, const CsvTable::Row& row) {
    const auto received = dateOf(file, row, "received");
    const auto made = dateOf(file, row, "made");
    return made ? made : received;
}

Money costOf(TableFile& file, const CsvTable::Row& row, const Currency& currency) {
    if (file.field(row, "cost").empty()) return Money::minor(0);
    const auto read = [&currency](const std::string& text) -> Read<Money> {
        const auto money = readMoney(text, currency);
        if (money && *money < Money::minor(0)) return TextFault::Negative;
        return money;
    };
    return file.quantity<Money>(row, "cost", read).value_or(Money::minor(0));
}

std::optional<shop::Delivery> deliveryOf(TableFile& file, const CsvTable::Row& row,
                                         const belt::Tables& tables, const Currency& currency) {
    const auto kind = kindOf(file, row);
    const auto made = ageOf(file, row);
    const Money cost = costOf(file, row, currency);
    const auto belt = beltOf(file, row, tables);
    const auto extent = belt ? pieceExtentOf(file, row, *belt, tables) : std::nullopt;
    if (!kind || !extent) return std::nullopt;
    return shop::Delivery{.belt = *belt,
                          .sleeves = 1,
                          .extent = *extent,
                          .costEach = cost,
                          .batch = file.field(row, "batch"),
                          .made = made,
                          .place = file.field(row, "place"),
                          .kind = *kind};
}

} // namespace

QJsonObject importStock(const shop::Shop& shop, const QString& csv) {
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    TableFile file(csv, {"belt", "kind", "width_mm", "ribs"});
    file.refuseOthers(
        {"belt", "kind", "width_mm", "ribs", "received", "made", "place", "batch", "cost", "piece"});
    std::vector<shop::Delivery> deliveries;
    for (const auto& row : file.rows())
        if (auto delivery = deliveryOf(file, row, *shop.tables, currency))
            deliveries.push_back(std::move(*delivery));
    file.refuseFaults();
    const auto made = shop::receive(shop, deliveries);
    QJsonArray pieces;
    for (std::size_t i = 0; i < made.size(); ++i)
        pieces << QJsonObject{{"line", static_cast<qint64>(file.rows()[i].line)},
                              {"was", textValue(file.field(file.rows()[i], "piece"))},
                              {"piece", textValue(store::Pieces{shop.connection}.at(made[i]).code)}};
    return {{"rows", static_cast<qint64>(made.size())}, {"pieces", pieces}};
}

} // namespace riband::app
