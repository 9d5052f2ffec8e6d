#include "core/store/takings.h"

#include "core/store/statement.h"

namespace riband::store {
namespace {

// The schema names them by number; landed values never change.
static_assert(static_cast<int>(Payment::Cash) == 0 && static_cast<int>(Payment::Invoice) == 3);

Taking takingOf(const Statement& row) {
    return {row.get<OrderId>(0), row.get<Moment>(1), row.get<PersonId>(2), row.get<Payment>(3),
            row.get<Money>(4)};
}

} // namespace

void Takings::add(const Taking& taking) {
    change(connection_,
           "INSERT INTO taking (sales_order, at_ms, person, kind, amount) VALUES (?, ?, ?, ?, ?)",
           taking.order, taking.at, taking.person, taking.kind, taking.amount);
}

std::optional<Taking> Takings::of(OrderId order) const {
    Statement row{connection_,
                  "SELECT sales_order, at_ms, person, kind, amount FROM taking WHERE sales_order = ?", order};
    return row.next() ? std::optional{takingOf(row)} : std::nullopt;
}

std::vector<Taking> Takings::between(Moment from, Moment until) const {
    Statement rows{connection_,
                   "SELECT sales_order, at_ms, person, kind, amount FROM taking"
                   " WHERE at_ms >= ? AND at_ms < ? ORDER BY at_ms, sales_order",
                   from, until};
    std::vector<Taking> takings;
    while (rows.next())
        takings.push_back(takingOf(rows));
    return takings;
}

} // namespace riband::store
