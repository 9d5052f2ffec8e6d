#pragma once

#include "core/foresight/answer.h"

#include <map>

namespace riband::foresight {

/// What one who knew all orders could at best have used up, and what a width was worth to him.
///
/// The linear programme of Gilmore and Gomory over patterns of a sleeve. A pattern is made of lumps: a part
/// of one order cut in one mounting, trim + its belts. Rows are the lines of the kinds of orders. Patterns
/// are made as they are needed by a knapsack over the lumps; GLPK solves the rest (a dense simplex of our own
/// stalled on degenerate cases; Debian's CLP would do as well, GLPK was here for the tests already). The
/// bound holds for every rule without ready belts: a sleeve's lumps and what they leave together are worth no
/// more than the sleeve.
class Hindsight {
public:
    /// Stops after `rounds` rounds of pricing; the bound is then Farley's, lower but still right.
    Hindsight(const Setting& setting, const std::vector<Order>& orders, int rounds = 400);

    double bound() const { return bound_; } ///< net width that no rule without a shelf can go below
    bool converged() const { return converged_; }
    int rounds() const { return rounds_; }
    double worthOfRemnant(Size width) const; ///< the best it could have been cut into
    /// Of the belts on the shelf at the end: no more than their width, no more of one than were asked for.
    double worthOfReady(const std::map<Size, int>& shelf) const;
    /// Sum over the rows of dual price times belts asked for; equals the bound where it converged.
    double dualValue() const;

private:
    struct Lump {
        Size size;                              ///< with its trim, in cells
        std::vector<std::pair<int, int>> belts; ///< row, count
    };
    struct Row {
        Size width;
        double belts; ///< asked for in all
        double dual;
    };
    void makeRows(const std::vector<Order>& orders);
    void makeLumps(const std::vector<int>& rows, const std::vector<Line>& lines);
    void solve(int rounds);
    double price(const Lump& lump) const;
    void fillTable();
    std::vector<std::pair<int, double>> patternFor(int capacity, const Lump* first) const;

    Setting setting_;
    Size cell_ = 1;
    std::vector<Row> rows_;
    std::vector<Lump> lumps_;
    std::vector<double> table_; ///< best worth of so many cells
    std::vector<int> chosen_;   ///< lump that the best begins with, -1 for none
    std::map<Size, std::int64_t> asked_;
    double bound_ = 0;
    bool converged_ = false;
    int rounds_ = 0;
};

} // namespace riband::foresight
