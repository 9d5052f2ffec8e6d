#pragma once

#include "core/foresight/answer.h"
#include "core/foresight/demand/series.h"

namespace riband::foresight {

inline constexpr int daysOfPeriod = 7; ///< demand is counted by weeks

/// What was asked for of one belt, over so many calendar days up to today. Days of the orders count from the
/// first of them; oldest first.
struct Record {
    std::vector<Order> orders;
    double days = 0;

    /// Width asked for in each whole week, the last one ending today; a first part of a week is left out.
    Series weekly() const;
    double meanWidth() const; ///< of an order; 0 without orders
};

double widthOf(const std::vector<Line>& lines);
inline double widthOf(const Order& order) { return widthOf(order.lines); }

/// Whether a sleeve of the setting can give one belt of this width at all.
bool canGive(const Setting& setting, Size width);
/// Without the lines that no sleeve can give.
std::vector<Line> servable(const Setting& setting, std::vector<Line> lines);
/// And no lines, no order.
std::vector<Order> servable(const Setting& setting, std::vector<Order> orders);

} // namespace riband::foresight
