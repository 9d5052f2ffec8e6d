#include "core/foresight/buying/consumption.h"

#include "core/foresight/best_fit.h"
#include "core/foresight/referee.h"

namespace riband::foresight {

namespace {

constexpr double mostYears = 20;

/// Width that is left and can give something yet.
double usefulLeft(const Setting& setting, const Referee& referee) {
    double left = 0;
    for (const auto& [name, piece] : referee.rack())
        if (piece.size >= setting.leastUseful()) left += piece.size;
    return left;
}

std::vector<Remnant> rackOf(const Referee& referee) {
    std::vector<Remnant> rack;
    for (const auto& [name, piece] : referee.rack())
        rack.push_back({piece.size, piece.opened - referee.tally().days});
    return rack;
}

} // namespace

Consumption consumptionOf(const Setting& setting, const Futures& futures, Dice dice) {
    Consumption consumption;
    if (futures.ordersPerDay() <= 0) return consumption;
    const double days = std::min(mostYears * setting.daysPerYear, mostOrders / futures.ordersPerDay());
    std::vector<Futures::Drawn> drawn;
    futures.draw(dice, days, drawn);
    std::vector<Order> orders;
    for (const Futures::Drawn& each : drawn)
        if (auto lines = servable(setting, futures.orders()[each.order].lines); !lines.empty())
            orders.push_back({each.day, std::move(lines)});
    if (orders.empty()) return consumption;
    BestFit counter{setting};
    Referee referee{setting};
    for (const Order& order : orders)
        referee.book(order, counter.answer(order));
    const Tally& tally = referee.tally();
    consumption.sold = static_cast<double>(tally.sold);
    consumption.used = static_cast<double>(tally.sleeves) * setting.sleeve - usefulLeft(setting, referee);
    consumption.usedPerSold = consumption.used / consumption.sold;
    consumption.mountingsPerOrder = static_cast<double>(tally.mountings) / static_cast<double>(orders.size());
    if (tally.days > 0) consumption.remnantsHeld = tally.widthDays / tally.days;
    consumption.rack = rackOf(referee);
    return consumption;
}

} // namespace riband::foresight
