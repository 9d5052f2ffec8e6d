#include "core/foresight/replay/closing_time.h"

#include <algorithm>

namespace riband::foresight {

namespace {

constexpr double openingCharge = 0.03;
constexpr std::size_t mostJoined = 6; ///< beyond so many orders of one belt a day each is cut by itself

Order joined(const Order& a, const Order& b) {
    Order both = a;
    for (const Line& line : b.lines) {
        const auto same = std::find_if(both.lines.begin(), both.lines.end(),
                                       [&](const Line& other) { return other.width == line.width; });
        if (same == both.lines.end())
            both.lines.push_back(line);
        else
            same->quantity += line.quantity;
    }
    return both;
}

/// Width used up and labour, as width.
double costOf(const Counter& before, const Counter& after, const Setting& setting) {
    const double opened = after.opened - before.opened;
    return opened * setting.sleeve * (1 + openingCharge) + before.rack.held() - after.rack.held() +
           (after.mountings - before.mountings) * setting.rules.mountingCost;
}

/// Infinite if not all can be served.
struct Tried {
    Counter counter;
    double cost;
    bool all;
};

Tried tryCutting(const Counter& before, const Setting& setting, const std::vector<Order>& orders,
                 int sleeves) {
    Counter after = before;
    const bool all = cutEach(after, orders, sleeves).empty();
    const double cost = costOf(before, after, setting);
    return {std::move(after), cost, all};
}

std::vector<Order> withJoined(const std::vector<Order>& orders, std::size_t a, std::size_t b) {
    std::vector<Order> fewer = orders;
    fewer[a] = joined(orders[a], orders[b]);
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(b));
    return fewer;
}

/// The best of all ways to join two; false if none is better.
bool joinBest(const Counter& before, const Setting& setting, int sleeves, std::vector<Order>& orders,
              Tried& best) {
    std::vector<Order> better;
    for (std::size_t a = 0; a < orders.size(); ++a)
        for (std::size_t b = a + 1; b < orders.size(); ++b) {
            std::vector<Order> fewer = withJoined(orders, a, b);
            Tried tried = tryCutting(before, setting, fewer, sleeves);
            if (!tried.all || tried.cost >= best.cost) continue;
            best = std::move(tried);
            better = std::move(fewer);
        }
    if (better.empty()) return false;
    orders = std::move(better);
    return true;
}

} // namespace

std::vector<Order> cutEach(Counter& counter, const std::vector<Order>& orders, int sleeves) {
    std::vector<Order> refused;
    for (const Order& order : orders) {
        BestFit before = counter.rack;
        const Answer answer = counter.rack.answer(order);
        const auto opens = std::count_if(answer.mountings.begin(), answer.mountings.end(),
                                         [](const Mounting& each) { return each.opensSleeve; });
        if (counter.opened + opens > sleeves) {
            counter.rack = std::move(before);
            refused.push_back(order);
            continue;
        }
        counter.opened += static_cast<int>(opens);
        counter.mountings += static_cast<int>(answer.mountings.size());
    }
    return refused;
}

std::vector<Order> cutTogether(Counter& counter, const Setting& setting, const std::vector<Order>& orders,
                               int sleeves) {
    if (orders.size() < 2 || orders.size() > mostJoined) return cutEach(counter, orders, sleeves);
    std::vector<Order> groups = orders;
    Tried best = tryCutting(counter, setting, groups, sleeves);
    if (!best.all) return cutEach(counter, orders, sleeves);
    while (groups.size() > 1 && joinBest(counter, setting, sleeves, groups, best)) {
    }
    counter = std::move(best.counter);
    return {};
}

} // namespace riband::foresight
