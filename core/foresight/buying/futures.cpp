#include "core/foresight/buying/futures.h"

#include <cmath>

namespace riband::foresight {

namespace {

/// The orders of each week that had some.
std::vector<std::vector<Order>> weeksOf(const Record& record) {
    std::vector<std::vector<Order>> weeks;
    double present = -1;
    for (Order order : record.orders) {
        const double week = std::floor(order.day / daysOfPeriod);
        if (week != present) weeks.emplace_back();
        present = week;
        order.day -= week * daysOfPeriod;
        weeks.back().push_back(std::move(order));
    }
    return weeks;
}

} // namespace

Futures::Futures(const Record& record, const Forecast& forecast)
    : record_{record}, byWeeks_{forecast.method == Method::Bootstrap} {
    const double mean = record.meanWidth();
    if (mean > 0) ordersPerDay_ = forecast.expected / mean / daysOfPeriod;
    if (!byWeeks_) return;
    chain_ = chainOf(record.weekly());
    weeks_ = weeksOf(record);
}

void Futures::draw(Dice& dice, double days, std::vector<Order>& orders) const {
    if (record_.orders.empty()) return orders.clear();
    byWeeks_ ? drawWeeks(dice, days, orders) : drawStream(dice, days, orders);
}

/// Orders that are there already give their room to the new ones.
void Futures::drawStream(Dice& dice, double days, std::vector<Order>& orders) const {
    if (ordersPerDay_ <= 0) return orders.clear();
    std::size_t drawn = 0;
    for (double day = 0; (day -= std::log1p(-dice.share()) / ordersPerDay_) < days; ++drawn) {
        const Order& order =
            record_.orders[static_cast<std::size_t>(dice.below(static_cast<int>(record_.orders.size())))];
        if (drawn < orders.size())
            orders[drawn] = order;
        else
            orders.push_back(order);
        orders[drawn].day = day;
    }
    orders.resize(drawn);
}

void Futures::drawWeeks(Dice& dice, double days, std::vector<Order>& orders) const {
    orders.clear();
    bool demand = chain_.lastHadDemand;
    for (double start = 0; start < days; start += daysOfPeriod) {
        demand = dice.share() < (demand ? chain_.afterDemand : chain_.afterNone);
        if (!demand) continue;
        for (Order order : weeks_[static_cast<std::size_t>(dice.below(static_cast<int>(weeks_.size())))])
            if ((order.day += start) < days) orders.push_back(std::move(order));
    }
}

} // namespace riband::foresight
