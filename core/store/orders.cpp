#include "core/store/orders.h"

#include "core/store/codes.h"
#include "core/store/number_rows.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace riband::store {
namespace {

#define ORDERS                                                                                               \
    "SELECT o.id, o.code, o.state, o.customer, coalesce(c.name, ''), o.person, o.made_ms, o.due_ms, o.note"  \
    " FROM sales_order o LEFT JOIN customer c ON c.id = o.customer "

OrderLine lineOf(const Statement& row) {
    return {.id = row.get<LineId>(0),
            .position = row.get<int>(1),
            .belt = row.get<BeltId>(2),
            .extent = row.extent(4, row.get<Unit>(3)),
            .quantity = row.get<std::int64_t>(5),
            .said = row.get<std::string>(6),
            .price = {row.get<Money>(7), row.get<Money>(8), row.get<Money>(9), row.get<Money>(10),
                      row.get<Money>(11), row.get<Money>(12), row.get<Money>(13)},
            .cut = row.get<std::int64_t>(14),
            .cancelled = row.get<std::int64_t>(15)};
}

std::vector<OrderLine> linesOf(Connection& connection, OrderId order) {
    std::vector<OrderLine> lines;
    Statement rows{connection,
                   "SELECT id, position, belt, unit, extent, quantity, said, price_width, price_cutting,"
                   " price_discount, price_minimum, price_net, price_tax, price_total, cut, cancelled"
                   " FROM order_line WHERE sales_order = ? ORDER BY position",
                   order};
    while (rows.next())
        lines.push_back(lineOf(rows));
    return lines;
}

Order readOrder(Connection& connection, const Statement& row) {
    const auto id = row.get<OrderId>(0);
    return {.id = id,
            .code = row.get<std::string>(1),
            .state = row.get<OrderState>(2),
            .customer = row.get<std::optional<CustomerId>>(3),
            .customerName = row.get<std::string>(4),
            .person = row.get<PersonId>(5),
            .made = row.get<Moment>(6),
            .due = row.get<std::optional<Moment>>(7),
            .note = row.get<std::string>(8),
            .lines = linesOf(connection, id)};
}

void addLine(Connection& connection, OrderId order, std::int64_t position, const OrderLine& line) {
    const LinePrice& price = line.price;
    change(connection,
           "INSERT INTO order_line (sales_order, position, belt, unit, extent, quantity, said, price_width,"
           " price_cutting, price_discount, price_minimum, price_net, price_tax, price_total, cut, cancelled)"
           " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
           order, position, line.belt, line.extent.unit(), line.extent, line.quantity, line.said, price.width,
           price.cutting, price.discount, price.minimum, price.net, price.tax, price.total, line.cut,
           line.cancelled);
}

void changeAt(Connection& connection, std::int64_t position, const OrderLine& line) {
    const LinePrice& price = line.price;
    change(connection,
           "UPDATE order_line SET position = ?, belt = ?, unit = ?, extent = ?, quantity = ?, said = ?,"
           " price_width = ?, price_cutting = ?, price_discount = ?, price_minimum = ?, price_net = ?,"
           " price_tax = ?, price_total = ?, cut = ?, cancelled = ? WHERE id = ?",
           position, line.belt, line.extent.unit(), line.extent, line.quantity, line.said, price.width,
           price.cutting, price.discount, price.minimum, price.net, price.tax, price.total, line.cut,
           line.cancelled, line.id);
}

bool has(const std::vector<OrderLine>& lines, LineId id) {
    return std::ranges::any_of(lines, [&](const OrderLine& line) { return line.id == id; });
}

/// `%` and `_` in what was typed mean themselves.
std::string asPattern(const std::string& text) {
    std::string pattern = "%";
    for (const char c : text) {
        if (c == '%' || c == '_' || c == '\\') pattern += '\\';
        pattern += c;
    }
    return pattern + '%';
}

} // namespace

