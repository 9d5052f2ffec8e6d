#include "core/belt/drive/route_choices.h"

#include "core/belt/drive/existing.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>

namespace riband::belt::drive {

namespace {

constexpr std::size_t eachSide = 3;
constexpr int steps = 400;

/// How much too long the belt's way is with the pulley set so far; nothing where no belt can lie.
class Excess {
public:
    Excess(const Layout& layout, const Mover& mover, double length)
        : layout_{layout}, mover_{mover}, length_{length}, home_{layout.stations.at(mover.station).centre} {
        const double unit = std::hypot(mover.way.x, mover.way.y);
        if (!(unit > 0)) throw std::invalid_argument{"a pulley is moved some way"};
        mover_.way = (1 / unit) * mover.way;
    }
    std::optional<double> at(double move) {
        layout_.stations[mover_.station].centre = home_ + move * mover_.way;
        const auto route = routeOf(layout_);
        return route ? std::optional{route->length - length_} : std::nullopt;
    }

private:
    Layout layout_;
    Mover mover_;
    double length_;
    Point home_;
};

/// Between two moves of which one is too long and one too short.
std::optional<double> halve(Excess& excess, double from, double to) {
    const auto first = excess.at(from);
    if (!first) return std::nullopt;
    const bool longAtFrom = *first > 0;
    for (int halving = 0; halving < 60 && from != to; ++halving) {
        const double middle = std::midpoint(from, to);
        const auto here = excess.at(middle);
        if (!here) return std::nullopt;
        ((*here > 0) == longAtFrom ? from : to) = middle;
    }
    return to;
}

/// The first crossing of zero on the way from home to `end`.
std::optional<double> firstMove(Excess& excess, double end) {
    auto before = excess.at(0);
    for (int step = 1; step <= steps; ++step) {
        if (before && *before == 0) return end * (step - 1) / steps;
        const auto here = excess.at(end * step / steps);
        if (before && here && (*before > 0) != (*here > 0))
            if (const auto move = halve(excess, end * (step - 1) / steps, end * step / steps)) return move;
        before = here;
    }
    return before && *before == 0 ? std::optional{end} : std::nullopt;
}

/// From the route outwards: the next few, and one more that is in stock.
void keepNext(const std::vector<RouteChoice>& side, std::vector<RouteChoice>& kept) {
    bool stockSeen = false;
    for (std::size_t i = 0; i < side.size(); ++i) {
        if (i >= eachSide && (stockSeen || !side[i].inStock())) continue;
        stockSeen = stockSeen || side[i].inStock();
        kept.push_back(side[i]);
    }
}

bool better(const RouteChoice& a, const RouteChoice& b) {
    if (a.move.has_value() != b.move.has_value()) return a.move.has_value();
    if (a.inStock() != b.inStock()) return a.inStock();
    return std::abs(a.excess) < std::abs(b.excess);
}

} // namespace

std::optional<double> moveFor(const Layout& layout, const Mover& mover, double length) {
    Excess excess{layout, mover, length};
    const auto forth = firstMove(excess, mover.farthest), back = firstMove(excess, -mover.back);
    if (forth && back) return std::abs(*forth) <= std::abs(*back) ? forth : back;
    return forth ? forth : back;
}

std::vector<RouteChoice> beltsFor(const Layout& layout, const Route& route, const std::optional<Mover>& mover,
                                  const std::optional<Extent>& width, const Tables& tables,
                                  const std::vector<Stocked>& stock) {
    if (!layout.profile) throw std::invalid_argument{"belts are looked for by their profile"};
    std::vector<RouteChoice> shorter, longer, kept;
    for (const auto& [length, known] : existing(*layout.profile, width, tables, stock)) {
        const double excess = length.inMillimetres() - route.length;
        auto& side = excess < 0 ? shorter : longer;
        side.push_back(
            {{layout.profile->name, known.teeth, length, ""}, known.listed, known.stock, excess, {}});
    }
    std::reverse(shorter.begin(), shorter.end());
    keepNext(shorter, kept);
    keepNext(longer, kept);
    for (RouteChoice& choice : kept)
        if (mover) choice.move = moveFor(layout, *mover, choice.belt.length.inMillimetres());
    std::stable_sort(kept.begin(), kept.end(), better);
    return kept;
}

} // namespace riband::belt::drive
