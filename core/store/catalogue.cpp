#include "core/store/catalogue.h"

#include "core/store/search.h"
#include "core/store/statement.h"

#include <algorithm>
#include <map>

namespace riband::store {
namespace {

#define BELT_COLUMNS                                                                                         \
    "id, profile, teeth, length_nm, construction, unit, body, cord, price_thousandths, new_sleeve, "         \
    "sleeve_cost, delivery_days, pre_cut"

StockedBelt beltOf(const Statement& row) {
    belt::Belt belt{row.get<std::string>(1), row.get<std::optional<Teeth>>(2), row.get<Length>(3),
                    row.get<std::string>(4)};
    const auto unit = row.get<Unit>(5);
    std::string designation = belt::designation(belt);
    return {.id = row.get<BeltId>(0),
            .belt = std::move(belt),
            .designation = std::move(designation),
            .unit = unit,
            .body = row.get<std::string>(6),
            .cord = row.get<std::string>(7),
            .price = row.get<WidthPrice>(8),
            .newSleeve = row.extent(9, unit),
            .sleeveCost = row.get<Money>(10),
            .deliveryDays = row.get<int>(11),
            .listed = {},
            .preCut = row.get<PreCut>(12)};
}

std::vector<Extent> listedOf(Connection& connection, BeltId belt, Unit unit) {
    std::vector<Extent> listed;
    Statement rows{connection, "SELECT extent FROM listed_width WHERE belt = ? ORDER BY extent", belt};
    while (rows.next())
        listed.push_back(rows.extent(0, unit));
    return listed;
}

StockedBelt whole(Connection& connection, const Statement& row) {
    StockedBelt belt = beltOf(row);
    belt.listed = listedOf(connection, belt.id, belt.unit);
    return belt;
}

std::vector<StockedBelt> byDesignation(std::vector<StockedBelt> belts) {
    std::ranges::sort(belts, {}, &StockedBelt::designation);
    return belts;
}

void requireUnit(const StockedBelt& belt) {
    const auto other = [&](Extent extent) { return extent.unit() != belt.unit; };
    if (other(belt.newSleeve) || std::ranges::any_of(belt.listed, other))
        throw std::invalid_argument("the widths of a belt are in the unit of the belt");
}

void list(Connection& connection, BeltId belt, const std::vector<Extent>& listed) {
    change(connection, "DELETE FROM listed_width WHERE belt = ?", belt);
    for (const Extent extent : listed)
        change(connection, "INSERT INTO listed_width (belt, extent) VALUES (?, ?)", belt, extent);
}

} // namespace

std::optional<StockedBelt> Catalogue::find(const belt::Belt& belt) const {
    Statement row{connection_,
                  "SELECT " BELT_COLUMNS
                  " FROM belt WHERE profile = ? AND length_nm = ? AND construction = ?",
                  belt.profile, belt.length, belt.construction};
    if (!row.next()) return std::nullopt;
    return whole(connection_, row);
}

StockedBelt Catalogue::at(BeltId id) const {
    Statement row{connection_, "SELECT " BELT_COLUMNS " FROM belt WHERE id = ?", id};
    if (!row.next())
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no belt " + std::to_string(id.value())};
    return whole(connection_, row);
}

std::vector<StockedBelt> Catalogue::all() const {
    std::vector<StockedBelt> belts;
    std::map<BeltId, std::vector<std::int64_t>> listed;
    Statement widths{connection_, "SELECT belt, extent FROM listed_width ORDER BY belt, extent"};
    while (widths.next())
        listed[widths.get<BeltId>(0)].push_back(widths.get<std::int64_t>(1));
    Statement rows{connection_, "SELECT " BELT_COLUMNS " FROM belt"};
    while (rows.next()) {
        auto& belt = belts.emplace_back(beltOf(rows));
        for (const auto extent : listed[belt.id])
            belt.listed.push_back(Extent::of(belt.unit, extent));
    }
    return byDesignation(std::move(belts));
}

std::vector<StockedBelt> Catalogue::ofProfile(const std::string& profile) const {
    std::vector<StockedBelt> belts;
    Statement rows{connection_, "SELECT " BELT_COLUMNS " FROM belt WHERE profile = ?", profile};
    while (rows.next())
        belts.push_back(whole(connection_, rows));
    return byDesignation(std::move(belts));
}

BeltId Catalogue::add(const StockedBelt& belt) {
    requireUnit(belt);
    const auto id = insert<BeltId>(
        connection_,
        "INSERT INTO belt (profile, teeth, length_nm, construction, unit, body, cord, price_thousandths,"
        " new_sleeve, sleeve_cost, delivery_days, pre_cut, words) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
        "?, ?)",
        belt.belt.profile, belt.belt.teeth, belt.belt.length, belt.belt.construction, belt.unit, belt.body,
        belt.cord, belt.price, belt.newSleeve, belt.sleeveCost, belt.deliveryDays, belt.preCut,
        searchWords(belt.belt));
    list(connection_, id, belt.listed);
    return id;
}

void Catalogue::change(const StockedBelt& belt) {
    requireUnit(belt);
    constexpr char between = '\n'; // no word holds one
    const auto before =
        only<std::string>(connection_, "SELECT body || char(10) || cord FROM belt WHERE id = ?", belt.id);
    store::change(connection_,
                  "UPDATE belt SET body = ?, cord = ?, price_thousandths = ?, new_sleeve = ?,"
                  " sleeve_cost = ?, delivery_days = ?, pre_cut = ? WHERE id = ?",
                  belt.body, belt.cord, belt.price, belt.newSleeve, belt.sleeveCost, belt.deliveryDays,
                  belt.preCut, belt.id);
    list(connection_, belt.id, belt.listed);
    // Not at every delivery, which changes the cost of a sleeve.
    if (before != belt.body + between + belt.cord) indexBelt(connection_, belt.id);
}

} // namespace riband::store
