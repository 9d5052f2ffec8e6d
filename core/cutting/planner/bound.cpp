#include "core/cutting/planner/bound.h"

#include <algorithm>
#include <cmath>

namespace riband::cutting::planner {

namespace {

/// No belt is ever worth more; keeps all sums within 64 bits (10^6 belts of 10^12).
constexpr double dearest = 1e12;

} // namespace

std::int64_t costOf(const Model& model, Aim aim, std::size_t kind, std::int64_t left) {
    return aim == Aim::Unserved ? 0 : scale * model.spent(model.kinds[kind], left);
}

Relaxation::Relaxation(const Model& model, Aim aim, const State& state, std::int64_t fewest, Stopper& stopper)
    : model_{model}, aim_{aim}, state_{state}, fewest_{fewest}, stopper_{stopper} {
    std::int64_t widest = 1;
    for (const Item& item : model.items) {
        unit_.push_back(item.gross);
        widest = std::max(widest, item.gross);
    }
    mountingUnit_ = static_cast<double>(std::max(model.trim + model.mountingCost, widest / 8));
    budgetUnit_ = static_cast<double>(widest);
}

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
        const std::int64_t width = aim_ == Aim::Spent ? unit_[item] : model_.items[item].width;
        prices.belts.push_back(std::llround(each * static_cast<double>(scale * width)));
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
    stopper_.now(work);
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

double Relaxation::steepness(const Relaxed& relaxed) const {
    double sum = 0;
    for (std::size_t item = 0; item < unit_.size(); ++item) {
        const double slope = static_cast<double>(relaxed.lacking[item] * unit_[item]);
        sum += slope * slope;
    }
    if (fewest_ > 0) sum += std::pow(mountingUnit_ * static_cast<double>(relaxed.tooFewMountings), 2);
    if (aim_ == Aim::Spent && state_.budget > 0) sum += std::pow(static_cast<double>(relaxed.overBudget), 2);
    return sum;
}

void Relaxation::step(Prices& prices, const Relaxed& from, double length) const {
    const auto moved = [&](std::int64_t price, double unit, std::int64_t slope) {
        const double to = static_cast<double>(price) + length * unit * unit * static_cast<double>(slope);
        return std::llround(std::clamp(to, 0.0, dearest));
    };
    for (std::size_t item = 0; item < unit_.size(); ++item)
        prices.belts[item] = moved(prices.belts[item], static_cast<double>(unit_[item]), from.lacking[item]);
    if (fewest_ > 0) prices.mounting = moved(prices.mounting, mountingUnit_, from.tooFewMountings);
    if (aim_ == Aim::Spent && state_.budget > 0) prices.budget = moved(prices.budget, 1, from.overBudget);
}

std::optional<Relaxed> Relaxation::improve(Prices& prices, std::int64_t enough, int rounds) {
    std::optional<Relaxed> best;
    Prices now = prices;
    double stride = 1;
    int idle = 0;
    for (int round = 0; round < rounds; ++round) {
        auto relaxed = at(now);
        if (!relaxed) return best;
        if (!best || relaxed->bound > best->bound) {
            best = relaxed;
            prices = now;
            idle = 0;
        } else if (++idle == 6) {
            stride /= 2;
            idle = 0;
            now = prices;
            relaxed = best;
            if (stride < 1e-4) break;
        }
        if (best->bound >= enough) break;
        const double slope = steepness(*relaxed);
        if (slope <= 0) break;
        step(now, *relaxed, stride * static_cast<double>(enough - relaxed->bound) / slope);
    }
    return best;
}

} // namespace riband::cutting::planner