OrderId Orders::add(const Order& order) {
    const auto id = insert<OrderId>(connection_,
                                    "INSERT INTO sales_order (code, state, customer, person, made_ms, due_ms,"
                                    " note) VALUES (?, ?, ?, ?, ?, ?, ?)",
                                    giveCode(connection_, CodeKind::Order).text(), order.state,
                                    order.customer, order.person, order.made, order.due, order.note);
    std::int64_t position = 0; // as people count: the first line is line 1
    for (const OrderLine& line : order.lines)
        addLine(connection_, id, ++position, line);
    return id;
}

Order Orders::at(OrderId id) const {
    Statement row{connection_, ORDERS "WHERE o.id = ?", id};
    if (!row.next())
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no order " + std::to_string(id.value())};
    return readOrder(connection_, row);
}

std::optional<Order> Orders::byCode(const std::string& code) const {
    Statement row{connection_, ORDERS "WHERE o.code = ?", code};
    if (!row.next()) return std::nullopt;
    return readOrder(connection_, row);
}

std::vector<std::pair<BeltId, std::int64_t>> Orders::timesOrdered() const {
    std::vector<std::pair<BeltId, std::int64_t>> times;
    Statement rows{connection_,
                   "SELECT l.belt, count(*) FROM order_line l JOIN sales_order o ON o.id = l.sales_order"
                   " WHERE o.state IN (?, ?, ?) AND l.cancelled < l.quantity GROUP BY l.belt ORDER BY l.belt",
                   OrderState::Open, OrderState::Ready, OrderState::HandedOver};
    while (rows.next())
        times.emplace_back(rows.get<BeltId>(0), rows.get<std::int64_t>(1));
    return times;
}

namespace {

/// By belt, then by time: dealt out to the belts, which then hardly need sorting, as they come by time but
/// for those that are still open. A fifth of what sorting them all takes.
std::vector<AskedLine> byBelt(const std::vector<AskedLine>& lines) {
    std::unordered_map<std::int64_t, std::size_t> room;
    for (const AskedLine& line : lines)
        ++room[line.belt.value()];
    std::size_t begin = 0;
    for (const auto& [belt, count] : std::map<std::int64_t, std::size_t>{room.begin(), room.end()})
        room[belt] = std::exchange(begin, begin + count);
    std::vector<const AskedLine*> dealt(lines.size());
    for (const AskedLine& line : lines)
        dealt[room[line.belt.value()]++] = &line;
    std::vector<AskedLine> sorted;
    sorted.reserve(lines.size());
    for (const AskedLine* line : dealt)
        sorted.push_back(*line);
    const auto earlier = [](const AskedLine& a, const AskedLine& b) {
        return std::tie(a.at, a.order, a.position) < std::tie(b.at, b.order, b.position);
    };
    for (auto first = sorted.begin(); first != sorted.end();) {
        const auto last = sorted.begin() + static_cast<std::ptrdiff_t>(room[first->belt.value()]);
        if (!std::is_sorted(first, last, earlier)) std::sort(first, last, earlier);
        first = last;
    }
    return sorted;
}

} // namespace

std::vector<AskedLine> Orders::askedSince(Moment from) const {
    std::vector<AskedLine> asked;
    NumberRows rows{connection_,
                    "SELECT l.belt, o.id, o.made_ms, l.unit, l.extent, l.quantity - l.cancelled, l.position"
                    " FROM sales_order o JOIN order_line l ON l.sales_order = o.id"
                    " WHERE o.state IN (?, ?, ?) AND o.made_ms >= ? AND l.cancelled < l.quantity",
                    OrderState::Open,
                    OrderState::Ready,
                    OrderState::HandedOver,
                    from};
    while (rows.next())
        asked.push_back({BeltId{rows.number(0)}, OrderId{rows.number(1)}, rows.moment(2),
                         rows.extent(4, rows.unit(3)), rows.number(5), static_cast<int>(rows.number(6))});
    return byBelt(asked);
}

