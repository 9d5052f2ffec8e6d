#pragma once

#include "core/cutting/planner/knapsack.h"

namespace riband::cutting::planner {

/// No belt is ever priced higher (scaled); keeps all sums within 64 bits: 10^6 belts of 10^12.
constexpr double dearest = 1e12;

/// What a belt of each item may cost (scaled), what a µm of budget is worth, and what a mounting is worth
/// that must be made anyway: the multipliers of a Lagrangian relaxation. Any prices give a true bound; good
/// prices a high one.
struct Prices {
    std::vector<std::int64_t> belts; ///< at least 1, so that the knapsack overlooks no load
    std::int64_t budget = 0;         ///< for each unit of width (Aim::Spent)
    std::int64_t mounting = 0;       ///< for each of the fewest mountings
};

/// The relaxation at some prices: each piece takes what pays best for itself, whether or not the sum of it
/// all is what was asked.
struct Relaxed {
    std::int64_t bound = 0;            ///< scaled; no way to finish costs less
    std::vector<std::int64_t> reduced; ///< of each kind: cost less prices of its best load; unlimited if none
    std::vector<std::int32_t> loads;   ///< of each kind: node of that load in the knapsack
    std::vector<std::int64_t> lacking; ///< of each item: belts asked less belts taken
    std::int64_t overBudget = 0;       ///< width unserved less budget
    std::int64_t tooFewMountings = 0;  ///< fewest mountings less mountings
};

/// Scaled cost of a load under an aim.
std::int64_t costOf(const Model& model, Aim aim, std::size_t kind, std::int64_t left);

/// The relaxation of what is left to do.
class Relaxation {
public:
    Relaxation(const Model& model, Aim aim, const State& state, std::int64_t fewest, Stopper& stopper);

    /// Belts of the item that may go unserved.
    std::int64_t mayLack(std::size_t item) const;
    /// Prices to begin with: those of a piece that is used up evenly.
    Prices guess() const;
    /// The relaxation at these prices; nothing if it was stopped.
    std::optional<Relaxed> at(const Prices& prices);
    /// The knapsack of the last `at`.
    const Knapsack& knapsack() const { return *knapsack_; }

private:
    void priceKinds(const Prices& prices, Relaxed& relaxed) const;
    void takeBest(Relaxed& relaxed) const;
    void leaveUnserved(const Prices& prices, Relaxed& relaxed) const;

    const Model& model_;
    Aim aim_;
    const State& state_;
    std::int64_t fewest_;
    Stopper& stopper_;
    std::optional<Knapsack> knapsack_;
};

} // namespace riband::cutting::planner
