#include "core/store/cutters.h"

#include "core/store/statement.h"

#include <algorithm>
#include <set>
#include <stdexcept>

namespace riband::store {
namespace {

std::vector<cutting::Shaft> shaftsOf(Connection& connection, CutterId cutter) {
    std::vector<cutting::Shaft> shafts;
    Statement rows{connection,
                   "SELECT name, diameter_driven, diameter_tension, usable, closest, farthest"
                   " FROM cutter_shaft WHERE cutter = ? ORDER BY position",
                   cutter};
    while (rows.next())
        shafts.push_back({rows.get<std::string>(0), rows.get<double>(1), rows.get<double>(2),
                          rows.get<double>(3), rows.get<double>(4), rows.get<double>(5)});
    return shafts;
}

void writeShafts(Connection& connection, CutterId cutter, const std::vector<cutting::Shaft>& shafts) {
    change(connection, "DELETE FROM cutter_shaft WHERE cutter = ?", cutter);
    std::int64_t position = 0;
    for (const cutting::Shaft& shaft : shafts)
        change(connection,
               "INSERT INTO cutter_shaft (cutter, position, name, diameter_driven, diameter_tension, usable,"
               " closest, farthest) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
               cutter, position++, shaft.name, shaft.diameterDriven, shaft.diameterTension, shaft.usable,
               shaft.closest, shaft.farthest);
}

CutterId writeOne(Connection& connection, const ShopCutter& each, std::int64_t position) {
    const cutting::Cutter& cutter = each.cutter;
    if (each.id == CutterId{0})
        return insert<CutterId>(connection,
                                "INSERT INTO cutter (position, name, steel_cord, aramid_cord, polyurethane,"
                                " gap_mm) VALUES (?, ?, ?, ?, ?, ?)",
                                position, cutter.name, cutter.cutsSteelCord, cutter.cutsAramidCord,
                                cutter.cutsPolyurethane, cutter.gap);
    change(connection,
           "UPDATE cutter SET position = ?, name = ?, steel_cord = ?, aramid_cord = ?, polyurethane = ?,"
           " gap_mm = ?, gone = 0 WHERE id = ?",
           position, cutter.name, cutter.cutsSteelCord, cutter.cutsAramidCord, cutter.cutsPolyurethane,
           cutter.gap, each.id);
    return each.id;
}

void demandNames(const std::vector<ShopCutter>& cutters) {
    if (cutters.empty()) throw std::invalid_argument("a shop has a cutter");
    std::set<std::string> names;
    for (const ShopCutter& each : cutters)
        if (each.cutter.name.empty() || !names.insert(each.cutter.name).second)
            throw std::invalid_argument("each cutter has a name of its own");
}

} // namespace

std::vector<ShopCutter> Cutters::present() const {
    std::vector<ShopCutter> cutters;
    Statement rows{connection_, "SELECT id, name, steel_cord, aramid_cord, polyurethane, gap_mm FROM cutter"
                                " WHERE gone = 0 ORDER BY position, id"};
    while (rows.next()) {
        const auto id = rows.get<CutterId>(0);
        cutters.push_back({id,
                           {rows.get<std::string>(1), shaftsOf(connection_, id), rows.get<bool>(2),
                            rows.get<bool>(3), rows.get<bool>(4), rows.get<double>(5)}});
    }
    if (cutters.empty()) throw StoreError{StoreError::Kind::Corrupt, connection_.path(), "no cutter"};
    return cutters;
}

void Cutters::write(const std::vector<ShopCutter>& cutters) {
    demandNames(cutters);
    change(connection_, "UPDATE cutter SET gone = 1");
    std::int64_t position = 0;
    for (const ShopCutter& each : cutters) {
        const CutterId id = writeOne(connection_, each, position++);
        writeShafts(connection_, id, each.cutter.shafts);
    }
}

CutterId Cutters::usual() const {
    const auto id =
        only<CutterId>(connection_, "SELECT id FROM cutter WHERE gone = 0 ORDER BY position, id LIMIT 1");
    if (!id) throw StoreError{StoreError::Kind::Corrupt, connection_.path(), "no cutter"};
    return *id;
}

std::vector<Cutters::Named> Cutters::all() const {
    std::vector<Named> all;
    Statement rows{connection_, "SELECT id, name, gone FROM cutter ORDER BY gone, position, id"};
    while (rows.next())
        all.push_back({rows.get<CutterId>(0), rows.get<std::string>(1), rows.get<bool>(2)});
    return all;
}

} // namespace riband::store
