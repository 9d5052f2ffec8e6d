#include "core/store/sales.h"

#include "core/store/statement.h"

namespace riband::store {

std::map<BeltId, std::int64_t> Sales::soldSince(Moment from) const {
    std::map<BeltId, std::int64_t> sold;
    Statement rows{connection_,
                   "SELECT m.belt, sum(p.amount) FROM movement m JOIN posting p ON p.movement = m.id"
                   " WHERE m.at_ms >= ? AND p.account = 4 GROUP BY m.belt",
                   from};
    while (rows.next())
        sold.emplace(rows.get<BeltId>(0), rows.get<std::int64_t>(1));
    return sold;
}

std::map<BeltId, std::vector<WidthAsked>> Sales::widthsSince(Moment from) const {
    std::map<BeltId, std::vector<WidthAsked>> asked;
    Statement rows{connection_,
                   "SELECT l.belt, l.unit, l.extent, sum(l.quantity - l.cancelled) AS belts"
                   " FROM order_line l JOIN sales_order o ON o.id = l.sales_order"
                   " WHERE o.made_ms >= ? AND o.state IN (2, 3, 4) GROUP BY l.belt, l.unit, l.extent"
                   " HAVING belts > 0 ORDER BY l.belt, belts DESC, l.extent",
                   from};
    while (rows.next())
        asked[rows.get<BeltId>(0)].push_back({rows.extent(2, rows.get<Unit>(1)), rows.get<std::int64_t>(3)});
    return asked;
}

} // namespace riband::store
