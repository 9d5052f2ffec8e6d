#include "core/store/sold_lines.h"

#include "core/store/statement.h"

namespace riband::store {

std::vector<SoldLine> soldLines(Connection& connection, Moment from, Moment until, const SalesOf& whose) {
    // The price of a line that was cut in several spans is shared by width, rounded to the minor unit, halves
    // up.
    Statement rows{connection,
                   "SELECT o.code, o.made_ms, l.belt, coalesce(c.name, ''), sum(p.amount),"
                   " CASE WHEN sum(p.amount) = l.extent * l.quantity THEN l.price_total - l.price_tax"
                   " ELSE (2 * (l.price_total - l.price_tax) * sum(p.amount) + l.extent * l.quantity)"
                   " / (2 * l.extent * l.quantity) END, sum(p.cost), max(p.cost = 0 AND p.amount <> 0)"
                   " FROM movement m JOIN posting p ON p.movement = m.id AND p.account = 4"
                   " JOIN order_line l ON l.id = p.line JOIN sales_order o ON o.id = l.sales_order"
                   " LEFT JOIN customer c ON c.id = o.customer WHERE m.at_ms >= ? AND m.at_ms < ?"
                   " AND (? IS NULL OR l.belt = ?) AND (? IS NULL OR coalesce(c.name, '') = ?)"
                   " GROUP BY l.id ORDER BY o.made_ms DESC, l.id",
                   from,
                   until,
                   whose.belt,
                   whose.belt,
                   whose.customer,
                   whose.customer};
    std::vector<SoldLine> lines;
    while (rows.next())
        lines.push_back({rows.get<std::string>(0), rows.get<Moment>(1), rows.get<BeltId>(2),
                         rows.get<std::string>(3), rows.get<std::int64_t>(4), rows.get<Money>(5),
                         rows.get<Money>(6), rows.get<std::int64_t>(7) == 0});
    return lines;
}

std::vector<OrderId> ordersMadeIn(Connection& connection, Moment from, Moment until, OrderState state) {
    Statement rows{connection,
                   "SELECT id FROM sales_order WHERE state = ? AND made_ms >= ? AND made_ms < ?"
                   " ORDER BY made_ms, id",
                   state, from, until};
    std::vector<OrderId> orders;
    while (rows.next())
        orders.push_back(rows.get<OrderId>(0));
    return orders;
}

} // namespace riband::store
