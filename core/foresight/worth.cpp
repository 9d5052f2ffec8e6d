#include "core/foresight/worth.h"

namespace riband::foresight {

namespace {

constexpr double openingCharge = 0.01; // over the width of a new sleeve

Size cellOf(const Setting& setting) {
    if (setting.ribs) return 1;
    Size cell = setting.sleeve > 800000 ? 1000 : 500;
    for (Size width : setting.listed)
        if (width % 500 != 0) cell = setting.sleeve > 800000 ? 500 : 250;
    return std::max(Size{1}, std::min(cell, setting.sleeve / 100));
}

} // namespace

Grid::Grid(const Setting& setting)
    : cell_{cellOf(setting)}, magic_{((std::uint64_t{1} << 32) + static_cast<std::uint64_t>(cell_) - 1) /
                                     static_cast<std::uint64_t>(cell_)},
      cells_{setting.sleeve / cell_} {}

WorthTable::WorthTable(const Setting& setting)
    : grid{setting}, piece(static_cast<std::size_t>(grid.cells()) + 1, 0.0F),
      sleeve{static_cast<float>(setting.sleeve * (1 + openingCharge))}, mounting{static_cast<float>(
                                                                            setting.rules.mountingCost)} {
    // Before anything is learned: most of the width, once it is of use at all.
    for (int i = grid.at(setting.leastUseful()) + 1; i <= grid.cells(); ++i)
        piece[static_cast<std::size_t>(i)] = 0.9F * static_cast<float>(i * grid.cell());
}

} // namespace riband::foresight
