#include "core/shop/batch.h"
#include "core/shop/demand.h"
#include "core/shop/standing.h"

namespace riband::shop {

namespace {

void addWaiting(const store::Order& order, std::map<store::LineId, std::int64_t>& belts) {
    for (const store::OrderLine& line : order.lines)
        if (waiting(line) > 0) belts[line.id] = waiting(line);
}

Ordered planTogether(const Shop& shop, const std::vector<store::OrderId>& ids,
                     std::optional<store::BeltId> only, ForShelf shelf) {
    if (ids.empty()) refuse(Refusal::Why::NothingToCut, "");
    store::Transaction transaction{shop.connection};
    const std::set<store::OrderId> orders{ids.begin(), ids.end()};
    const store::CutterId cutter = commonOf(cuttersOf(shop, orders, only));
    std::map<store::LineId, std::int64_t> belts = release(shop, orders, only);
    for (const store::OrderId id : ids) {
        const store::Order order = openOrder(shop, id);
        if (!only) addWaiting(order, belts);
    }
    if (belts.empty()) refuse(Refusal::Why::NothingToCut, "");
    std::vector<Wanted> wanted = wantedOf(shop, belts);
    for (Wanted& each : wanted)
        each.noShelf = shelf == ForShelf::None;
    const Allotment allotment = allot(shop, wanted, Allotting::ManyOrders);
    demandServed(shop, allotment);
    const std::optional<store::TicketId> ticket = enter(shop, ids.front(), allotment);
    if (ticket) putOn(shop, *ticket, cutter);
    for (const auto& [line, count] : belts)
        settleOrder(shop, store::Orders{shop.connection}.orderOf(line));
    transaction.commit();
    return {ids.front(), ticket, false};
}

} // namespace

Ordered together(const Shop& shop, const std::vector<store::OrderId>& ids,
                 std::optional<store::BeltId> only) {
    return planTogether(shop, ids, only, ForShelf::None);
}

Ordered cutTogether(const Shop& shop, const Batch& batch, ForShelf shelf) {
    return planTogether(shop, batch.orders, batch.outlook.belt.id, shelf);
}

} // namespace riband::shop
