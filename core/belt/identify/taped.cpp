#include "core/belt/identify/taped.h"

#include "core/belt/identify/readings.h"

#include <algorithm>
#include <cmath>

namespace riband::belt::identify {
namespace {

constexpr double errorsAllowed = 2; ///< nineteen readings in twenty
constexpr std::size_t mostOthers = 3;
constexpr Measure hows[] = {Measure::Flat, Measure::Outside, Measure::Inside};

/// One belt, measured one way.
struct Look {
    Measure how;
    double expected, allowed, off; ///< `off` beyond new to worn out, not negative
    bool fits() const { return off <= allowed; }
};

Look look(Measure how, const Sizes& sizes, const Belt& belt, double measured, double error) {
    const bool ribbed = sizes.profile->ribbed();
    const Extension extension{belt.length.inMillimetres(),
                              belt.teeth ? static_cast<double>(belt.teeth->count()) : 0};
    const Way way = *lengthReading(how, sizes.figures, ribbed, extension);
    const double worn = way.atNew + way.perWear;
    const double off =
        std::max({0.0, std::min(way.atNew, worn) - measured, measured - std::max(way.atNew, worn)});
    return {how, way.atNew, errorsAllowed * std::hypot(error, way.spread), off};
}

Look bestOf(const Sizes& sizes, const Belt& belt, double measured, double error) {
    Look best = look(hows[0], sizes, belt, measured, error);
    if (best.fits()) return best;
    for (const Measure how : hows) {
        const Look other = look(how, sizes, belt, measured, error);
        if (other.fits()) return other;
        if (other.off < best.off) best = other;
    }
    return best;
}

std::vector<Belt> othersThatFit(const Look& wanted, const Sizes& sizes, const Belt& belt, double measured,
                                double error, const Tables& tables) {
    std::vector<std::pair<double, Belt>> found;
    for (const MadeLength& made : tables.lengths(belt.profile)) {
        const Belt other{belt.profile, made.teeth, made.length, ""};
        if (other.length == belt.length) continue;
        const Look seen = look(wanted.fits() ? wanted.how : Measure::Flat, sizes, other, measured, error);
        if (seen.fits()) found.emplace_back(std::abs(measured - seen.expected), other);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Belt> nearest;
    for (std::size_t i = 0; i < std::min(found.size(), mostOthers); ++i)
        nearest.push_back(found[i].second);
    return nearest;
}

} // namespace

std::optional<Taped> taped(const Belt& belt, double measured, double error, const Tables& tables) {
    for (const Sizes& sizes : sizesOf(tables)) {
        if (sizes.profile->name != belt.profile) continue;
        const Look best = bestOf(sizes, belt, measured, error);
        return Taped{best.how,      best.fits(),  measured,
                     best.expected, best.allowed, othersThatFit(best, sizes, belt, measured, error, tables)};
    }
    return std::nullopt;
}

} // namespace riband::belt::identify
