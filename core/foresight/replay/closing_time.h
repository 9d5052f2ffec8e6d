#pragma once

#include "core/foresight/best_fit.h"

namespace riband::foresight {

/// A counter that can cut several orders together.
struct Counter {
    BestFit rack;
    int opened = 0; ///< sleeves
    int mountings = 0;
};

/// Cuts the orders, each by itself. Returns those that could not be served because no more sleeve may be
/// opened: the rack stays as it was for them.
std::vector<Order> cutEach(Counter& counter, const std::vector<Order>& orders, int sleeves);

/// Cuts the orders of a day at closing time: those that are better cut in one mounting are. Orders are joined
/// two by two as long as that saves width or labour (a sleeve opened is charged 3 %, docs/buying.md), so it
/// never takes more than cutting each by itself by that measure.
std::vector<Order> cutTogether(Counter& counter, const Setting& setting, const std::vector<Order>& orders,
                               int sleeves);

} // namespace riband::foresight
