#include "core/foresight/replay/years.h"

#include "core/foresight/outlook.h"

#include <algorithm>
#include <cmath>

namespace riband::foresight {

namespace {

constexpr double daysOfYear = 365;
constexpr double daysOfBlock = 4 * daysOfPeriod;

} // namespace

std::vector<Order> resampled(const Record& record, Dice dice) {
    std::vector<Order> orders;
    if (record.orders.empty() || record.days <= 0) return orders;
    const double block = std::min(daysOfBlock, record.days);
    for (double day = 0; day < record.days; day += block) {
        const double from = dice.share() * (record.days - block);
        const double length = std::min(block, record.days - day);
        auto order = std::lower_bound(record.orders.begin(), record.orders.end(), from,
                                      [](const Order& each, double at) { return each.day < at; });
        for (; order != record.orders.end() && order->day < from + length; ++order) {
            orders.push_back(*order);
            orders.back().day += day - from;
        }
    }
    return orders;
}

std::vector<Order> expectedYear(const Setting& setting, const Record& record, Dice dice) {
    std::vector<Order> orders;
    if (record.orders.empty()) return orders;
    Setting guess = setting;
    guess.ordersPerYear =
        std::max(1.0, static_cast<double>(record.orders.size()) * daysOfYear / std::max(record.days, 1.0));
    Outlook outlook{guess};
    for (const Order& order : record.orders)
        outlook.learn(order);
    const double perDay = outlook.ordersPerYear() / setting.daysPerYear;
    for (double day = 0; (day -= std::log1p(-dice.share()) / perDay) < record.days;) {
        orders.push_back({day, {}});
        outlook.draw(dice, orders.back().lines);
    }
    return orders;
}

Record lastYear(const Record& record) {
    Record year{.orders = {}, .days = std::min(record.days, daysOfYear)};
    const double start = record.days - year.days;
    for (Order order : record.orders)
        if (order.day >= start) {
            order.day -= start;
            year.orders.push_back(std::move(order));
        }
    return year;
}

} // namespace riband::foresight
