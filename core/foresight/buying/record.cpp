#include "core/foresight/buying/record.h"

#include <cmath>

namespace riband::foresight {

double widthOf(const std::vector<Line>& lines) {
    double width = 0;
    for (const Line& line : lines)
        width += static_cast<double>(line.width) * line.quantity;
    return width;
}

Series Record::weekly() const {
    const auto weeks = static_cast<std::size_t>(days / daysOfPeriod);
    Series series(weeks, 0);
    const double start = days - static_cast<double>(weeks * daysOfPeriod);
    for (const Order& order : orders) {
        if (order.day < start) continue;
        const auto week = static_cast<std::size_t>((order.day - start) / daysOfPeriod);
        if (weeks > 0) series[std::min(week, weeks - 1)] += widthOf(order);
    }
    return series;
}

double Record::meanWidth() const {
    double width = 0;
    for (const Order& order : orders)
        width += widthOf(order);
    return orders.empty() ? 0 : width / static_cast<double>(orders.size());
}

bool canGive(const Setting& setting, Size width) {
    const CutRules& rules = setting.rules;
    return rules.trim + width + rules.kerf + rules.reserve(width) <= setting.sleeve;
}

std::vector<Line> servable(const Setting& setting, std::vector<Line> lines) {
    std::erase_if(lines, [&](const Line& line) { return !canGive(setting, line.width); });
    return lines;
}

std::vector<Order> servable(const Setting& setting, std::vector<Order> orders) {
    for (Order& order : orders)
        order.lines = servable(setting, std::move(order.lines));
    std::erase_if(orders, [](const Order& order) { return order.lines.empty(); });
    return orders;
}

} // namespace riband::foresight
