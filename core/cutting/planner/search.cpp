#include "core/cutting/planner/search.h"

#include <algorithm>

namespace riband::cutting::planner {

namespace {

constexpr int rootRounds = 1000;
constexpr int rounds = 30;
constexpr std::size_t mostSeen = 200'000;

std::int64_t roundedUp(std::int64_t value, std::int64_t grain) {
    if (value <= 0) return 0; // nothing costs less than nothing
    return (value + grain - 1) / grain * grain;
}

/// A state as a key: two states with the same key can be finished in the same ways.
std::string keyOf(const State& state) {
    std::string key;
    const auto add = [&](std::int64_t number) {
        for (; number >= 0x80; number >>= 7)
            key.push_back(static_cast<char>(number & 0x7f));
        key.push_back(static_cast<char>(number | 0x80));
    };
    for (const std::int64_t belts : state.demand)
        add(belts);
    for (const std::int64_t pieces : state.free)
        add(pieces);
    add(state.budget);
    return key;
}

/// The kind of piece whose best load pays best; of equals the widest.
std::size_t bestKind(const Relaxed& relaxed) {
    std::size_t best = relaxed.reduced.size();
    for (std::size_t kind = relaxed.reduced.size(); kind-- > 0;)
        if (relaxed.reduced[kind] < unlimited &&
            (best == relaxed.reduced.size() || relaxed.reduced[kind] < relaxed.reduced[best]))
            best = kind;
    return best;
}

} // namespace

Search::Search(const Model& model, const Goal& goal, Stopper& stopper)
    : model_{model}, goal_{goal}, stopper_{stopper}, master_{model, goal.aim} {
    found_.cost = goal.under;
}

/// The scaled bound of the rest from which a state can't lead to anything better: the next cheaper cost is
/// one grain under the best.
std::int64_t Search::enough(std::int64_t spent) const {
    return scale * (found_.cost - goal_.grain) + 1 - spent;
}

Found Search::run(const std::function<void(const Loads&)>& better) {
    better_ = better;
    State state = goal_.start;
    found_.complete = true;
    look(state, 0, {});
    if (found_.complete) found_.bound = found_.cost;
    return found_;
}

void Search::look(State& state, std::int64_t spent, const Prices& parents) {
    if (state.done()) return finish(spent);
    if (seen(state, spent)) return;
    const auto fewest = goal_.aim == Aim::Spent ? fewestMountings(model_, state) : std::int64_t{0};
    if (!fewest || *fewest > state.mountings) return;
    if (++nodes_ > goal_.nodes) found_.complete = false;
    Relaxation relaxation{model_, goal_.aim, state, *fewest, stopper_};
    const bool root = depth_ == 0;
    Prices prices = root ? relaxation.guess() : parents;
    const auto relaxed =
        master_.improve(relaxation, state, *fewest, prices, enough(spent), root ? rootRounds : rounds);
    if (root && relaxed)
        found_.bound = std::min(goal_.under, roundedUp((relaxed->bound + scale - 1) / scale, goal_.grain));
    if (relaxed && relaxed->bound >= enough(spent)) return;
    complete(state, spent, prices);
    const auto again = relaxation.at(prices); // the knapsack of the best prices
    if (!again || stopper_.stopped() || nodes_ > goal_.nodes) {
        found_.complete = false;
        return;
    }
    const auto branches = branchesOf(model_, goal_.aim, state, prices, relaxation, *again,
                                     enough(spent) - again->bound, stopper_, found_.complete);
    for (const Branch& branch : branches) {
        if (again->bound + branch.excess >= enough(spent)) break;
        if (stopper_.stopped() || nodes_ > goal_.nodes) {
            found_.complete = false;
            return;
        }
        follow(state, spent, branch, prices);
    }
}

void Search::follow(State& state, std::int64_t spent, const Branch& branch, const Prices& prices) {
    State next = state;
    for (std::size_t item = 0; item < next.demand.size(); ++item)
        next.demand[item] -= branch.load.counts[item];
    const bool mounted = branch.load.kind != Branch::nowhere;
    if (mounted) {
        --next.free[branch.load.kind];
        --next.mountings;
        next.sleeves -= model_.kinds[branch.load.kind].sleeve;
        path_.push_back(branch.load);
    } else if (goal_.aim == Aim::Spent) {
        for (std::size_t item = 0; item < next.demand.size(); ++item)
            next.budget -= branch.load.counts[item] * model_.items[item].width;
    }
    ++depth_;
    look(next, spent + branch.cost, prices);
    --depth_;
    if (mounted) path_.pop_back();
}

bool Search::seen(const State& state, std::int64_t spent) {
    // What may still be mounted follows from what is free, so the key need not say it.
    if (seen_.size() >= mostSeen) return false;
    const auto [at, isNew] = seen_.try_emplace(keyOf(state), spent);
    if (isNew) return false;
    if (at->second <= spent) return true;
    at->second = spent;
    return false;
}

void Search::finish(std::int64_t spent) {
    if (spent >= scale * found_.cost) return;
    found_.cost = spent / scale;
    found_.loads = path_;
    if (better_) better_(path_);
}

void Search::use(State& rest, std::int64_t& spent, Load load) {
    for (std::size_t item = 0; item < rest.demand.size(); ++item)
        rest.demand[item] -= load.counts[item];
    --rest.free[load.kind];
    --rest.mountings;
    rest.sleeves -= model_.kinds[load.kind].sleeve;
    spent += costOf(model_, goal_.aim, load.kind, load.left);
    path_.push_back(std::move(load));
}

/// Finishes the state without looking back: what the linear program uses by half or more, then always the
/// load that pays best at these prices. Gives an early answer from every state.
void Search::complete(const State& state, std::int64_t spent, const Prices& prices) {
    State rest = state;
    const std::size_t depth = path_.size();
    for (Load& load : master_.rounded(state))
        if (rest.mountings > 0 && rest.sleeves >= model_.kinds[load.kind].sleeve)
            use(rest, spent, std::move(load));
    while (!rest.done() && !stopper_.stopped() && rest.mountings > 0) {
        Relaxation relaxation{model_, goal_.aim, rest, 0, stopper_};
        const auto relaxed = relaxation.at(prices);
        if (!relaxed) break;
        const std::size_t kind = bestKind(*relaxed);
        if (kind == model_.kinds.size()) break;
        use(rest, spent, loadOf(model_, kind, relaxation.knapsack().countsOf(relaxed->loads[kind])));
    }
    std::int64_t width = 0;
    for (std::size_t item = 0; item < rest.demand.size(); ++item)
        width += rest.demand[item] * model_.items[item].width;
    if (goal_.aim == Aim::Unserved)
        finish(spent + scale * width);
    else if (width <= rest.budget)
        finish(spent);
    path_.resize(depth);
}

} // namespace riband::cutting::planner
