#include "core/cutting/planner/bound.h"

#include <algorithm>
#include <cmath>

namespace riband::cutting::planner {

std::int64_t costOf(const Model& model, Aim aim, std::size_t kind, std::int64_t left) {
    return aim == Aim::Unserved ? 0 : scale * model.spent(model.kinds[kind], left);
}

Relaxation::Relaxation(const Model& model, Aim aim, const State& state, std::int64_t fewest, Stopper& stopper)
    : model_{model}, aim_{aim}, state_{state}, fewest_{fewest}, stopper_{stopper} {}

std::int64_t Relaxation::mayLack(std::size_t item) const {
    if (aim_ == Aim::Unserved) return state_.demand[item];
    return std::min(state_.demand[item], state_.budget / model_.items[item].width);
}

Prices Relaxation::guess() const {
    double each = 1; // cost of a unit of width
    if (aim_ == Aim::Spent) {
        double least = -1;
        for (std::size_t kind = 0; kind < model_.kinds.size(); ++kind) {
            const Kind& k = model_.kinds[kind];
            const std::int64_t room = k.extent - model_.trim - model_.end;
            if (state_.free[kind] == 0 || room <= 0) continue;
            const double share = static_cast<double>(model_.spent(k, model_.end)) / static_cast<double>(room);
            if (least < 0 || share < least) least = share;
        }
        each = std::max(least, 0.0);
    }
    Prices prices;
    for (std::size_t item = 0; item < model_.items.size(); ++item) {
        const std::int64_t width = aim_ == Aim::Spent ? model_.items[item].gross : model_.items[item].width;
        prices.belts.push_back(
            std::max<std::int64_t>(1, std::llround(each * static_cast<double>(scale * width))));
    }
    prices.budget = state_.budget > 0 ? std::llround(2 * each * static_cast<double>(scale)) : 0;
    return prices;
}

std::optional<Relaxed> Relaxation::at(const Prices& prices) {
    knapsack_.emplace(model_, state_, prices.belts, stopper_);
    if (!knapsack_->ok()) return std::nullopt;
    Relaxed relaxed;
    for (std::size_t item = 0; item < state_.demand.size(); ++item)
        relaxed.bound += prices.belts[item] * state_.demand[item];
    relaxed.bound += prices.mounting * fewest_ - prices.budget * state_.budget;
    relaxed.lacking = state_.demand;
    relaxed.tooFewMountings = fewest_;
    relaxed.overBudget = -state_.budget;
    priceKinds(prices, relaxed);
    takeBest(relaxed);
    leaveUnserved(prices, relaxed);
    return relaxed;
}

void Relaxation::priceKinds(const Prices& prices, Relaxed& relaxed) const {
    relaxed.reduced.assign(model_.kinds.size(), unlimited);
    relaxed.loads.assign(model_.kinds.size(), 0);
    std::int64_t work = 0;
    for (std::size_t kind = 0; kind < model_.kinds.size(); ++kind) {
        if (state_.free[kind] == 0 || (model_.kinds[kind].sleeve && state_.sleeves == 0)) continue;
        const std::int64_t room = model_.kinds[kind].extent - model_.trim;
        for (const Knapsack::Group& group : knapsack_->groups()) {
            for (auto choice = group.choices.rbegin(); choice != group.choices.rend(); ++choice) {
                if (choice->gross + group.reserve > room) continue;
                ++work;
                const std::int64_t reduced =
                    costOf(model_, aim_, kind, room - choice->gross) - choice->price - prices.mounting;
                if (reduced >= relaxed.reduced[kind]) continue;
                relaxed.reduced[kind] = reduced;
                relaxed.loads[kind] = choice->node;
            }
        }
    }
    constexpr std::int64_t around = 4000; // what the linear program and the rest of a round take
    stopper_.now(work + around);
}

/// Every piece whose best load is cheaper than its prices is mounted, the best first while more may be.
void Relaxation::takeBest(Relaxed& relaxed) const {
    std::vector<std::size_t> order;
    for (std::size_t kind = 0; kind < model_.kinds.size(); ++kind)
        if (relaxed.reduced[kind] < 0) order.push_back(kind);
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return relaxed.reduced[a] < relaxed.reduced[b]; });
    std::int64_t sleeves = state_.sleeves, mountings = state_.mountings;
    for (const std::size_t kind : order) {
        std::int64_t pieces = std::min(state_.free[kind], mountings);
        if (model_.kinds[kind].sleeve) sleeves -= pieces = std::min(pieces, sleeves);
        if (pieces == 0) continue;
        mountings -= pieces;
        relaxed.bound += pieces * relaxed.reduced[kind];
        relaxed.tooFewMountings -= pieces;
        const Counts counts = knapsack_->countsOf(relaxed.loads[kind]);
        for (std::size_t item = 0; item < counts.size(); ++item)
            relaxed.lacking[item] -= pieces * counts[item];
    }
}

void Relaxation::leaveUnserved(const Prices& prices, Relaxed& relaxed) const {
    for (std::size_t item = 0; item < state_.demand.size(); ++item) {
        const std::int64_t price = aim_ == Aim::Unserved ? scale : prices.budget;
        const std::int64_t reduced = price * model_.items[item].width - prices.belts[item];
        if (reduced >= 0) continue;
        const std::int64_t belts = mayLack(item);
        relaxed.bound += belts * reduced;
        relaxed.lacking[item] -= belts;
        relaxed.overBudget += belts * model_.items[item].width;
    }
}

} // namespace riband::cutting::planner
