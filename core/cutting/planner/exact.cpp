#include "core/cutting/planner/exact.h"

#include "core/cutting/planner/ties.h"

#include <numeric>

namespace riband::cutting::planner {

namespace {

std::int64_t grainOfWidths(const Model& model) {
    std::int64_t grain = 0;
    for (const Item& item : model.items)
        grain = std::gcd(grain, item.width);
    return std::max<std::int64_t>(grain, 1);
}

/// All that is ever spent is a multiple of this.
std::int64_t grainOfWorth(const Model& model) {
    std::int64_t widths = model.trim;
    for (const Item& item : model.items)
        widths = std::gcd(widths, item.gross);
    for (const Kind& kind : model.kinds)
        widths = std::gcd(widths, kind.extent);
    const std::int64_t worths = model.problem.worth->grain(widths);
    return std::max<std::int64_t>(std::gcd(worths, model.mountingCost), 1);
}

class Solver {
public:
    Solver(const Model& model, Loads start, std::int64_t states, Stopper& stopper,
           const std::function<void(const Loads&)>& better)
        : model_{model}, states_{states}, stopper_{stopper}, better_{better}, best_{std::move(start)},
          score_{scoreOf(model, best_)} {}

    Solved run() {
        const bool servesMost = score_.unserved == 0 || serveMost();
        const Found found = spendLeast();
        if (found.complete && servesMost) breakTies();
        take(olderPieces(model_, best_));
        return {best_, std::min(found.bound, score_.spent), found.complete && servesMost};
    }

private:
    void take(const Loads& loads) {
        const Score score = scoreOf(model_, loads);
        if (score >= score_) return;
        score_ = score;
        best_ = loads;
        if (better_) better_(best_);
    }
    Found search(const Goal& goal) {
        return Search{model_, goal, stopper_}.run([&](const Loads& loads) { take(loads); });
    }

    bool serveMost() {
        const Goal goal{Aim::Unserved, startOf(model_), score_.unserved, grainOfWidths(model_), states_};
        const Found found = search(goal);
        return found.complete || found.bound >= score_.unserved;
    }

    Found spendLeast() {
        Goal goal{Aim::Spent, startOf(model_), score_.spent, grainOfWorth(model_), states_};
        goal.start.budget = score_.unserved;
        return search(goal);
    }

    /// Asks for as little spent again with one new sleeve less, then with one mounting less, until there is
    /// no such plan or it takes too long to know.
    void breakTies() {
        while (score_.sleeves > 0 && again(score_.sleeves - 1, unlimited)) {
        }
        while (score_.mountings > 1 && again(score_.sleeves, score_.mountings - 1)) {
        }
    }
    bool again(std::int64_t sleeves, std::int64_t mountings) {
        constexpr std::int64_t patience = 300; // states
        Goal goal{Aim::Spent, startOf(model_), score_.spent + 1, 1, patience};
        goal.start.budget = score_.unserved;
        goal.start.sleeves = sleeves;
        goal.start.mountings = mountings;
        return search(goal).loads.has_value();
    }

    const Model& model_;
    std::int64_t states_;
    Stopper& stopper_;
    const std::function<void(const Loads&)>& better_;
    Loads best_;
    Score score_;
};

} // namespace

Solved solve(const Model& model, Loads start, std::int64_t states, Stopper& stopper,
             const std::function<void(const Loads&)>& better) {
    return Solver{model, std::move(start), states, stopper, better}.run();
}

} // namespace riband::cutting::planner
