#pragma once

#include "core/foresight/stock.h"

namespace riband::foresight {

/// What the rest of a piece that is still on the cutter is good for, its trim being paid: kept as a remnant,
/// or cut into ready belts that the shelf has room for, or both where the shelf mode allows.
///
/// A knapsack over the cells of the rest, one listed width after the other; a belt more of a width is worth a
/// bit less than the one before. Where only so many belts may be cut at once, they are counted along: there
/// is a table for each number that is still allowed. Without a shelf it is the worth curve itself.
class Fill {
public:
    explicit Fill(const Setting& setting);

    /// Gets ready for a shelf as it stands. `widest`: of the belts that the mounting cuts anyway.
    void prepare(const WorthTable& table, const std::array<std::int8_t, mostReady>& shelf, Size widest);

    /// G, by cell of the rest; entries below the reserve are those of nothing.
    const float* worth() const { return worth_; }

    struct Choice {
        std::array<int, mostReady> cut{}; ///< for the shelf
        Size left = 0;
        bool any = false; ///< anything at all for the shelf
    };
    /// The best use of a rest.
    Choice choose(const WorthTable& table, Size rest) const;

private:
    struct Layer {
        int listed;
        int step;                               ///< cells of a belt
        int room;                               ///< belts
        std::array<float, shelfLimit + 1> gain; ///< of so many more belts
    };
    void addLayer(std::size_t number, const Layer& layer);
    bool counts() const { return setting_.shelfAtOnce > 0; }
    /// So many belts more, at most, where `allowed` may still be cut.
    int mostOf(const Layer& layer, int allowed) const {
        return counts() ? std::min(layer.room, allowed) : layer.room;
    }
    /// The table of the first n layers and so many belts.
    std::size_t at(std::size_t layers, int allowed) const {
        return layers * static_cast<std::size_t>(setting_.shelfAtOnce + 1) +
               static_cast<std::size_t>(counts() ? allowed : 0);
    }
    Setting setting_;
    std::vector<Layer> layers_;
    std::vector<std::vector<float>> tables_; ///< by layers and, where they are counted, belts allowed
    std::vector<float> best_;                ///< Stub: better of keeping and finishing
    const float* worth_ = nullptr;
    /// What the tables were made from: many orders in a row meet the same shelf.
    struct Made {
        const WorthTable* table = nullptr;
        int version = -1;
        std::array<std::int8_t, mostReady> shelf{};
        Size reserve = -1;
        friend bool operator==(const Made&, const Made&) = default;
    } made_;
};

} // namespace riband::foresight
