#include "core/store/revenue.h"

#include "core/store/number_rows.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>

namespace riband::store {
namespace {

/// What was sold of a line: its part of the price, rounded to the minor unit (halves up). Most lines are cut
/// at once and need no rounding.
Money partOf(Money price, std::int64_t width, std::int64_t ofLine) {
    if (width == ofLine) return price;
    return Money::minor((2 * price.inMinor() * width + ofLine) / (2 * ofLine));
}

void add(Sale& sum, const Sale& sale) {
    sum.lines += sale.lines;
    sum.width += sale.width;
    sum.revenue = sum.revenue + sale.revenue;
    sum.cost = sum.cost + sale.cost;
    sum.uncosted = sum.uncosted + sale.uncosted;
}

/// Of each customer's orders; 0 for walk-ins.
std::unordered_map<std::int64_t, std::int64_t> customersOf(Connection& connection, OrderId first,
                                                           OrderId last) {
    std::unordered_map<std::int64_t, std::int64_t> customers;
    NumberRows rows{connection,
                    "SELECT id, customer FROM sales_order WHERE id BETWEEN ? AND ? AND customer IS NOT NULL",
                    first, last};
    while (rows.next())
        customers.emplace(rows.number(0), rows.number(1));
    return customers;
}

} // namespace

Revenue::Revenue(Connection& connection, Moment from, Moment until) : connection_{connection} {
    struct Sold {
        std::int64_t line, belt, order, width, cost, ofLine, price;
    };
    std::vector<Sold> sold;
    NumberRows rows{connection,
                    "SELECT l.id, l.belt, l.sales_order, p.amount, p.cost, l.extent * l.quantity,"
                    " l.price_total - l.price_tax"
                    " FROM movement m JOIN posting p ON p.movement = m.id AND p.account = 4"
                    " JOIN order_line l ON l.id = p.line WHERE m.at_ms >= ? AND m.at_ms < ?",
                    from, until};
    while (rows.next())
        sold.push_back({rows.number(0), rows.number(1), rows.number(2), rows.number(3), rows.number(4),
                        rows.number(5), rows.number(6)});
    std::sort(sold.begin(), sold.end(), [](const Sold& a, const Sold& b) { return a.line < b.line; });
    for (auto each = sold.begin(); each != sold.end();) {
        const Sold& line = *each;
        Sale sale{.lines = 1};
        bool isCosted = true;
        for (; each != sold.end() && each->line == line.line; ++each) {
            sale.width += each->width;
            sale.cost = sale.cost + Money::minor(each->cost);
            isCosted = isCosted && (each->cost != 0 || each->width == 0);
        }
        sale.revenue = partOf(Money::minor(line.price), sale.width, line.ofLine);
        if (!isCosted) {
            sale.uncosted = sale.revenue;
            sale.cost = Money::minor(0);
        }
        lines_.push_back({LineId{line.line}, BeltId{line.belt}, OrderId{line.order}, sale});
    }
}

std::vector<BeltSale> Revenue::byBelt() const {
    std::map<BeltId, Sale> sums;
    for (const Line& line : lines_)
        add(sums[line.belt], line.sale);
    std::vector<BeltSale> sales;
    for (const auto& [belt, sale] : sums)
        sales.push_back({belt, sale});
    return sales;
}

std::vector<CustomerSale> Revenue::byCustomer() const {
    if (lines_.empty()) return {};
    const auto [first, last] = std::minmax_element(
        lines_.begin(), lines_.end(), [](const Line& a, const Line& b) { return a.order < b.order; });
    const auto customers = customersOf(connection_, first->order, last->order);
    std::map<std::int64_t, Sale> sums; // walk-ins come first
    for (const Line& line : lines_) {
        const auto at = customers.find(line.order.value());
        add(sums[at == customers.end() ? 0 : at->second], line.sale);
    }
    std::vector<CustomerSale> sales;
    for (const auto& [customer, sale] : sums)
        sales.push_back(
            {only<std::string>(connection_, "SELECT name FROM customer WHERE id = ?", customer).value_or(""),
             sale});
    return sales;
}

Sale Revenue::total() const {
    Sale sum;
    for (const Line& line : lines_)
        add(sum, line.sale);
    sum.width = 0;
    return sum;
}

BelowCost Revenue::told(const Line& line) const {
    Statement row{connection_,
                  "SELECT o.code, o.made_ms, coalesce(c.name, '') FROM sales_order o"
                  " LEFT JOIN customer c ON c.id = o.customer WHERE o.id = ?",
                  line.order};
    row.next();
    return {row.get<std::string>(0), row.get<Moment>(1), line.belt,
            row.get<std::string>(2), line.sale.revenue,  line.sale.cost};
}

std::vector<BelowCost> Revenue::belowCost(std::size_t most) const {
    std::vector<const Line*> below;
    for (const Line& line : lines_)
        if (line.sale.revenue < line.sale.cost) below.push_back(&line);
    const auto gain = [](const Line* line) { return line->sale.revenue - line->sale.cost; };
    std::sort(below.begin(), below.end(), [&](const Line* a, const Line* b) {
        return std::tuple{gain(a), a->id} < std::tuple{gain(b), b->id};
    });
    below.resize(std::min(below.size(), most));
    std::vector<BelowCost> lines;
    for (const Line* line : below)
        lines.push_back(told(*line));
    return lines;
}

std::vector<OrdersMade> ordersMade(Connection& connection, Moment from, Moment until) {
    Statement rows{connection,
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
