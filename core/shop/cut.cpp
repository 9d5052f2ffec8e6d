#include "core/shop/cut.h"

#include "core/shop/cutting_act.h"
#include "core/shop/demand.h"
#include "core/shop/standing.h"
#include "core/store/upkeep.h"

#include <algorithm>

namespace riband::shop {

namespace {

using Why = Refusal::Why;

void addShelf(Yield& yield, Extent extent, std::int64_t count) {
    yield.shelf.insert(yield.shelf.end(), static_cast<std::size_t>(count), extent);
}

/// What was cut of the ticket's belts.
std::vector<std::int64_t> beltsOf(const CuttingAct& act, const CutRecord& record) {
    std::vector<std::int64_t> belts = act.planned();
    if (!record.ofShelf) return belts;
    std::size_t next = 0;
    for (std::size_t i = 0; i < belts.size(); ++i) {
        if (act.mounting.cuts[i].line) continue;
        const std::int64_t cut = next < record.ofShelf->size() ? (*record.ofShelf)[next++] : 0;
        if (cut < 0 || cut > belts[i]) refuse(Why::BadQuantity, std::to_string(cut));
        belts[i] = cut;
    }
    return belts;
}

/// What the ticket says, and what was cut beside it.
Yield yieldOf(const CuttingAct& act, const CutRecord& record) {
    Yield yield = act.yieldOf(beltsOf(act, record));
    for (const CutRecord::ForShelf& extra : record.forShelf) {
        demandBelts(act.unit(), extra.extent, extra.count);
        addShelf(yield, extra.extent, extra.count);
        yield.kerf = yield.kerf + act.mounting.kerf * extra.count;
    }
    return yield;
}

} // namespace

CutDone recordCut(const Shop& shop, const CutRecord& record) {
    store::Transaction transaction{shop.connection};
    CuttingAct act{shop, record.mounting};
    Yield yield = yieldOf(act, record);
    act.settleRest(yield, record.left, record.keepRest);
    const Booked booked = act.book(yield, store::Act::Cut);
    if (booked.remnant && !record.place.empty())
        store::Upkeep{shop.connection}.relocate(*booked.remnant, record.place, shop.person, shop.now());
    const std::vector<Voided> voided = act.close(booked.movement, beltsOf(act, record));
    std::vector<OrderAfter> orders = ordersAfter(shop, act.mounting.cuts);
    transaction.commit();
    return {booked.movement, booked.remnant, booked.shelf, booked.difference, std::move(orders), voided};
}

bool CutDone::allReady() const {
    return !orders.empty() && std::all_of(orders.begin(), orders.end(),
                                          [](const OrderAfter& order) { return order.missing == 0; });
}

Planned planMissing(const Shop& shop, store::OrderId id) {
    store::Transaction transaction{shop.connection};
    const Promises promises = Promises::read(shop, store::Settings{shop.connection}.read());
    const std::map<store::LineId, std::int64_t> belts = missingOf(openOrder(shop, id), promises);
    if (belts.empty()) refuse(Why::NothingToCut, "");
    const Allotment allotment = allot(shop, wantedOf(shop, belts));
    const std::optional<store::TicketId> ticket = enter(shop, id, allotment);
    settleOrder(shop, id);
    transaction.commit();
    return {ticket, allotment.unserved};
}

} // namespace riband::shop
