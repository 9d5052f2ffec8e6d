#pragma once

#include "core/foresight/hindsight.h"
#include "core/foresight/referee.h"
#include "core/foresight/scenario.h"

#include <functional>

namespace riband::foresight {

/// What came of one run of one player, in the unit of the belt.
struct Outcome {
    Tally tally;
    double opened = 0; ///< width of the sleeves opened
    double credit = 0; ///< of what was left, by the prices of hindsight
    double bound = 0;  ///< of hindsight without a shelf
    double left = 0;   ///< width left, not credited

    double net() const { return opened - credit; }
    double waste() const { return 100 * (net() - sold()) / net(); }
    /// Without credit: what is left counts as if it were whole.
    double rawWaste() const { return 100 * (opened - left - sold()) / (opened - left); }
    double boundWaste() const { return 100 * (bound - sold()) / bound; }
    double sold() const { return static_cast<double>(tally.sold); }
    /// Rubber, mountings, interest and holding, in width.
    double cost(const Setting& setting) const;
};

/// Share of the way from the reference to hindsight, in percent.
double gapClosed(const Outcome& reference, const Outcome& player);

/// Plays all orders. Throws Breach if the player breaks a rule, std::logic_error if it beats the bound
/// without a shelf: that would be an error of ours.
Outcome play(const Setting& setting, const std::vector<Order>& orders, Player& player,
             const Hindsight& hindsight);

} // namespace riband::foresight
