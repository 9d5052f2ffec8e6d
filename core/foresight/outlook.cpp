#include "core/foresight/outlook.h"

#include <numeric>

namespace riband::foresight {

namespace {

constexpr double priorLines = 6;
constexpr double priorListed = 0.85;
constexpr std::array<double, 3> keeps{1.0, 0.985, 0.94}; // a line
constexpr double switching = 0.01;
constexpr std::array<double, 5> priorQuantity{.55, .22, .08, .09, .06};
constexpr std::array<double, 4> priorLineCount{.95, .03, .015, .005};
constexpr double quantityKeeps = 0.998;
constexpr double rateKeeps = 0.99;
constexpr int oddGrid = 40;
constexpr double priorOdd = 2; // lines, against the odd widths seen

} // namespace

Outlook::Outlook(const Setting& setting) : setting_{setting} {
    trust_ = {0.6, 0.3, 0.1};
    for (std::size_t i = 0; i < priorQuantity.size(); ++i)
        quantities_[static_cast<int>(i) + 1] = priorLines * priorQuantity[i];
    quantityTotal_ = priorLines;
    for (std::size_t i = 0; i < priorLineCount.size(); ++i)
        lineCounts_[i] = priorLines * priorLineCount[i];
    spread();
}

double Outlook::ordersPerYear() const {
    return (rateOrders_ + 2) / (rateYears_ + 2 / setting_.ordersPerYear);
}

int Outlook::timesSeen(Size width) const {
    const auto found = seen_.find(width);
    return found == seen_.end() ? 0 : found->second.times;
}

double Outlook::shareOfListed(Size width, std::size_t memory) const {
    const auto found = seen_.find(width);
    const double counted = found == seen_.end() ? 0 : found->second.weight[memory];
    return (priorLines * priorListed / static_cast<double>(setting_.listed.size()) + counted) /
           (priorLines + total_[memory]);
}

void Outlook::learnWidth(Size width) {
    const bool isListed = std::binary_search(setting_.listed.begin(), setting_.listed.end(), width);
    double all = 0;
    for (std::size_t m = 0; m < memories; ++m) {
        double share = 0;
        for (Size listed : setting_.listed)
            if (!isListed || listed == width) share += shareOfListed(listed, m);
        trust_[m] *= isListed ? share : 1 - share;
        all += trust_[m];
    }
    for (auto& trust : trust_)
        trust = trust / all * (1 - switching) + switching / memories;
    for (auto& [known, seen] : seen_)
        for (std::size_t m = 0; m < memories; ++m)
            seen.weight[m] *= keeps[m];
    auto& seen = seen_[width];
    ++seen.times;
    for (std::size_t m = 0; m < memories; ++m) {
        seen.weight[m] += 1;
        total_[m] = total_[m] * keeps[m] + 1;
    }
}

void Outlook::learn(const Order& order) {
    const double years = std::max(0.0, order.day - lastDay_) / setting_.daysPerYear;
    lastDay_ = std::max(lastDay_, order.day);
    rateOrders_ = rateOrders_ * rateKeeps + 1;
    rateYears_ = rateYears_ * rateKeeps + years;
    ++learned_;
    for (const auto& line : order.lines) {
        learnWidth(line.width);
        for (auto& [quantity, weight] : quantities_)
            weight *= quantityKeeps;
        quantities_[line.quantity] += 1;
        quantityTotal_ = quantityTotal_ * quantityKeeps + 1;
    }
    lineCounts_[std::min(order.lines.size(), lineCounts_.size()) - 1] += 1;
    spread();
}

void Outlook::addAround(std::map<Size, double>& odd, Size width, double weight) const {
    const Size unit = setting_.ribs ? 1 : 500;
    const Size step = std::max<Size>(unit, width / 25 / unit * unit);
    constexpr int reach = 4;
    for (int i = -reach; i <= reach; ++i)
        if (const Size near = width + i * step; near > 0) odd[near] += weight / (2 * reach + 1);
}

void Outlook::spread() {
    std::array<double, memories> oddShare{};
    std::map<Size, double> odd;
    const Size unit = setting_.ribs ? 1 : 500;
    const Size low = setting_.listed.front() * 7 / 10, high = setting_.listed.back() * 12 / 10;
    const Size step = std::max(unit, (high - low) / oddGrid / unit * unit);
    const int steps = std::max(1, (high - low) / step);
    for (int i = 0; i < steps; ++i)
        odd[std::max(unit, (low / unit + 1) * unit + i * step)] += priorOdd / steps;
    std::map<Size, double> sums;
    for (Size width : setting_.listed)
        for (std::size_t m = 0; m < memories; ++m) {
            const double share = shareOfListed(width, m);
            sums[width] += trust_[m] * share;
            oddShare[m] += share;
        }
    for (const auto& [width, seen] : seen_) {
        if (std::binary_search(setting_.listed.begin(), setting_.listed.end(), width)) continue;
        double weight = 0;
        for (std::size_t m = 0; m < memories; ++m)
            weight += trust_[m] * seen.weight[m];
        if (weight < 1e-3) continue;
        const double own = seen.times >= 3 ? 1.0 : 0.3;
        odd[width] += weight * own;
        if (own < 1) addAround(odd, width, weight * (1 - own));
    }
    double oddMass = 0, oddTotal = 0;
    for (std::size_t m = 0; m < memories; ++m)
        oddMass += trust_[m] * (1 - oddShare[m]);
    for (const auto& [width, weight] : odd)
        oddTotal += weight;
    const Size widest = setting_.sleeve - setting_.rules.trim - setting_.rules.kerf - setting_.rules.end;
    for (const auto& [width, weight] : odd)
        if (width <= widest) sums[width] += oddMass * weight / oddTotal;
    double all = 0;
    for (const auto& [width, share] : sums)
        all += share;
    widths_.clear();
    upTo_.clear();
    double running = 0;
    for (const auto& [width, share] : sums) {
        widths_.push_back({width, share / all});
        upTo_.push_back(running += share / all);
    }
    quantityUpTo_.clear();
    running = 0;
    for (const auto& [quantity, weight] : quantities_)
        quantityUpTo_.emplace_back(quantity, running += weight / quantityTotal_);
}

double Outlook::shareOfQuantity(int quantity) const {
    const auto found = quantities_.find(quantity);
    return found == quantities_.end() ? 0 : found->second / quantityTotal_;
}

double Outlook::shareOfLines(int lines) const {
    const double all = std::accumulate(lineCounts_.begin(), lineCounts_.end(), 0.0);
    return lineCounts_[static_cast<std::size_t>(lines - 1)] / all;
}

double Outlook::meanWidthOfOrder() const {
    double width = 0, quantity = 0, lines = 0;
    for (const auto& [size, share] : widths_)
        width += share * size;
    for (const auto& [count, weight] : quantities_)
        quantity += count * weight / quantityTotal_;
    for (int i = 1; i <= 4; ++i)
        lines += i * shareOfLines(i);
    return width * quantity * lines;
}

void Outlook::draw(Dice& dice, std::vector<Line>& lines) const {
    lines.clear();
    double left = dice.share() * std::accumulate(lineCounts_.begin(), lineCounts_.end(), 0.0);
    std::size_t count = 1;
    while (count < lineCounts_.size() && (left -= lineCounts_[count - 1]) >= 0)
        ++count;
    for (std::size_t i = 0; i < count; ++i) {
        const auto at = std::upper_bound(upTo_.begin(), upTo_.end() - 1, dice.share());
        const Size width = widths_[static_cast<std::size_t>(at - upTo_.begin())].width;
        const double share = dice.share();
        std::size_t q = 0;
        while (q + 1 < quantityUpTo_.size() && quantityUpTo_[q].second <= share)
            ++q;
        const bool twice =
            std::any_of(lines.begin(), lines.end(), [&](const Line& line) { return line.width == width; });
        if (!twice) lines.push_back({width, quantityUpTo_[q].first});
    }
}

} // namespace riband::foresight
