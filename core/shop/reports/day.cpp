#include "core/shop/reports/office.h"

namespace riband::shop {

DayReport dayReport(const Shop& shop, Date day) {
    const Moment from{day}, until{day + std::chrono::days{1}};
    DayReport report;
    report.made = store::ordersMade(shop.connection, from, until);
    for (const store::Payment kind :
         {store::Payment::Cash, store::Payment::Card, store::Payment::Transfer, store::Payment::Invoice})
        report.takings.push_back({kind, 0, Money::minor(0)});
    for (const store::Taking& taking : store::Takings{shop.connection}.between(from, until)) {
        DayReport::Paid& paid = report.takings[static_cast<std::size_t>(taking.kind)];
        ++paid.orders;
        paid.amount = paid.amount + taking.amount;
        report.taken = report.taken + taking.amount;
    }
    const store::Tickets tickets{shop.connection};
    const store::Orders orders{shop.connection};
    report.openTickets = static_cast<std::int64_t>(tickets.inState(store::TicketState::Open).size());
    report.openOrders = static_cast<std::int64_t>(orders.inState(store::OrderState::Open).size());
    report.uncollected = orders.inState(store::OrderState::Ready);
    return report;
}

} // namespace riband::shop
