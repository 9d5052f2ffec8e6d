#pragma once

#include "core/cutting/planner/knapsack.h"

namespace riband::cutting::planner {

/// What a belt of each item may cost (scaled), what a µm of budget is worth, and what a mounting is worth
/// that must be made anyway: the multipliers of a Lagrangian relaxation. Any prices give a true bound; good
/// prices a high one.
struct Prices {
    std::vector<std::int64_t> belts;
    std::int64_t budget = 0;   ///< for each unit of width (Aim::Spent)
    std::int64_t mounting = 0; ///< for each of the fewest mountings
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

    /// Prices to begin with: those of a piece that is used up evenly.
    Prices guess() const;
    /// The relaxation at these prices; nothing if it was stopped.
    std::optional<Relaxed> at(const Prices& prices);
    /// The knapsack of the last `at`.
    const Knapsack& knapsack() const { return *knapsack_; }
    /// Moves the prices towards a higher bound until it reaches `enough` or for so many rounds (subgradient
    /// steps after Polyak, halved when they no longer help). Returns the best found and leaves its prices in
    /// `prices`; nothing if it was stopped before the first.
    std::optional<Relaxed> improve(Prices& prices, std::int64_t enough, int rounds);

private:
    void priceKinds(const Prices& prices, Relaxed& relaxed) const;
    void takeBest(Relaxed& relaxed) const;
    void leaveUnserved(const Prices& prices, Relaxed& relaxed) const;
    void step(Prices& prices, const Relaxed& from, double length) const;
    double steepness(const Relaxed& relaxed) const;
    std::int64_t mayLack(std::size_t item) const;

    const Model& model_;
    Aim aim_;
    const State& state_;
    std::int64_t fewest_;
    Stopper& stopper_;
    std::optional<Knapsack> knapsack_;
    std::vector<std::int64_t> unit_; ///< of each item: its belts are priced by this
    double mountingUnit_, budgetUnit_;
};

} // namespace riband::cutting::planner
