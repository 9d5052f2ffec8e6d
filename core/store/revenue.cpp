#include "core/store/revenue.h"

#include "core/store/statement.h"

namespace riband::store {
namespace {

// One row an order line: what the ledger sold of it in the span, and its part of the price, rounded to the
// minor unit (halves up). Most lines are cut at once and need no rounding.
#define SOLD_LINES                                                                                           \
    "(SELECT l.id AS line, l.belt AS belt, l.sales_order AS sales_order, sum(p.amount) AS width,"            \
    " sum(p.cost) AS cost, max(p.cost = 0 AND p.amount <> 0) AS uncosted,"                                   \
    " CASE WHEN sum(p.amount) = l.extent * l.quantity THEN l.price_total - l.price_tax"                      \
    " ELSE (2 * (l.price_total - l.price_tax) * sum(p.amount) + l.extent * l.quantity)"                      \
    " / (2 * l.extent * l.quantity) END AS revenue"                                                          \
    " FROM movement m JOIN posting p ON p.movement = m.id AND p.account = 4"                                 \
    " JOIN order_line l ON l.id = p.line WHERE m.at_ms >= ? AND m.at_ms < ? GROUP BY l.id) s "

// After lines and width.
#define MONEY                                                                                                \
    "sum(s.revenue), sum(CASE WHEN s.uncosted THEN 0 ELSE s.cost END),"                                      \
    " sum(CASE WHEN s.uncosted THEN s.revenue ELSE 0 END)"

Sale saleOf(const Statement& row, int first) {
    return {row.get<std::int64_t>(first), row.get<std::int64_t>(first + 1), row.get<Money>(first + 2),
            row.get<Money>(first + 3), row.get<Money>(first + 4)};
}

} // namespace

std::vector<BeltSale> Revenue::byBelt(Moment from, Moment until) const {
    Statement rows{connection_,
                   "SELECT s.belt, count(*), sum(s.width), " MONEY " FROM " SOLD_LINES "GROUP BY s.belt",
                   from, until};
    std::vector<BeltSale> sales;
    while (rows.next())
        sales.push_back({rows.get<BeltId>(0), saleOf(rows, 1)});
    return sales;
}

std::vector<CustomerSale> Revenue::byCustomer(Moment from, Moment until) const {
    Statement rows{connection_,
                   "SELECT coalesce(c.name, ''), count(*), sum(s.width), " MONEY " FROM " SOLD_LINES
                   "JOIN sales_order o ON o.id = s.sales_order"
                   " LEFT JOIN customer c ON c.id = o.customer GROUP BY o.customer",
                   from, until};
    std::vector<CustomerSale> sales;
    while (rows.next())
        sales.push_back({rows.get<std::string>(0), saleOf(rows, 1)});
    return sales;
}

Sale Revenue::total(Moment from, Moment until) const {
    // One row, also where nothing was sold: what is null reads as nothing.
    Statement row{connection_, "SELECT count(*), 0, " MONEY " FROM " SOLD_LINES, from, until};
    row.next();
    return saleOf(row, 0);
}

std::vector<BelowCost> Revenue::belowCost(Moment from, Moment until, std::size_t most) const {
    Statement rows{
        connection_,
        "SELECT o.code, o.made_ms, s.belt, coalesce(c.name, ''), s.revenue, s.cost FROM " SOLD_LINES
        "JOIN sales_order o ON o.id = s.sales_order LEFT JOIN customer c ON c.id = o.customer"
        " WHERE s.revenue < s.cost ORDER BY s.revenue - s.cost, s.line LIMIT ?",
        from, until, most};
    std::vector<BelowCost> lines;
    while (rows.next())
        lines.push_back({rows.get<std::string>(0), rows.get<Moment>(1), rows.get<BeltId>(2),
                         rows.get<std::string>(3), rows.get<Money>(4), rows.get<Money>(5)});
    return lines;
}

std::vector<OrdersMade> Revenue::made(Moment from, Moment until) const {
    Statement rows{connection_,
                   "SELECT o.state, count(DISTINCT o.id),"
                   " coalesce(sum(CASE WHEN l.cancelled < l.quantity THEN l.price_total ELSE 0 END), 0)"
                   " FROM sales_order o LEFT JOIN order_line l ON l.sales_order = o.id"
                   " WHERE o.state BETWEEN 0 AND 5 AND o.made_ms >= ? AND o.made_ms < ?"
                   " GROUP BY o.state ORDER BY o.state",
                   from, until};
    std::vector<OrdersMade> made;
    while (rows.next())
        made.push_back({rows.get<OrderState>(0), rows.get<std::int64_t>(1), rows.get<Money>(2)});
    return made;
}

} // namespace riband::store
