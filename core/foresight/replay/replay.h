#pragma once

#include "core/foresight/buying/advice.h"
#include "core/foresight/replay/closing_time.h"

namespace riband::foresight {

/// One belt under one set of rules. Money in minor units, expected.
struct ReplayRules {
    Setting setting;       ///< trim, sleeve, rack limit ...
    Size leastRemnant = 0; ///< narrower rests are thrown away; 0: what can give no listed belt is
    bool together = false; ///< orders wait until closing time and are cut together
    SleeveChoice sleeve;   ///< its width is that of the setting
    BuyingTerms terms;     ///< by what sleeves are bought
};

/// What came of a time. Widths in the unit of the belt.
struct Played {
    double orders = 0, lostOrders = 0;
    double sold = 0, lost = 0;
    double used = 0; ///< sleeves opened, less what more remnants hold at the end than at the beginning
    double sleeves = 0, mountings = 0;
    double bought = 0;    ///< sleeves delivered or on their way
    double rubber = 0;    ///< cost of what was used
    double stockDays = 0; ///< whole sleeves, summed over days
    /// What all of it came to: rubber, labour of the mountings, interest on sleeves held, and what the sales
    /// that were lost would have earned.
    double expense = 0;

    void add(const Played& other, double millimetres); ///< its widths in mm
    double yield() const { return used > 0 ? sold / used : 0; }
};

/// How a belt is stocked under the rules: worked out once, then many years are played by it.
struct StockRule {
    int reorderPoint = 1;
    int lot = 1;
    std::vector<Remnant> rack{}; ///< as it usually is: the run begins with it
};
StockRule stockRuleOf(const ReplayRules& rules, const Record& record);

/// What a unit of width is worth where a year is set against money: its rubber, and what selling it earns.
struct WidthMoney {
    double rubber = 0, margin = 0;
};
double expenseOf(const Played& played, const ReplayRules& rules, const WidthMoney& unit);

/// Plays orders of `days` days: whole sleeves are looked at every review and come after the lead time; who
/// can't be served goes elsewhere. Orders must be sorted by day.
Played playYear(const ReplayRules& rules, const StockRule& stock, const std::vector<Order>& orders,
                double days);

} // namespace riband::foresight
