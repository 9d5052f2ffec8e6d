#pragma once

#include "core/foresight/answer.h"
#include "core/foresight/dice.h"

namespace riband::foresight {

/// Odd widths that customers ask for beside the listed ones.
struct OddWidths {
    double share = 0; ///< of all lines
    Size from = 0, to = 0;
    Size step = 1; ///< 1 µm: any width at all
};

/// An invented shop to practise on: what the player is told (`setting`) and what is true.
struct Scenario {
    std::string name;
    Setting setting; ///< its ordersPerYear is only the shop's guess
    double years = 4;
    double trueOrdersPerYear = 52;
    double growth = 0;            ///< of the rate a year: 0.3 is 30 % more each year
    std::vector<double> mix;      ///< shares of the listed widths, in the order of setting.listed
    std::vector<double> otherMix; ///< in every second half-year, if not empty
    OddWidths odd;
    std::vector<double> quantities{.55, .22, .08, .09, .06}; ///< of 1, 2, ... belts
    double severalLines = 0;                                 ///< share of orders with two to four lines
    double bulk = 0;                                         ///< share of orders of 10 to 30 belts
};

/// Poisson orders of the whole run. The same dice, the same orders.
std::vector<Order> ordersOf(const Scenario& scenario, Dice dice);

/// What waits till closing time is one order: the lines of each day together, at that day's last moment.
std::vector<Order> atClosingTime(const std::vector<Order>& orders);

/// A shop of an unseen kind: sleeves, widths, pace, wrong guesses, drift, odd widths to the micrometre,
/// several lines, bulk, racks of 6 to 20, kerf, ribs and age limits are all drawn.
Scenario drawnScenario(std::uint64_t number);

} // namespace riband::foresight
