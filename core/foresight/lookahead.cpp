#include "core/foresight/lookahead.h"

#include <cmath>

namespace riband::foresight {

namespace {
constexpr int fewest = 8;          // futures that a choice rests on
constexpr double withShelf = 2.75; // plain orders that one is worth which a shelf may serve; measured
} // namespace

LookAhead::LookAhead(const Setting& setting, Knobs knobs)
    : setting_{setting}, knobs_{knobs}, rule_{setting} {}

void LookAhead::drawFutures(const Outlook& outlook, std::uint64_t seed, int pieces, int upTo) {
    std::vector<Line> lines;
    for (int f = static_cast<int>(futures_.size()); f < upTo; ++f) {
        Dice dice = Dice::of(seed, static_cast<std::uint64_t>(f));
        auto& future = futures_.emplace_back();
        future.orders.reserve(static_cast<std::size_t>(knobs_.horizon));
        for (int i = 0; i < knobs_.horizon; ++i) {
            outlook.draw(dice, lines);
            if (lines.size() == 1 && lines[0].quantity < mostParts) {
                future.orders.emplace_back(setting_, lines);
            } else {
                for (auto& asked : weighable(setting_, lines))
                    future.orders.push_back(std::move(asked));
            }
        }
        for (const auto& asked : future.orders)
            future.work += anOrder_ * std::max(1.0, asked.effort(pieces));
    }
}

/// What the stock at the horizon is good for, less what it costs to hold until it is used up.
double LookAhead::ending(const WorthTable& table, const Stock& stock) const {
    double worth = 0, width = 0;
    for (const auto& remnant : stock.all()) {
        worth += remnant.fresh * table.of(remnant.size);
        width += remnant.size;
    }
    for (std::size_t l = 0; l < mostReady; ++l)
        worth += table.ready[l][static_cast<std::size_t>(stock.ready[l])];
    const double orders = width / (2 * usedPerOrder_); // to live on the mean
    return -worth + perOrderInterest_ * width * orders + perOrderHolding_ * stock.count * orders;
}

double LookAhead::follow(const WorthTable& table, Stock stock, int future) {
    double cost = 0;
    for (const auto& asked : futures_[static_cast<std::size_t>(future)].orders) {
        rule_.choose(table, stock, asked, way_);
        const auto done = rule_.apply(table, stock, asked, way_);
        cost += done.sleeves * static_cast<double>(setting_.sleeve) +
                done.mountings * setting_.rules.mountingCost;
        double width = 0;
        for (const auto& remnant : stock.all())
            width += remnant.size;
        cost += perOrderHolding_ * stock.count + perOrderInterest_ * width;
    }
    return cost + ending(table, stock);
}

LookAhead::Verdict LookAhead::judge(const WorthTable& table, const Outlook& outlook, const Stock& stock,
                                    const Asked& asked, const std::vector<Way>& ways, std::uint64_t seed) {
    perOrderInterest_ = knobs_.interestWeight * setting_.interest / outlook.ordersPerYear();
    perOrderHolding_ = knobs_.interestWeight * setting_.holdingCost / outlook.ordersPerYear();
    usedPerOrder_ = outlook.meanWidthOfOrder() + setting_.rules.trim;
    anOrder_ = table.wantsReady() ? withShelf : 1;
    futures_.clear();
    Verdict verdict;
    const std::size_t count = ways.size();
    std::vector<Stock> after(count, stock);
    std::vector<double> now(count), sum(count, 0.0);
    std::vector<std::vector<double>> costs(count);
    std::vector<bool> in(count, true);
    for (std::size_t i = 0; i < count; ++i) {
        const auto done = rule_.apply(table, after[i], asked, ways[i]);
        now[i] = done.sleeves * static_cast<double>(setting_.sleeve) +
                 done.mountings * setting_.rules.mountingCost;
    }
    verdict.best = 0;
    std::size_t left = count;
    drawFutures(outlook, seed, stock.count, fewest);
    double budget = knobs_.budget, aFuture = 0;
    for (const auto& future : futures_)
        aFuture += future.work / fewest;
    const auto affordable = static_cast<int>(budget / (2 * aFuture * static_cast<double>(count)));
    for (int upTo = std::clamp(affordable, fewest, knobs_.first); left > 1 && upTo <= knobs_.most;
         upTo *= 2) {
        // An order of many belts is rare and dear: what is spent is counted future by future.
        for (int& f = verdict.futures; f < upTo && (f < fewest || budget > 0); ++f) {
            drawFutures(outlook, seed, stock.count, f + 1);
            for (std::size_t i = 0; i < count; ++i) {
                if (!in[i]) continue;
                costs[i].push_back(now[i] + follow(table, after[i], f));
                sum[i] += costs[i].back();
            }
            budget -= futures_[static_cast<std::size_t>(f)].work * static_cast<double>(left);
        }
        const int met = verdict.futures;
        verdict.best = count;
        for (std::size_t i = 0; i < count; ++i)
            if (in[i] && (verdict.best == count || sum[i] < sum[verdict.best])) verdict.best = i;
        for (std::size_t i = 0; i < count; ++i) {
            if (!in[i] || i == verdict.best) continue;
            double squares = 0;
            const double mean = (sum[i] - sum[verdict.best]) / met;
            for (std::size_t f = 0; f < costs[i].size(); ++f) {
                const double each = costs[i][f] - costs[verdict.best][f] - mean;
                squares += each * each;
            }
            const double doubt = std::sqrt(squares) / met;
            if (mean > (met < 32 ? 3 : 2) * doubt) {
                in[i] = false;
                --left;
            }
        }
        if (budget < upTo * aFuture * static_cast<double>(left)) break;
    }
    // A way dropped early saw fewer futures: it is compared with the best on those that both met.
    for (std::size_t i = 0; i < count; ++i) {
        double more =
            now[i] + ending(table, after[i]) - now[verdict.best] - ending(table, after[verdict.best]);
        for (std::size_t f = 0; f < costs[i].size(); ++f)
            more = (f == 0 ? 0 : more) + (costs[i][f] - costs[verdict.best][f]);
        verdict.cost.push_back(costs[i].empty() ? more : more / static_cast<double>(costs[i].size()));
    }
    return verdict;
}

} // namespace riband::foresight
