#include "core/cutting/planner/state.h"

#include <algorithm>

namespace riband::cutting::planner {

bool State::done() const {
    return std::all_of(demand.begin(), demand.end(), [](std::int64_t belts) { return belts == 0; });
}

State startOf(const Model& model) {
    State state;
    for (const Item& item : model.items)
        state.demand.push_back(item.demand);
    for (const Kind& kind : model.kinds)
        state.free.push_back(static_cast<std::int64_t>(kind.pieces.size()));
    return state;
}

namespace {

/// The width, kerfs included, that must be served however the budget is used.
std::int64_t mustServe(const Model& model, const State& state) {
    std::int64_t gross = 0;
    double thinnest = 0; // most gross for a unit of width: what the budget could save at best
    for (std::size_t i = 0; i < state.demand.size(); ++i) {
        if (state.demand[i] == 0) continue;
        const Item& item = model.items[i];
        gross += state.demand[i] * item.gross;
        thinnest = std::max(thinnest, static_cast<double>(item.gross) / static_cast<double>(item.width));
    }
    return gross - static_cast<std::int64_t>(thinnest * static_cast<double>(state.budget)) - 1 +
           (state.budget == 0);
}

/// Belts of which no two come from one piece, when all must be served.
std::int64_t loners(const Model& model, const State& state, std::int64_t room) {
    if (state.budget > 0) return 0;
    std::int64_t belts = 0;
    for (std::size_t i = 0; i < state.demand.size(); ++i)
        if (2 * model.items[i].gross > room) belts += state.demand[i];
    return belts;
}

} // namespace

std::optional<std::int64_t> fewestMountings(const Model& model, const State& state) {
    std::int64_t need = mustServe(model, state), mountings = 0, widest = 0;
    for (std::size_t kind = state.free.size(); kind-- > 0 && need > 0;) {
        const std::int64_t room = model.kinds[kind].extent - model.trim - model.end;
        if (state.free[kind] == 0 || room <= 0) continue;
        widest = std::max(widest, room);
        const std::int64_t pieces = std::min(state.free[kind], (need + room - 1) / room);
        mountings += pieces;
        need -= pieces * room;
    }
    if (need > 0) return std::nullopt;
    return std::max(mountings, loners(model, state, widest));
}

} // namespace riband::cutting::planner