std::vector<PastLine> Orders::pastOf(BeltId belt, std::size_t most) const {
    std::vector<PastLine> past;
    Statement rows{
        connection_,
        "SELECT o.id, o.made_ms, l.extent, l.quantity - l.cancelled, l.unit FROM order_line l"
        " JOIN sales_order o ON o.id = l.sales_order WHERE l.belt = ? AND o.state IN (?, ?, ?)"
        " AND l.cancelled < l.quantity ORDER BY o.made_ms DESC, o.id DESC, l.position DESC LIMIT ?",
        belt,
        OrderState::Open,
        OrderState::Ready,
        OrderState::HandedOver,
        most};
    while (rows.next())
        past.push_back({rows.get<OrderId>(0), rows.get<Moment>(1), rows.extent(2, rows.get<Unit>(4)),
                        rows.get<std::int64_t>(3)});
    std::ranges::reverse(past);
    return past;
}

std::vector<Order> Orders::inState(OrderState state) const {
    std::vector<Order> orders;
    Statement rows{connection_, ORDERS "WHERE o.state = ? ORDER BY o.made_ms, o.id", state};
    while (rows.next())
        orders.push_back(readOrder(connection_, rows));
    return orders;
}

OrderId Orders::orderOf(LineId line) const {
    const auto order = only<OrderId>(connection_, "SELECT sales_order FROM order_line WHERE id = ?", line);
    if (!order)
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no line " + std::to_string(line.value())};
    return *order;
}

void Orders::setState(OrderId order, OrderState state) {
    change(connection_, "UPDATE sales_order SET state = ? WHERE id = ?", state, order);
}

void Orders::rewrite(OrderId id, const Order& order) {
    change(connection_,
           "UPDATE sales_order SET state = ?, customer = ?, person = ?, made_ms = ?, due_ms = ?, note = ?"
           " WHERE id = ?",
           order.state, order.customer, order.person, order.made, order.due, order.note, id);
    replaceLines(id, order.lines);
}

void Orders::setCustomer(OrderId order, std::optional<CustomerId> customer) {
    change(connection_, "UPDATE sales_order SET customer = ? WHERE id = ?", customer, order);
}

void Orders::replaceLines(OrderId order, const std::vector<OrderLine>& lines) {
    const auto present = linesOf(connection_, order);
    if (std::ranges::any_of(present, [](const OrderLine& line) { return line.cut > 0; }))
        throw std::logic_error("the lines of an order are replaced only while nothing is cut");
    for (const OrderLine& line : present)
        if (!has(lines, line.id)) change(connection_, "DELETE FROM order_line WHERE id = ?", line.id);
    std::int64_t position = 0; // as people count: the first line is line 1
    for (const OrderLine& line : lines) {
        if (has(present, line.id))
            changeAt(connection_, ++position, line);
        else
            addLine(connection_, order, ++position, line);
    }
}

void Orders::changeLine(const OrderLine& line) { changeAt(connection_, line.position, line); }

CustomerId Orders::customerNamed(const std::string& name, const std::string& phone) {
    if (const auto known = only<CustomerId>(
            connection_, "SELECT id FROM customer WHERE name = ? AND phone = ?", name, phone))
        return *known;
    return insert<CustomerId>(connection_, "INSERT INTO customer (name, phone) VALUES (?, ?)", name, phone);
}

std::vector<Customer> Orders::customersLike(const std::string& text, std::size_t most) const {
    std::vector<Customer> customers;
    const std::string pattern = asPattern(text);
    Statement rows{connection_,
                   "SELECT id, name, phone FROM customer"
                   " WHERE lower(name) LIKE lower(?) ESCAPE '\\' OR phone LIKE ? ESCAPE '\\'"
                   " ORDER BY name, phone LIMIT ?",
                   pattern, pattern, most};
    while (rows.next())
        customers.push_back({rows.get<CustomerId>(0), rows.get<std::string>(1), rows.get<std::string>(2)});
    return customers;
}

} // namespace riband::store
