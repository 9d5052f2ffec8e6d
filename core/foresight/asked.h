#pragma once

#include "core/foresight/answer.h"

#include <array>
#include <span>

namespace riband::foresight {

inline constexpr int mostLines = 6;  ///< of an order that is weighed as a whole
inline constexpr int mostParts = 64; ///< ways to take some of it
inline constexpr int mostReady = 16; ///< widths that may lie on the shelf

/// An order, or a part of one, made ready for weighing. Part j of it is a number: which belts of which line
/// are in it; part 0 is nothing, the last one is all. Counts of the lines are the digits of j.
class Asked {
public:
    struct Item {
        Size width;
        Size step; ///< width and kerf
        int quantity;
        int listed; ///< place among the listed widths, -1 for an odd one
    };
    Asked() = default;
    /// At most mostLines lines and mostParts parts; pieces() of larger orders fit.
    Asked(const Setting& setting, std::span<const Line> lines);

    int parts() const { return parts_; }
    std::span<const Item> items() const { return {items_.data(), static_cast<std::size_t>(count_)}; }
    bool isSingle() const { return count_ == 1; }
    Size size(int part) const {
        return isSingle() ? part * items_[0].step : size_[static_cast<std::size_t>(part)];
    }
    Size widest(int part) const {
        return isSingle() ? items_[0].width : widest_[static_cast<std::size_t>(part)];
    }
    /// Belts of a line in a part.
    int belts(int part, int line) const;
    int stride(int line) const { return stride_[static_cast<std::size_t>(line)]; }
    /// Pairs (whole, part of it), wholes falling: what to go through when a piece may take a part of each
    /// whole.
    struct Pair {
        std::uint8_t whole, part;
        std::uint8_t more; ///< a bit for each line of which the whole has more than the part
    };
    std::span<const Pair> pairs() const { return pairs_; }
    /// Steps of weighing it against one piece.
    int work() const {
        constexpr int toPrice = 3; // for each part of several lines
        return isSingle() ? (parts_ * (parts_ - 1)) / 2 : toPrice * parts_ + static_cast<int>(pairs_.size());
    }
    /// What weighing it against so many pieces takes, told in orders of two belts on a rack of ten.
    double effort(int pieces) const {
        constexpr double always = 12, ofTwo = always + 3, own = 4; // measured
        return (always + work()) / ofTwo * (own + pieces) / (own + 10);
    }

private:
    void addPairs(int whole);
    std::array<Item, mostLines> items_{};
    std::array<int, mostLines> stride_{};
    int count_ = 0;
    int parts_ = 1;
    std::vector<Size> size_, widest_; ///< of each part; empty for a single line
    std::vector<Pair> pairs_;
};

/// The order cut up so that each Asked stays within its limits. Most orders are one.
std::vector<Asked> weighable(const Setting& setting, const std::vector<Line>& lines);

} // namespace riband::foresight
