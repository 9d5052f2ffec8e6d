#include "core/shop/cut.h"

#include "core/shop/cutting_act.h"
#include "core/shop/demand.h"
#include "core/shop/standing.h"

namespace riband::shop {

namespace {

using Why = Refusal::Why;

/// At least one belt of the mounting was not well cut, or nothing was spoiled.
void demandGood(const std::vector<std::int64_t>& planned, const std::vector<std::int64_t>& good) {
    if (good.size() != planned.size()) refuse(Why::BadQuantity, std::to_string(good.size()));
    for (std::size_t i = 0; i < good.size(); ++i)
        if (good[i] < 0 || good[i] > planned[i]) refuse(Why::BadQuantity, std::to_string(good[i]));
    if (good == planned) refuse(Why::BadQuantity, std::to_string(good.front()));
}

Yield yieldOf(const CuttingAct& act, const Miscut& miscut) {
    demandExtent(act.unit(), miscut.spoiled);
    Yield yield = act.yieldOf(miscut.good);
    yield.spoiled = miscut.spoiled;
    yield.kerf = yield.kerf + act.mounting.kerf;
    yield.note = miscut.note;
    return yield;
}

/// The customers' belts of the mounting that were not well cut.
std::map<store::LineId, std::int64_t> notCut(const CuttingAct& act, const std::vector<std::int64_t>& good) {
    std::map<store::LineId, std::int64_t> belts;
    for (std::size_t i = 0; i < good.size(); ++i)
        if (const store::TicketCut& cut = act.mounting.cuts[i]; cut.line && cut.count > good[i])
            belts[*cut.line] += cut.count - good[i];
    return belts;
}

} // namespace

Replanned recordMiscut(const Shop& shop, const Miscut& miscut) {
    store::Transaction transaction{shop.connection};
    CuttingAct act{shop, miscut.mounting};
    demandGood(act.planned(), miscut.good);
    Yield yield = yieldOf(act, miscut);
    act.settleRest(yield, miscut.left, std::nullopt);
    const Booked booked = act.book(yield, store::Act::Miscut);
    const std::vector<Voided> voided = act.close(booked.movement, miscut.good);
    const std::map<store::LineId, std::int64_t> belts = notCut(act, miscut.good);
    const Allotment allotment = allot(shop, wantedOf(shop, belts));
    std::optional<store::TicketId> ticket;
    if (act.ticket.order) ticket = enter(shop, *act.ticket.order, allotment);
    if (ticket) putOn(shop, *ticket, act.cutter());
    for (const auto& [line, count] : belts)
        settleOrder(shop, store::Orders{shop.connection}.orderOf(line));
    std::vector<OrderAfter> orders = ordersAfter(shop, act.mounting.cuts);
    transaction.commit();
    return {booked.movement, booked.remnant, ticket, allotment.unserved, std::move(orders), voided};
}

} // namespace riband::shop
