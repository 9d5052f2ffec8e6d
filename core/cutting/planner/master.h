#pragma once

#include "core/cutting/planner/bound.h"

struct glp_prob;

namespace riband::cutting::planner {

/// Finds good prices by column generation (Gilmore and Gomory): a linear program over the loads met so far,
/// solved by GLPK, says what each belt is worth; the knapsack says which loads beat these prices; they
/// come in, until none does. The program only proposes: every bound is the relaxation's own, in whole
/// numbers, so a solver that stalls or rounds badly costs time and never truth. One master goes through a
/// whole search; loads met in one state serve the next.
class Master {
public:
    Master(const Model& model, Aim aim);
    ~Master();
    Master(const Master&) = delete;
    Master& operator=(const Master&) = delete;

    /// Moves the prices towards the highest bound until it reaches `enough`, or for so many rounds. Returns
    /// the best found and leaves its prices in `prices`; nothing if it was stopped before the first.
    std::optional<Relaxed> improve(Relaxation& relaxation, const State& state, std::int64_t fewest,
                                   Prices& prices, std::int64_t enough, int rounds);
    /// The loads of the last solution of the program that are used by half or more, as far as they fit the
    /// state together; most used first.
    Loads rounded(const State& state) const;

private:
    int rowOf(std::size_t item) const { return static_cast<int>(item) + 1; }
    int kindRow(std::size_t kind) const;
    void addRow(int type, double bound);
    int addColumn(double cost, const std::vector<int>& rows, const std::vector<double>& values);
    void setState(const State& state, std::int64_t fewest, const Relaxation& relaxation);
    void setColumn(const Load& load, int column, const State& state);
    bool solve();
    Prices prices() const;
    bool addLoads(const Relaxed& relaxed, const Relaxation& relaxation, const State& state);
    void forgetAll();

    const Model& model_;
    Aim aim_;
    glp_prob* program_;
    int mountingsRow_, budgetRow_, sleevesRow_, firstKindRow_;
    int firstLoad_; ///< column of loads_[0]
    Loads loads_;
};

} // namespace riband::cutting::planner
