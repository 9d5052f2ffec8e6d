#include "core/store/rack_figures.h"

#include "core/store/number_rows.h"

namespace riband::store {

std::vector<PieceFigures> figuresOfRack(Connection& connection) {
    std::vector<PieceFigures> pieces;
    NumberRows rows{
        connection,
        "SELECT p.belt, b.unit, p.kind, p.extent,"
        " (SELECT coalesce(sum(m.reserved), 0) FROM mounting m WHERE m.piece = p.id AND m.state = 0)"
        " + CASE WHEN p.kind = 2 AND EXISTS (SELECT 1 FROM taken_ready r JOIN ticket t ON t.id = r.ticket"
        "   WHERE r.piece = p.id AND t.state = 0) THEN p.extent ELSE 0 END,"
        " p.cost, coalesce(p.made_day, p.received_day)"
        " FROM piece p JOIN belt b ON b.id = p.belt WHERE p.extent > 0 ORDER BY p.place, p.id"};
    while (rows.next()) {
        const Unit unit = rows.unit(1);
        pieces.push_back({BeltId{rows.number(0)}, static_cast<cutting::PieceKind>(rows.number(2)),
                          rows.extent(3, unit), rows.extent(4, unit), rows.money(5), rows.date(6)});
    }
    return pieces;
}

std::map<BeltId, Unit> unitsOfBelts(Connection& connection) {
    std::map<BeltId, Unit> units;
    NumberRows rows{connection, "SELECT id, unit FROM belt"};
    while (rows.next())
        units.emplace(BeltId{rows.number(0)}, rows.unit(1));
    return units;
}

} // namespace riband::store
