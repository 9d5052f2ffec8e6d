#pragma once

#include "core/foresight/asked.h"

namespace riband::foresight {

/// Widths by cells: 0.5 mm, 0.25 mm where a listed width asks for it, one rib. A width counts as the cell it
/// fills.
class Grid {
public:
    explicit Grid(const Setting& setting);
    int at(Size width) const { return static_cast<int>((static_cast<std::uint64_t>(width) * magic_) >> 32); }
    Size cell() const { return cell_; }
    int cells() const { return cells_; } ///< of a sleeve; tables have one entry more
    /// Cells that a belt surely fits in.
    int upTo(Size width) const { return (width + cell_ - 1) / cell_; }

private:
    Size cell_;
    std::uint64_t magic_; ///< width * magic / 2^32 is width / cell, exact below 4 m
    int cells_;
};

/// What widths are expected to be good for. The one and only G of fit, price rule, look-ahead and answer.
struct WorthTable {
    explicit WorthTable(const Setting& setting);

    Grid grid;
    std::vector<float> piece; ///< V: of a remnant, by cell; non-decreasing, at most its width, 0 if useless
    float sleeve;             ///< what opening a new one is charged at, a little over its width
    float mounting;
    /// ready[l][n]: worth of n ready belts of listed width l together. Concave.
    std::array<std::array<float, shelfLimit + 1>, mostReady> ready{};
    std::array<int, mostReady> target{}; ///< ready belts that are worth having, at most the shelf's limit

    int version =
        0; ///< changes with the contents, so that what was worked out from them is known to be stale

    /// Some ready belt is worth having: then every order served asks for a knapsack.
    bool wantsReady() const {
        return std::any_of(target.begin(), target.end(), [](int belts) { return belts > 0; });
    }
    float of(Size width) const { return piece[static_cast<std::size_t>(grid.at(width))]; }
};

} // namespace riband::foresight
