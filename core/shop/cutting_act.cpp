#include "core/shop/cutting_act.h"

#include "core/shop/demand.h"
#include "core/shop/standing.h"

#include <set>
#include <stdexcept>

namespace riband::shop {

namespace {

using Why = Refusal::Why;

store::TicketMounting mountingOf(const store::Ticket& ticket, store::MountingId id) {
    for (const store::TicketMounting& mounting : ticket.mountings) {
        if (mounting.id != id) continue;
        if (mounting.state == store::MountingState::Cut) refuse(Why::AlreadyCut, ticket.code);
        if (mounting.state == store::MountingState::Void) refuse(Why::AlreadyDone, ticket.code);
        return mounting;
    }
    throw std::logic_error("the mounting is not of this ticket");
}

void countCut(const Shop& shop, store::LineId id, std::int64_t belts) {
    store::Orders orders{shop.connection};
    store::OrderLine line = lineOf(orders.at(orders.orderOf(id)), id);
    line.cut += belts;
    orders.changeLine(line);
}

} // namespace

CuttingAct::CuttingAct(const Shop& shop, store::MountingId id)
    : ticket{store::Tickets{shop.connection}.ofMounting(id)}, mounting{mountingOf(ticket, id)},
      piece{store::Pieces{shop.connection}.at(mounting.piece)}, shop_{shop},
      settings_{store::Settings{shop.connection}.read()}, rules_{settings_.rulesFor(piece.extent.unit())} {}

std::vector<std::int64_t> CuttingAct::planned() const {
    std::vector<std::int64_t> belts;
    for (const store::TicketCut& cut : mounting.cuts)
        belts.push_back(cut.count);
    return belts;
}

Yield CuttingAct::yieldOf(const std::vector<std::int64_t>& belts) const {
    const Extent none = Extent::none(unit());
    Yield yield{mounting.trim, none, {}, {}, none, none, false, ""};
    for (std::size_t i = 0; i < belts.size(); ++i) {
        const store::TicketCut& cut = mounting.cuts[i];
        yield.kerf = yield.kerf + mounting.kerf * belts[i];
        if (cut.line) {
            Extent& sold = yield.sold.try_emplace(*cut.line, none).first->second;
            sold = sold + cut.extent * belts[i];
        } else {
            yield.shelf.insert(yield.shelf.end(), static_cast<std::size_t>(belts[i]), cut.extent);
        }
    }
    return yield;
}

Extent CuttingAct::leftByFigures(const Yield& yield) const {
    const Extent used = usedBy(yield);
    if (used > piece.extent) refuse(Why::TooNarrow, piece.code);
    return piece.extent - used;
}

void CuttingAct::demandNotPromised() const {
    std::string codes;
    const Promises promises = Promises::read(shop_, settings_);
    for (const Promise& promise : promises.on(piece.id))
        if (promise.mounting != mounting.id) codes += (codes.empty() ? "" : " ") + promise.code;
    if (!codes.empty()) refuse(Why::PieceReserved, codes);
}

void CuttingAct::settleRest(Yield& yield, std::optional<Extent> measured, std::optional<bool> keep) const {
    if (measured && measured->unit() != unit()) refuse(Why::UnitMixed, piece.code);
    if (measured && *measured >= piece.extent) refuse(Why::MoreThanThere, piece.code);
    yield.left = measured ? *measured : leftByFigures(yield);
    const bool held = yield.left >= rules_.stub;
    yield.keep = held && keep.value_or(true);
    if (held && !yield.keep) demandNotPromised();
}

store::CutterId CuttingAct::cutter() const { return settings_.cutterOf(mounting.cutter).id; }

Booked CuttingAct::book(const Yield& yield, store::Act act) const {
    return shop::book(shop_, piece, yield, {act, cutter()}, rules_);
}

std::vector<Voided> CuttingAct::close(store::MovementId movement,
                                      const std::vector<std::int64_t>& belts) const {
    store::Tickets{shop_.connection}.setMounting(mounting.id, store::MountingState::Cut, movement);
    std::set<store::OrderId> orders;
    if (ticket.order) orders.insert(*ticket.order);
    for (std::size_t i = 0; i < belts.size(); ++i) {
        const std::optional<store::LineId>& line = mounting.cuts[i].line;
        if (!line) continue;
        countCut(shop_, *line, belts[i]);
        orders.insert(store::Orders{shop_.connection}.orderOf(*line));
    }
    std::vector<Voided> voided = voidImpossible(shop_, piece.id);
    settleTicket(shop_, ticket.id);
    for (const store::OrderId order : orders)
        settleOrder(shop_, order);
    return voided;
}

} // namespace riband::shop
