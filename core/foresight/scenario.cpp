#include "core/foresight/scenario.h"

#include <cmath>
#include <numeric>

namespace riband::foresight {

namespace {

std::size_t drawn(const std::vector<double>& shares, Dice& dice) {
    double left = dice.share() * std::accumulate(shares.begin(), shares.end(), 0.0);
    for (std::size_t i = 0; i + 1 < shares.size(); ++i)
        if ((left -= shares[i]) < 0) return i;
    return shares.size() - 1;
}

Size drawnWidth(const Scenario& scenario, double year, Dice& dice) {
    const auto& odd = scenario.odd;
    if (dice.share() < odd.share)
        return odd.from + odd.step * static_cast<Size>(dice.between(0, (odd.to - odd.from) / odd.step));
    const bool other = !scenario.otherMix.empty() && static_cast<std::int64_t>(year * 2) % 2 == 1;
    return scenario.setting.listed[drawn(other ? scenario.otherMix : scenario.mix, dice)];
}

void addLine(std::vector<Line>& lines, Line line) {
    for (const auto& other : lines)
        if (other.width == line.width) return; // an order's lines have different widths
    lines.push_back(line);
}

std::vector<Line> drawnLines(const Scenario& scenario, double year, Dice& dice) {
    const int count = dice.share() < scenario.severalLines ? 2 + dice.below(3) : 1;
    const bool bulk = dice.share() < scenario.bulk;
    std::vector<Line> lines;
    for (int i = 0; i < count; ++i) {
        const Size width = drawnWidth(scenario, year, dice);
        const int quantity = 1 + static_cast<int>(drawn(scenario.quantities, dice));
        addLine(lines, {width, bulk && i == 0 ? static_cast<int>(dice.between(10, 30)) : quantity});
    }
    return lines;
}

} // namespace

std::vector<Order> ordersOf(const Scenario& scenario, Dice dice) {
    std::vector<Order> orders;
    double year = 0;
    for (;;) {
        const double rate = scenario.trueOrdersPerYear * std::pow(1 + scenario.growth, year);
        year += -std::log1p(-dice.share()) / rate;
        if (year > scenario.years) return orders;
        orders.push_back({year * scenario.setting.daysPerYear, drawnLines(scenario, year, dice)});
    }
}

std::vector<Order> atClosingTime(const std::vector<Order>& orders) {
    std::vector<Order> days;
    for (const auto& order : orders) {
        if (days.empty() || std::floor(days.back().day) != std::floor(order.day)) days.emplace_back();
        auto& day = days.back();
        day.day = order.day;
        for (const auto& line : order.lines) {
            const auto same = std::find_if(day.lines.begin(), day.lines.end(),
                                           [&](const Line& other) { return other.width == line.width; });
            if (same == day.lines.end())
                day.lines.push_back(line);
            else
                same->quantity += line.quantity;
        }
    }
    return days;
}

namespace {

double between(double low, double high, Dice& dice) { return low + (high - low) * dice.share(); }

std::vector<double> drawnMix(std::size_t count, Dice& dice) {
    std::vector<double> mix(count);
    for (auto& share : mix)
        share = -std::log1p(-dice.share()) + 0.05;
    return mix;
}

void drawToothed(Scenario& s, Dice& dice) {
    static const std::vector<std::vector<Size>> families{{20000, 30000, 50000, 85000},
                                                         {9000, 15000, 25000},
                                                         {40000, 55000, 85000, 115000, 170000},
                                                         {9500, 12700, 19050, 25400},
                                                         {6000, 9000, 15000},
                                                         {10000, 16000, 25000, 32000, 50000, 75000},
                                                         {19050, 25400, 38100, 50800},
                                                         {25000, 32000, 50000, 75000, 100000}};
    s.setting.listed = families[static_cast<std::size_t>(dice.below(static_cast<int>(families.size())))];
    const Size widest = s.setting.listed.back();
    s.setting.sleeve = std::max<Size>(10000 * static_cast<Size>(dice.between(15, 55)), widest * 2);
    s.setting.rules = {500 * static_cast<Size>(dice.between(4, 6)), 0, 5000, 15000, 4000};
    if (dice.share() < 0.3) s.setting.rules.kerf = 100 * static_cast<Size>(dice.between(1, 8));
    if (dice.share() < 0.3) s.setting.rules.end = 1000 * static_cast<Size>(dice.between(2, 10));
    s.setting.holdingCost = 2000;
    s.odd = {between(0, 0.4, dice), s.setting.listed.front() * 7 / 10,
             std::min(widest * 13 / 10, s.setting.sleeve / 2), dice.share() < 0.5 ? 500 : 1};
}

void drawRibbed(Scenario& s, Dice& dice) {
    s.setting.ribs = true;
    s.setting.listed = {3, 4, 5, 6, 8, 10, 12};
    s.setting.listed.resize(static_cast<std::size_t>(dice.between(4, 7)));
    s.setting.sleeve = static_cast<Size>(dice.between(60, 150));
    s.setting.rules = {1, 0, 1, 3, 1};
    s.setting.holdingCost = 0.5;
    s.odd = {between(0, 0.2, dice), 3, 20, 1};
}

void drawDemand(Scenario& s, Dice& dice) {
    s.trueOrdersPerYear = 12 * std::pow(250.0, dice.share()); // 12 to 3000 a year
    const double enough = between(200, 900, dice) / s.trueOrdersPerYear;
    s.years = std::clamp(enough, 0.5, 20.0);
    s.setting.ordersPerYear =
        s.trueOrdersPerYear * (dice.share() < 0.5 ? 1.0 : std::pow(3.0, between(-1, 1, dice)));
    s.mix = drawnMix(s.setting.listed.size(), dice);
    if (dice.share() < 0.2) s.otherMix = drawnMix(s.setting.listed.size(), dice);
    if (dice.share() < 0.2) s.growth = between(-0.15, 0.3, dice);
    if (dice.share() < 0.1) s.odd.share = 1;
    if (dice.share() < 0.3) s.severalLines = between(0.1, 0.6, dice);
    if (dice.share() < 0.2) s.bulk = between(0.01, 0.08, dice);
}

} // namespace

Scenario drawnScenario(std::uint64_t number) {
    Dice dice = Dice::of(0x5EED0F5409ULL, number);
    Scenario s;
    s.name = "drawn " + std::to_string(number);
    if (dice.share() < 0.15)
        drawRibbed(s, dice);
    else
        drawToothed(s, dice);
    drawDemand(s, dice);
    s.setting.rackLimit = static_cast<int>(dice.between(6, dice.share() < 0.5 ? 10 : 20));
    s.setting.ageLimitDays = dice.share() < 0.7 ? 1800 : between(600, 1800, dice);
    return s;
}

} // namespace riband::foresight
