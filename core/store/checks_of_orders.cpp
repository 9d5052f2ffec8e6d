#include "core/store/checks.h"
#include "core/store/orders.h"
#include "core/store/statement.h"

namespace riband::store {
namespace {

using Kind = Disagreement::Kind;

/// Belts cut against belts wanted, of all lines of an order.
bool follows(OrderState state, std::int64_t cut, std::int64_t wanted) {
    switch (state) {
    case OrderState::Open:
        return cut < wanted;
    case OrderState::Ready:
    case OrderState::HandedOver:
        return cut == wanted && cut > 0;
    case OrderState::Parked:
    case OrderState::Quoted:
    case OrderState::Cancelled:
        break;
    }
    return cut == 0;
}

} // namespace

void checkReservations(Connection& connection, Verification& found) {
    Statement promised{connection, "SELECT p.code, p.extent, sum(m.reserved) FROM mounting m"
                                   " JOIN piece p ON p.id = m.piece WHERE m.state = 0"
                                   " GROUP BY p.id HAVING sum(m.reserved) > p.extent"};
    while (promised.next())
        found.disagreements.push_back({Kind::OverReserved, promised.get<std::string>(0),
                                       promised.get<std::int64_t>(1), promised.get<std::int64_t>(2), ""});
    Statement kept{connection, "SELECT p.code, m.reserved, m.trim + sum((c.extent + m.kerf) * c.belts)"
                               " FROM mounting m JOIN piece p ON p.id = m.piece"
                               " JOIN mounting_cut c ON c.mounting = m.id WHERE m.state = 0 GROUP BY m.id"
                               " HAVING m.reserved <> m.trim + sum((c.extent + m.kerf) * c.belts)"};
    while (kept.next())
        found.disagreements.push_back({Kind::OverReserved, kept.get<std::string>(0),
                                       kept.get<std::int64_t>(1), kept.get<std::int64_t>(2), "reserved"});
}

void checkLines(Connection& connection, Verification& found) {
    Statement rows{connection, "SELECT o.code, l.position, l.cut * l.extent, coalesce(s.amount, 0)"
                               " FROM order_line l JOIN sales_order o ON o.id = l.sales_order"
                               " LEFT JOIN (SELECT line, sum(amount) AS amount FROM posting"
                               "  WHERE line IS NOT NULL AND account = 4 GROUP BY line) s ON s.line = l.id"
                               " WHERE l.cut * l.extent <> coalesce(s.amount, 0)"};
    while (rows.next())
        found.disagreements.push_back({Kind::LineCount, rows.get<std::string>(0), rows.get<std::int64_t>(2),
                                       rows.get<std::int64_t>(3), rows.get<std::string>(1)});
}

void checkOrderStates(Connection& connection, Verification& found) {
    Statement rows{connection, "SELECT o.code, o.state, coalesce(sum(l.cut), 0),"
                               " coalesce(sum(l.quantity - l.cancelled), 0)"
                               " FROM sales_order o LEFT JOIN order_line l ON l.sales_order = o.id"
                               " GROUP BY o.id"};
    while (rows.next()) {
        const auto cut = rows.get<std::int64_t>(2), wanted = rows.get<std::int64_t>(3);
        if (!follows(rows.get<OrderState>(1), cut, wanted))
            found.disagreements.push_back({Kind::OrderState, rows.get<std::string>(0), cut, wanted, ""});
    }
}

void checkTicketStates(Connection& connection, Verification& found) {
    Statement states{connection, "SELECT t.code, count(m.id), t.state FROM ticket t"
                                 " LEFT JOIN mounting m ON m.ticket = t.id AND m.state = 0 GROUP BY t.id"
                                 " HAVING (count(m.id) > 0) <> (t.state = 0)"};
    while (states.next())
        found.disagreements.push_back({Kind::TicketState, states.get<std::string>(0),
                                       states.get<std::int64_t>(2), states.get<std::int64_t>(1), ""});
    Statement cuts{connection, "SELECT t.code, m.movement FROM mounting m JOIN ticket t ON t.id = m.ticket"
                               " WHERE m.state = 1 AND NOT EXISTS (SELECT 1 FROM posting g"
                               "  WHERE g.movement = m.movement AND g.piece = m.piece)"};
    while (cuts.next())
        found.disagreements.push_back(
            {Kind::TicketState, cuts.get<std::string>(0), cuts.get<std::int64_t>(1), 0, "movement"});
}

} // namespace riband::store
