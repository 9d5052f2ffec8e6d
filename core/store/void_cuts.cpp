#include "core/store/void_cuts.h"

#include "core/store/statement.h"

namespace riband::store {

std::vector<VoidCut> voidCutsOf(Connection& connection, PieceId piece) {
    std::vector<VoidCut> cuts;
    Statement rows{connection,
                   "SELECT t.code, c.line FROM mounting m JOIN ticket t ON t.id = m.ticket"
                   " JOIN mounting_cut c ON c.mounting = m.id"
                   " WHERE m.piece = ? AND m.state = ? AND c.line IS NOT NULL ORDER BY m.id, c.position",
                   piece, MountingState::Void};
    while (rows.next())
        cuts.push_back({rows.get<std::string>(0), rows.get<LineId>(1)});
    return cuts;
}

} // namespace riband::store
