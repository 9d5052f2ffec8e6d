#include "core/shop/buying/reach.h"

#include "core/foresight/hindsight.h"
#include "core/measure/text.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace riband::shop {

namespace {

constexpr int pricings = 60; ///< the bound is right after any number, only lower

double daysFrom(Moment from, Moment to) {
    return std::chrono::duration<double, std::ratio<86400>>(to - from).count();
}

/// The orders of the period that a sleeve can serve. Days of a record end with today.
std::vector<foresight::Order> within(const BuyingBelt& belt, const BuyingOutlook& outlook,
                                     const Period& period) {
    const foresight::Record& record = belt.buying.record;
    const Moment end{outlook.today + std::chrono::days{1}};
    const double from = record.days - daysFrom(period.from, end);
    const double until = record.days - daysFrom(period.until, end);
    std::vector<foresight::Order> orders = foresight::servable(belt.buying.setting, record.orders);
    std::erase_if(orders, [&](const auto& order) { return order.day < from || order.day >= until; });
    return orders;
}

std::int64_t askedIn(const std::vector<foresight::Order>& orders) {
    return std::accumulate(orders.begin(), orders.end(), std::int64_t{0},
                           [](std::int64_t sum, const auto& order) {
                               for (const auto& line : order.lines)
                                   sum += static_cast<std::int64_t>(line.width) * line.quantity;
                               return sum;
                           });
}

} // namespace

Reach& Reach::operator+=(const Reach& other) {
    asked += other.asked;
    least += other.least;
    sold += other.sold;
    used += other.used;
    return *this;
}

std::vector<BeltReach> reach(const Shop& shop, const Period& period, const foresight::Work& work) {
    const BuyingOutlook outlook = lookAtBuying(shop, period.from);
    const auto moved = movedByBelt(shop, period);
    std::vector<BeltReach> belts;
    for (const BuyingBelt& belt : outlook.belts) {
        BeltReach& each =
            belts.emplace_back(BeltReach{belt.belt.id, belt.belt.designation, Reach{.unit = belt.belt.unit}});
        if (const auto row = moved.find(belt.belt.id); row != moved.end()) {
            each.reach.sold = row->second.sold;
            each.reach.used = row->second.used();
        }
    }
    foresight::onAllCores(
        belts.size(),
        [&](std::size_t belt) {
            const auto orders = within(outlook.belts[belt], outlook, period);
            Reach& each = belts[belt].reach;
            each.asked = askedIn(orders);
            for (const auto& order : orders)
                for (const auto& line : order.lines)
                    belts[belt].widths.insert(Extent::of(each.unit, line.width));
            if (each.asked > 0)
                each.least =
                    foresight::Hindsight{outlook.belts[belt].buying.setting, orders, pricings}.bound();
        },
        work);
    std::erase_if(belts, [](const BeltReach& belt) { return belt.reach.asked == 0; });
    std::stable_sort(belts.begin(), belts.end(), [](const BeltReach& a, const BeltReach& b) {
        return a.reach.beyond() > b.reach.beyond();
    });
    return belts;
}

std::optional<Reach> totalOf(const std::vector<BeltReach>& belts, Unit unit) {
    Reach sum{.unit = unit};
    for (const BeltReach& belt : belts)
        if (belt.reach.unit == unit) sum += belt.reach;
    if (sum.asked == 0) return std::nullopt;
    return sum;
}

Basis ordersBehind(const Shop& shop, const BeltReach& belt, const Period& period, const std::string& figure) {
    Basis basis{.lines = {{"at", "order", "customer", "width", "belts", "ordered"}, {}}};
    const store::Orders orders{shop.connection};
    const Moment first = Moment{dayOf(shop.now()) + std::chrono::days{1}} - longestRecord;
    std::int64_t sum = 0;
    for (const store::AskedLine& line : orders.askedSince(std::max(first, period.from))) {
        if (line.belt != belt.belt || line.at >= period.until || !belt.widths.contains(line.extent)) continue;
        const store::Order order = orders.at(line.order);
        const std::int64_t width = line.extent.count() * line.quantity;
        basis.lines.rows.push_back({printMoment(line.at), order.code, order.customerName,
                                    amountOf(belt.reach.unit, line.extent.count()),
                                    std::to_string(line.quantity), amountOf(belt.reach.unit, width)});
        sum += width;
    }
    basis.all = static_cast<std::int64_t>(basis.lines.rows.size());
    if (figure != "ordered") return basis;
    basis.sum = amountOf(belt.reach.unit, sum);
    basis.unit = wordFor(belt.reach.unit);
    return basis;
}

ReportTable tableOf(const std::vector<BeltReach>& belts) {
    ReportTable table{{"group", "unit", "ordered", "least_used", "sold", "used", "yield", "hindsight_yield",
                       "beyond_hindsight"},
                      {}};
    for (const BeltReach& belt : belts) {
        const Reach& reach = belt.reach;
        const auto amount = [&](double exact) {
            return amountOf(reach.unit, static_cast<std::int64_t>(std::llround(exact)));
        };
        table.rows.push_back({belt.designation, wordFor(reach.unit), amountOf(reach.unit, reach.asked),
                              amount(reach.least), amountOf(reach.unit, reach.sold),
                              amountOf(reach.unit, reach.used), reach.used > 0 ? percentOf(reach.had()) : "",
                              percentOf(reach.reachable()), amount(reach.beyond())});
    }
    return table;
}

} // namespace riband::shop
