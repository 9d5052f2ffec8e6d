#include "core/shop/counting/late_cut.h"

#include "core/shop/cutting_act.h"
#include "core/shop/demand.h"
#include "core/shop/standing.h"

namespace riband::shop::counting {

namespace {

/// What must be left of the piece now for the count to be right.
Extent restOf(const store::StockPiece& piece, const Difference& difference) {
    const std::int64_t rest = piece.extent.count() + difference.gap;
    if (rest < 0) refuse(Refusal::Why::MoreThanThere, piece.code);
    return Extent::of(piece.extent.unit(), rest);
}

void setRest(Yield& yield, const store::StockPiece& piece, const Difference& difference) {
    yield.note = "count";
    if (difference.kind == Difference::Kind::Missing) { // thrown away at the cutter
        yield.left = piece.extent - usedBy(yield);
        yield.keep = false;
    } else {
        yield.left = restOf(piece, difference);
        yield.keep = true;
    }
}

/// The ticket named another piece: its mounting there was never made, but its belts are cut.
void closeElsewhere(const Shop& shop, const CuttingAct& act) {
    store::Orders orders{shop.connection};
    std::set<store::OrderId> touched;
    if (act.ticket.order) touched.insert(*act.ticket.order);
    for (const store::TicketCut& cut : act.mounting.cuts) {
        if (!cut.line) continue;
        const store::OrderId order = orders.orderOf(*cut.line);
        store::OrderLine line = lineOf(orders.at(order), *cut.line);
        line.cut += cut.count;
        orders.changeLine(line);
        touched.insert(order);
    }
    store::Tickets{shop.connection}.setMounting(act.mounting.id, store::MountingState::Void, std::nullopt);
    settleTicket(shop, act.ticket.id);
    for (const store::OrderId order : touched)
        settleOrder(shop, order);
}

store::MovementId bookMounting(const Shop& shop, const store::StockPiece& piece, const Difference& difference,
                               const Proposal& proposal) {
    CuttingAct act{shop, *proposal.mounting};
    Yield yield = act.yieldOf(act.planned());
    if (!proposal.withTrim) yield.trim = Extent::none(act.unit());
    setRest(yield, piece, difference);
    const auto rules = store::Settings{shop.connection}.read().rulesFor(act.unit());
    const Booked booked = book(shop, piece, yield, {store::Act::Cut, act.cutter()}, rules);
    if (act.piece.id == piece.id)
        act.close(booked.movement, act.planned());
    else
        closeElsewhere(shop, act);
    return booked.movement;
}

store::MovementId bookLine(const Shop& shop, const store::StockPiece& piece, const Difference& difference,
                           const Proposal& proposal) {
    const Unit unit = difference.unit;
    const auto rules = store::Settings{shop.connection}.read().rulesFor(unit);
    const Extent none = Extent::none(unit), belts = Extent::of(unit, proposal.each) * proposal.belts;
    Yield yield{
        proposal.withTrim ? rules.trim : none, rules.kerf * proposal.belts, {}, {}, none, none, true, ""};
    yield.sold.emplace(*proposal.line, belts);
    setRest(yield, piece, difference);
    const Booked booked = book(shop, piece, yield, {store::Act::Cut, std::nullopt}, rules);
    store::Orders orders{shop.connection};
    const store::OrderId order = orders.orderOf(*proposal.line);
    store::OrderLine line = lineOf(orders.at(order), *proposal.line);
    line.cut += proposal.belts;
    orders.changeLine(line);
    settleOrder(shop, order);
    return booked.movement;
}

} // namespace

store::MovementId bookLateCut(const Shop& shop, const store::StockPiece& piece, const Difference& difference,
                              const Proposal& proposal) {
    return proposal.mounting ? bookMounting(shop, piece, difference, proposal)
                             : bookLine(shop, piece, difference, proposal);
}

} // namespace riband::shop::counting
