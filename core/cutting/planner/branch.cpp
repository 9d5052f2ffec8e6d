#include "core/cutting/planner/branch.h"

#include <algorithm>

namespace riband::cutting::planner {

namespace {

constexpr std::size_t mostBranches = 50'000;

/// Lists the loads of one kind of piece, widest items first, and leaves a part of the tree as soon as even
/// the dearest belts that would still fit can't bring it under the gap.
class Lister {
public:
    Lister(const Model& model, Aim aim, const State& state, const Prices& prices, const Knapsack& knapsack,
           const Relaxed& relaxed, std::int64_t gap, Stopper& stopper, std::vector<Branch>& found)
        : model_{model}, aim_{aim}, state_{state}, prices_{prices}, knapsack_{knapsack}, relaxed_{relaxed},
          gap_{gap}, stopper_{stopper}, found_{found}, counts_(model.items.size(), 0) {}

    bool list(std::size_t kind, std::size_t widest) {
        kind_ = kind;
        widest_ = widest;
        room_ = model_.kinds[kind].extent - model_.trim;
        offset_ = prices_.mounting + std::min<std::int64_t>(0, relaxed_.reduced[kind]);
        return from(widest + 1, 0, 0);
    }

private:
    std::int64_t excess(std::int64_t gross, std::int64_t price) const {
        return costOf(model_, aim_, kind_, room_ - gross) - price - offset_;
    }

    /// Items before `item` are still to be chosen.
    bool from(std::size_t item, std::int64_t gross, std::int64_t price) {
        if (item == 0) return emit(gross, price);
        --item;
        const std::int64_t room = room_ - model_.items[widest_].reserve - gross;
        const std::int64_t each = model_.items[item].gross;
        const std::int64_t least = item == widest_ ? 1 : 0;
        for (std::int64_t n = std::min(state_.demand[item], room / each); n >= least; --n) {
            if (stopper_.now(20)) return false;
            const std::int64_t g = gross + n * each, p = price + n * prices_.belts[item];
            if (excess(g, p + knapsack_.bestBefore(item, room - n * each)) >= gap_) continue;
            counts_[item] = n;
            if (!from(item, g, p)) return false;
        }
        counts_[item] = 0;
        return true;
    }

    bool emit(std::int64_t gross, std::int64_t price) {
        if (found_.size() >= mostBranches) return false;
        found_.push_back({{kind_, counts_, room_ - gross},
                          costOf(model_, aim_, kind_, room_ - gross),
                          excess(gross, price),
                          price});
        return true;
    }

    const Model& model_;
    Aim aim_;
    const State& state_;
    const Prices& prices_;
    const Knapsack& knapsack_;
    const Relaxed& relaxed_;
    std::int64_t gap_;
    Stopper& stopper_;
    std::vector<Branch>& found_;
    Counts counts_;
    std::size_t kind_ = 0, widest_ = 0;
    std::int64_t room_ = 0, offset_ = 0;
};

std::size_t widestWanted(const State& state) {
    std::size_t item = state.demand.size() - 1;
    while (state.demand[item] == 0)
        --item;
    return item;
}

/// Leaving all belts of the item, if the budget allows it.
void addUnserved(const Model& model, Aim aim, const State& state, const Prices& prices, std::size_t item,
                 std::vector<Branch>& found) {
    const std::int64_t width = state.demand[item] * model.items[item].width;
    if (aim == Aim::Spent && width > state.budget) return;
    const std::int64_t price = aim == Aim::Unserved ? scale : prices.budget;
    // The relaxation counted what pays best for each belt; here all of them are left.
    const std::int64_t loss = price * model.items[item].width - prices.belts[item];
    Counts left(model.items.size(), 0);
    left[item] = state.demand[item];
    found.push_back({{Branch::nowhere, std::move(left), 0},
                     aim == Aim::Unserved ? scale * width : 0,
                     std::max<std::int64_t>(0, loss) * state.demand[item],
                     0});
}

} // namespace

std::vector<Branch> branchesOf(const Model& model, Aim aim, const State& state, const Prices& prices,
                               const Relaxation& relaxation, const Relaxed& relaxed, std::int64_t gap,
                               Stopper& stopper, bool& complete) {
    std::vector<Branch> found;
    const std::size_t widest = widestWanted(state);
    addUnserved(model, aim, state, prices, widest, found);
    Lister lister{model, aim, state, prices, relaxation.knapsack(), relaxed, gap, stopper, found};
    if (state.mountings > 0)
        for (std::size_t kind = 0; kind < model.kinds.size(); ++kind) {
            if (state.free[kind] == 0 || (model.kinds[kind].sleeve && state.sleeves == 0)) continue;
            if (!lister.list(kind, widest)) complete = false;
        }
    std::stable_sort(found.begin(), found.end(), [](const Branch& a, const Branch& b) {
        if (a.excess != b.excess) return a.excess < b.excess;
        return a.price > b.price; // the fuller one leaves less to do
    });
    return found;
}

} // namespace riband::cutting::planner
