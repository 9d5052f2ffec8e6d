#include "core/foresight/buying/futures.h"

#include <cmath>

namespace riband::foresight {

namespace {

/// The orders of each week that had some.
std::vector<std::vector<Futures::Drawn>> weeksOf(const Record& record) {
    std::vector<std::vector<Futures::Drawn>> weeks;
    double present = -1;
    for (std::size_t order = 0; order < record.orders.size(); ++order) {
        const double day = record.orders[order].day, week = std::floor(day / daysOfPeriod);
        if (week != present) weeks.emplace_back();
        present = week;
        weeks.back().push_back({day - week * daysOfPeriod, order});
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

void Futures::draw(Dice& dice, double days, std::vector<Drawn>& drawn) const {
    drawn.clear();
    if (record_.orders.empty()) return;
    byWeeks_ ? drawWeeks(dice, days, drawn) : drawStream(dice, days, drawn);
}

void Futures::drawStream(Dice& dice, double days, std::vector<Drawn>& drawn) const {
    if (ordersPerDay_ <= 0) return;
    const auto orders = static_cast<int>(record_.orders.size());
    for (double day = 0; (day -= std::log1p(-dice.share()) / ordersPerDay_) < days;)
        drawn.push_back({day, static_cast<std::size_t>(dice.below(orders))});
}

void Futures::drawWeeks(Dice& dice, double days, std::vector<Drawn>& drawn) const {
    bool demand = chain_.lastHadDemand;
    for (double start = 0; start < days; start += daysOfPeriod) {
        demand = dice.share() < (demand ? chain_.afterDemand : chain_.afterNone);
        if (!demand) continue;
        for (const Drawn& each :
             weeks_[static_cast<std::size_t>(dice.below(static_cast<int>(weeks_.size())))])
            if (each.day + start < days) drawn.push_back({each.day + start, each.order});
    }
}

} // namespace riband::foresight
