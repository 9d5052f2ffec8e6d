#include "core/belt/identify/information.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

/// I(answer; reading) = sum over answers and readings of P(a) p(r|a) log2(p(r|a) / p(r)). The readings lie on
/// one even grid; each answer only touches the part of it that it can reach, so many answers cost little.
namespace riband::belt::identify {
namespace {

constexpr double reach = 5, nodesPerDeviation = 6;
constexpr std::size_t mostNodes = 200'000;

struct Grid {
    double start = 0;
    double step = 1;
    std::size_t nodes = 0;
};

Grid gridFor(const std::vector<Outlook>& outlooks, Scale scale) {
    double low = std::numeric_limits<double>::infinity(), high = -low, sharpest = low;
    for (const Outlook& each : outlooks) {
        if (!each.reading) continue;
        low = std::min(low, each.reading->mean - reach * each.reading->spread);
        high = std::max(high, each.reading->mean + reach * each.reading->spread);
        sharpest = std::min(sharpest, each.reading->spread);
    }
    if (!(low < high)) return {};
    if (scale == Scale::WholeNumbers)
        return {std::floor(low), 1, static_cast<std::size_t>(high - std::floor(low)) + 2};
    const double step = std::max(sharpest / nodesPerDeviation, (high - low) / static_cast<double>(mostNodes));
    return {low, step, static_cast<std::size_t>((high - low) / step) + 2};
}

/// What an answer puts on the nodes from `first` on; sums to 1.
struct Masses {
    std::size_t first = 0;
    std::vector<double> masses{};
};

/// All on the nearest node: for a reading so sharp that it falls between two.
Masses atNearest(const Outlook::Normal& reading, const Grid& grid) {
    const double node = std::round((reading.mean - grid.start) / grid.step);
    return {std::min(grid.nodes - 1, static_cast<std::size_t>(std::max(0.0, node))), {1.0}};
}

Masses spread(const Outlook::Normal& reading, const Grid& grid) {
    const double low = (reading.mean - reach * reading.spread - grid.start) / grid.step;
    const double high = (reading.mean + reach * reading.spread - grid.start) / grid.step;
    Masses spread{static_cast<std::size_t>(std::max(0.0, std::floor(low)))};
    const auto end = std::min(grid.nodes, static_cast<std::size_t>(std::max(0.0, high)) + 2);
    double sum = 0;
    for (auto node = spread.first; node < end; ++node) {
        const double z = (grid.start + static_cast<double>(node) * grid.step - reading.mean) / reading.spread;
        sum += spread.masses.emplace_back(std::exp(-z * z / 2));
    }
    if (sum <= 0) return atNearest(reading, grid);
    for (double& each : spread.masses)
        each /= sum;
    return spread;
}

/// A share of something, at most all of it: sums on a grid can come out a hair over.
double atMostOne(double share) { return std::min(1.0, share); }

/// Sum of p(r|a) log2(p(r|a) / p(r)).
double toldBy(const Masses& spread, const std::vector<double>& all) {
    double bits = 0;
    std::size_t node = spread.first;
    for (const double mass : spread.masses) {
        if (mass > 0 && all[node] > 0) bits += mass * std::log2(mass / all[node]);
        ++node;
    }
    return bits;
}

} // namespace

Information informationOf(const std::vector<Outlook>& outlooks, Scale scale) {
    const Grid grid = gridFor(outlooks, scale);
    std::vector<double> all(grid.nodes, 0.0), best(grid.nodes, 0.0);
    std::vector<Masses> spreads;
    double impossible = 0, bestImpossible = 0;
    for (const Outlook& each : outlooks) {
        spreads.push_back(each.reading ? spread(*each.reading, grid) : Masses{});
        if (!each.reading) {
            impossible += each.probability;
            bestImpossible = std::max(bestImpossible, each.probability);
        }
        std::size_t node = spreads.back().first;
        for (const double mass : spreads.back().masses) {
            all[node] += each.probability * mass;
            best[node] = std::max(best[node], each.probability * mass);
            ++node;
        }
    }
    double bits = impossible > 0 ? -impossible * std::log2(impossible) : 0;
    for (std::size_t a = 0; a < outlooks.size(); ++a)
        bits += toldBy(spreads[a], all) * outlooks[a].probability;
    double certainty = bestImpossible;
    for (const double each : best)
        certainty += each;
    return {std::max(0.0, bits), atMostOne(certainty)};
}

Information informationOf(const std::vector<double>& probabilities,
                          const std::vector<std::vector<double>>& chances) {
    double bits = 0, certainty = 0;
    const std::size_t words = chances.empty() ? 0 : chances.front().size();
    for (std::size_t word = 0; word < words; ++word) {
        double all = 0, best = 0;
        for (std::size_t a = 0; a < probabilities.size(); ++a) {
            all += probabilities[a] * chances[a][word];
            best = std::max(best, probabilities[a] * chances[a][word]);
        }
        certainty += best;
        for (std::size_t a = 0; a < probabilities.size(); ++a)
            if (const double p = chances[a][word]; p > 0 && all > 0)
                bits += probabilities[a] * p * std::log2(p / all);
    }
    return {std::max(0.0, bits), atMostOne(certainty)};
}

} // namespace riband::belt::identify
