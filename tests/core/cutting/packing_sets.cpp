#include "tests/core/cutting/packing_sets.h"

#include "tests/core/cutting/random_problems.h"

#include <map>

namespace riband::cutting::testing {

namespace {

Extent units(std::int64_t count) { return Width::micrometres(count); }

/// Three items that fill a bin each, so the best is a third of their number: 380 to 490, then 250 to half of
/// the room, then what is left.
std::vector<std::int64_t> triplets(const PackingClass& of, Dice& dice) {
    std::vector<std::int64_t> items;
    for (int bin = 0; bin < of.items / 3; ++bin) {
        const std::int64_t first = dice.number(380, 490), room = of.capacity - first;
        const std::int64_t second = dice.number(250, room / 2);
        items.insert(items.end(), {first, second, room - second});
    }
    return items;
}

std::vector<std::int64_t> itemsOf(const PackingClass& of, Dice& dice) {
    if (of.low == 0) return triplets(of, dice);
    std::vector<std::int64_t> items;
    for (int i = 0; i < of.items; ++i)
        items.push_back(dice.number(of.low, of.high));
    return items;
}

} // namespace

std::vector<Worth::Point> packingWorth(const PackingClass& of) { return {{of.capacity, of.capacity}}; }

Problem packingProblem(const PackingClass& of, std::uint64_t seed) {
    Dice dice{seed};
    std::map<std::int64_t, std::int64_t> belts;
    for (const std::int64_t item : itemsOf(of, dice))
        ++belts[item];
    std::vector<Line> lines;
    for (const auto& [width, count] : belts)
        lines.push_back({std::to_string(width), units(width), count});
    std::vector<Piece> pieces;
    for (int i = 0; i < of.items; ++i)
        pieces.push_back({std::to_string(i), PieceKind::Sleeve, units(of.capacity), Date{}});
    return {Rules{units(0), units(0), units(0), units(1)}, std::move(pieces), std::move(lines),
            Worth::steps(units(1), packingWorth(of)), units(0)};
}

} // namespace riband::cutting::testing
