#include "core/foresight/buying/basket.h"

#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace riband::foresight {

namespace {

struct Delete {
    void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
};
using Program = std::unique_ptr<glp_prob, Delete>;

/// One binary column for each belt and number of sleeves above none; at most one of each belt; the costs stay
/// under the budget.
class Knapsack {
public:
    Knapsack(const std::vector<Wanted>& wanted, std::int64_t budget)
        : wanted_{wanted}, program_{glp_create_prob()} {
        glp_set_obj_dir(program_.get(), GLP_MAX);
        glp_add_rows(program_.get(), static_cast<int>(wanted.size()) + 1);
        glp_set_row_bnds(program_.get(), 1, GLP_UP, 0, static_cast<double>(budget));
        for (std::size_t belt = 0; belt < wanted.size(); ++belt)
            addBelt(belt);
    }

    Basket solve(int milliseconds) {
        glp_iocp options;
        glp_init_iocp(&options);
        options.presolve = GLP_ON;
        options.msg_lev = GLP_MSG_OFF;
        options.tm_lim = milliseconds;
        const int failed = glp_intopt(program_.get(), &options);
        const int status = glp_mip_status(program_.get());
        Basket basket;
        basket.sleeves.assign(wanted_.size(), 0);
        if (status == GLP_OPT || status == GLP_FEAS) read(basket);
        basket.proven = failed == 0 && status == GLP_OPT;
        basket.bound = basket.proven ? basket.worth : relaxed();
        return basket;
    }

private:
    void addBelt(std::size_t belt) {
        const int row = static_cast<int>(belt) + 2;
        glp_set_row_bnds(program_.get(), row, GLP_UP, 0, 1);
        for (std::size_t sleeves = 1; sleeves < wanted_[belt].worth.size(); ++sleeves) {
            const int column = glp_add_cols(program_.get(), 1);
            glp_set_col_kind(program_.get(), column, GLP_BV);
            glp_set_obj_coef(program_.get(), column, wanted_[belt].worth[sleeves]);
            const int rows[] = {0, 1, row};
            const double values[] = {
                0, static_cast<double>(wanted_[belt].cost) * static_cast<double>(sleeves), 1};
            glp_set_mat_col(program_.get(), column, 2, rows, values);
        }
    }

    void read(Basket& basket) {
        int column = 0;
        for (std::size_t belt = 0; belt < wanted_.size(); ++belt)
            for (std::size_t sleeves = 1; sleeves < wanted_[belt].worth.size(); ++sleeves)
                if (glp_mip_col_val(program_.get(), ++column) > 0.5)
                    basket.sleeves[belt] = static_cast<int>(sleeves);
        for (std::size_t belt = 0; belt < wanted_.size(); ++belt) {
            basket.cost += wanted_[belt].cost * basket.sleeves[belt];
            basket.worth += wanted_[belt].worth[static_cast<std::size_t>(basket.sleeves[belt])];
        }
    }

    double relaxed() {
        glp_smcp options;
        glp_init_smcp(&options);
        options.msg_lev = GLP_MSG_OFF;
        glp_simplex(program_.get(), &options);
        return glp_get_obj_val(program_.get());
    }

    const std::vector<Wanted>& wanted_;
    Program program_;
};

std::int64_t costOfAll(const std::vector<Wanted>& wanted) {
    std::int64_t cost = 0;
    for (const Wanted& belt : wanted)
        cost += belt.cost * (static_cast<std::int64_t>(belt.worth.size()) - 1);
    return cost;
}

Basket everything(const std::vector<Wanted>& wanted) {
    Basket basket{.sleeves = {}, .cost = costOfAll(wanted), .proven = true};
    for (const Wanted& belt : wanted) {
        basket.sleeves.push_back(static_cast<int>(belt.worth.size()) - 1);
        basket.worth += belt.worth.back();
    }
    basket.bound = basket.worth;
    return basket;
}

} // namespace

Basket bestBasket(const std::vector<Wanted>& wanted, std::int64_t budget, int milliseconds) {
    if (costOfAll(wanted) <= budget) return everything(wanted);
    if (wanted.empty() || budget <= 0) return {.sleeves = std::vector<int>(wanted.size(), 0), .proven = true};
    return Knapsack{wanted, budget}.solve(milliseconds);
}

} // namespace riband::foresight
