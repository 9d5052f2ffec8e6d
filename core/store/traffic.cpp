#include "core/store/traffic.h"

#include "core/store/statement.h"

namespace riband::store {

std::vector<CutOf> cutsOfPieces(Connection& connection) {
    std::vector<CutOf> cuts;
    Statement rows{connection,
                   "SELECT g.piece, m.person, m.at_ms FROM piece p JOIN posting g ON g.piece = p.id"
                   " JOIN movement m ON m.id = g.movement"
                   " WHERE (p.extent > 0 OR p.id IN (SELECT piece FROM count_scan WHERE piece IS NOT NULL))"
                   " AND g.account = 2 AND m.act IN (1, 3) ORDER BY m.at_ms, m.id"};
    while (rows.next())
        cuts.push_back({rows.get<PieceId>(0), rows.get<PersonId>(1), rows.get<Moment>(2)});
    return cuts;
}

std::vector<std::pair<BeltId, std::int64_t>> soldSince(Connection& connection, Moment from) {
    std::vector<std::pair<BeltId, std::int64_t>> sold;
    Statement rows{connection,
                   "SELECT m.belt, sum(g.amount) FROM movement m JOIN posting g ON g.movement = m.id"
                   " WHERE m.at_ms >= ? AND g.account = 4 GROUP BY m.belt ORDER BY m.belt",
                   from};
    while (rows.next())
        sold.emplace_back(rows.get<BeltId>(0), rows.get<std::int64_t>(1));
    return sold;
}

} // namespace riband::store
