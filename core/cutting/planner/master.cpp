#include "core/cutting/planner/master.h"

#include <algorithm>
#include <cmath>
#include <glpk.h>
#include <numeric>

namespace riband::cutting::planner {

namespace {

constexpr std::size_t mostLoads = 6000;

double real(std::int64_t number) { return static_cast<double>(number); }

/// More than any belt can be worth: what the program pays for a belt that no load known so far gives.
double beyond(const Model& model) {
    std::int64_t most = 0;
    for (const Kind& kind : model.kinds)
        most = std::max(most, kind.worth);
    for (const Item& item : model.items)
        most = std::max(most, item.width);
    return 4 * real(most + model.mountingCost + 1);
}

/// Half way from the best prices so far to those of the program, which swing wildly at first (smoothing after
/// Wentges 1997, from memory).
Prices between(const Prices& best, const Prices& program) {
    Prices prices;
    for (std::size_t item = 0; item < best.belts.size(); ++item)
        prices.belts.push_back(
            std::max<std::int64_t>(1, std::midpoint(best.belts[item], program.belts[item])));
    prices.mounting = std::midpoint(best.mounting, program.mounting);
    prices.budget = std::midpoint(best.budget, program.budget);
    return prices;
}

} // namespace

Master::Master(const Model& model, Aim aim) : model_{model}, aim_{aim}, program_{glp_create_prob()} {
    glp_term_out(GLP_OFF); // of this thread
    glp_set_obj_dir(program_, GLP_MIN);
    for (std::size_t item = 0; item < model.items.size(); ++item)
        addRow(GLP_LO, 0);
    mountingsRow_ = static_cast<int>(model.items.size()) + 1;
    budgetRow_ = mountingsRow_ + 1;
    sleevesRow_ = budgetRow_ + 1;
    firstKindRow_ = sleevesRow_ + 1;
    for (int row = mountingsRow_; row < kindRow(model.kinds.size()); ++row)
        addRow(GLP_UP, 0);
    for (std::size_t item = 0; item < model.items.size(); ++item) // belts left unserved
        addColumn(aim == Aim::Unserved ? real(model.items[item].width) : 0, {rowOf(item), budgetRow_},
                  {1, real(model.items[item].width)});
    for (std::size_t item = 0; item < model.items.size(); ++item)
        addColumn(beyond(model), {rowOf(item)}, {1});
    addColumn(beyond(model), {mountingsRow_}, {1}); // until loads enough are known
    firstLoad_ = glp_get_num_cols(program_) + 1;
}

Master::~Master() { glp_delete_prob(program_); }

int Master::kindRow(std::size_t kind) const { return firstKindRow_ + static_cast<int>(kind); }

void Master::addRow(int type, double bound) {
    glp_set_row_bnds(program_, glp_add_rows(program_, 1), type, bound, bound);
}

int Master::addColumn(double cost, const std::vector<int>& rows, const std::vector<double>& values) {
    const int column = glp_add_cols(program_, 1);
    glp_set_obj_coef(program_, column, cost);
    glp_set_col_bnds(program_, column, GLP_LO, 0, 0);
    glp_set_mat_col(program_, column, static_cast<int>(rows.size()), rows.data() - 1, values.data() - 1);
    return column;
}

void Master::setState(const State& state, std::int64_t fewest, const Relaxation& relaxation) {
    const auto atMost = [&](int row, std::int64_t limit) {
        glp_set_row_bnds(program_, row, limits(limit) ? GLP_UP : GLP_FR, 0, real(limit));
    };
    for (std::size_t item = 0; item < state.demand.size(); ++item) {
        glp_set_row_bnds(program_, rowOf(item), GLP_LO, real(state.demand[item]), 0);
        const std::int64_t lack = relaxation.mayLack(item);
        glp_set_col_bnds(program_, rowOf(item), lack == 0 ? GLP_FX : GLP_DB, 0, real(lack));
    }
    if (!limits(state.mountings))
        glp_set_row_bnds(program_, mountingsRow_, GLP_LO, real(fewest), 0);
    else
        glp_set_row_bnds(program_, mountingsRow_, fewest == state.mountings ? GLP_FX : GLP_DB, real(fewest),
                         real(state.mountings));
    atMost(budgetRow_, aim_ == Aim::Spent ? state.budget : unlimited);
    atMost(sleevesRow_, state.sleeves);
    for (std::size_t kind = 0; kind < state.free.size(); ++kind)
        atMost(kindRow(kind), state.free[kind]);
    for (std::size_t i = 0; i < loads_.size(); ++i)
        setColumn(loads_[i], firstLoad_ + static_cast<int>(i), state);
}

/// A load that takes more than is still wanted is out of the program.
void Master::setColumn(const Load& load, int column, const State& state) {
    bool fits = state.free[load.kind] > 0;
    for (std::size_t item = 0; item < load.counts.size() && fits; ++item)
        fits = load.counts[item] <= state.demand[item];
    glp_set_col_bnds(program_, column, fits ? GLP_LO : GLP_FX, 0, 0);
}

bool Master::solve() {
    glp_smcp control;
    glp_init_smcp(&control);
    control.msg_lev = GLP_MSG_OFF;
    control.meth = GLP_DUALP;
    control.it_lim = 20'000;
    if (glp_simplex(program_, &control) == 0 && glp_get_status(program_) == GLP_OPT) return true;
    glp_adv_basis(program_, 0);
    return glp_simplex(program_, &control) == 0 && glp_get_status(program_) == GLP_OPT;
}

Prices Master::prices() const {
    const auto price = [](double dual, double least) {
        return std::llround(std::clamp(dual * real(scale), least, dearest));
    };
    Prices prices;
    for (std::size_t item = 0; item < model_.items.size(); ++item)
        prices.belts.push_back(price(glp_get_row_dual(program_, rowOf(item)), 1.0));
    prices.mounting = price(glp_get_row_dual(program_, mountingsRow_), 0.0);
    prices.budget = price(-glp_get_row_dual(program_, budgetRow_), 0.0);
    return prices;
}

/// Loads that beat the prices of the program, one of each kind. False if there is none.
bool Master::addLoads(const Relaxed& relaxed, const Relaxation& relaxation, const State& state) {
    bool any = false;
    for (std::size_t kind = 0; kind < model_.kinds.size(); ++kind) {
        if (relaxed.reduced[kind] >= unlimited) continue;
        double limits = std::min(0.0, glp_get_row_dual(program_, kindRow(kind)));
        limits += std::min(0.0, glp_get_row_dual(program_, mountingsRow_));
        if (model_.kinds[kind].sleeve) limits += std::min(0.0, glp_get_row_dual(program_, sleevesRow_));
        if (real(relaxed.reduced[kind]) >= limits * real(scale) - real(scale) / 64) continue;
        Load load = loadOf(model_, kind, relaxation.knapsack().countsOf(relaxed.loads[kind]));
        std::vector<int> rows{mountingsRow_, kindRow(kind)};
        std::vector<double> values{1, 1};
        if (model_.kinds[kind].sleeve) {
            rows.push_back(sleevesRow_);
            values.push_back(1);
        }
        for (std::size_t item = 0; item < load.counts.size(); ++item)
            if (load.counts[item] > 0) {
                rows.push_back(rowOf(item));
                values.push_back(real(load.counts[item]));
            }
        const int column = addColumn(real(costOf(model_, aim_, kind, load.left)) / real(scale), rows, values);
        setColumn(load, column, state);
        loads_.push_back(std::move(load));
        any = true;
    }
    return any;
}

void Master::forgetAll() {
    std::vector<int> columns{0};
    for (std::size_t i = 0; i < loads_.size(); ++i)
        columns.push_back(firstLoad_ + static_cast<int>(i));
    if (!loads_.empty()) glp_del_cols(program_, static_cast<int>(loads_.size()), columns.data());
    loads_.clear();
    glp_std_basis(program_);
}

std::optional<Relaxed> Master::improve(Relaxation& relaxation, const State& state, std::int64_t fewest,
                                       Prices& prices, std::int64_t enough, int rounds) {
    if (loads_.size() > mostLoads) forgetAll();
    std::optional<Relaxed> best = relaxation.at(prices);
    if (!best || best->bound >= enough) return best;
    setState(state, fewest, relaxation);
    addLoads(*best, relaxation, state);
    // Batches gain by it; in a small order the program's own prices are reached soon and prove more.
    const bool smooth = model_.items.size() > 40;
    for (int round = 0; round < rounds && solve(); ++round) {
        const Prices exact = this->prices();
        const Prices now = smooth ? between(prices, exact) : exact;
        const auto relaxed = relaxation.at(now);
        if (!relaxed) break;
        if (relaxed->bound > best->bound) {
            best = relaxed;
            prices = now;
            if (best->bound >= enough) break;
        }
        const double highest = glp_get_obj_val(program_) * real(scale);
        if (highest - real(best->bound) < 0.02 * (real(enough) - real(best->bound))) break;
        if (addLoads(*relaxed, relaxation, state)) continue;
        const auto there = relaxation.at(exact); // the middle was no help: at the program's own prices
        if (!there) break;
        if (there->bound > best->bound) {
            best = there;
            prices = exact;
        }
        if (best->bound >= enough || !addLoads(*there, relaxation, state)) break;
    }
    return best;
}

Loads Master::rounded(const State& state) const {
    std::vector<std::pair<double, std::size_t>> used;
    for (std::size_t i = 0; i < loads_.size(); ++i) {
        const double share = glp_get_col_prim(program_, firstLoad_ + static_cast<int>(i));
        if (share > 0.49) used.emplace_back(-share, i);
    }
    std::sort(used.begin(), used.end());
    Loads loads;
    State rest = state;
    for (const auto& [share, i] : used) {
        const Load& load = loads_[i];
        for (int times = static_cast<int>(std::lround(-share)); times > 0; --times) {
            bool fits = rest.free[load.kind] > 0;
            for (std::size_t item = 0; item < load.counts.size() && fits; ++item)
                fits = load.counts[item] <= rest.demand[item];
            if (!fits) break;
            for (std::size_t item = 0; item < load.counts.size(); ++item)
                rest.demand[item] -= load.counts[item];
            --rest.free[load.kind];
            loads.push_back(load);
        }
    }
    return loads;
}

} // namespace riband::cutting::planner
