#pragma once

#include "core/foresight/worth.h"

namespace riband::foresight {

inline constexpr int mostRemnants = 30; ///< that can be weighed at once; a rack limit above is taken as this

/// Remnants and ready belts as the weighing sees them: small, copied thousands of times.
struct Stock {
    struct Remnant {
        Size size;
        float fresh;           ///< 1; less near the age limit: share of its worth that it may still give
        std::int32_t name = 0; ///< goes along; a rest is named -1, -2 .. in the order of the way's shares
    };
    std::array<Remnant, mostRemnants + mostParts> remnants;
    int count = 0;
    std::array<std::int8_t, mostReady> ready{};

    void add(Remnant remnant) { remnants[static_cast<std::size_t>(count++)] = remnant; }
    void addReady(int listed, int belts) {
        auto& there = ready[static_cast<std::size_t>(listed)];
        there = static_cast<std::int8_t>(there + belts);
    }
    void remove(int i) {
        remnants[static_cast<std::size_t>(i)] = remnants[static_cast<std::size_t>(--count)];
    }
    std::span<const Remnant> all() const { return {remnants.data(), static_cast<std::size_t>(count)}; }
};

/// A part of the order cut from one piece.
struct Share {
    int remnant; ///< place in the stock, -1 for a new sleeve
    int part;
    friend bool operator==(const Share&, const Share&) = default;
};

/// A way to serve an order.
struct Way {
    Worth cost = 0;                    ///< by the table
    std::array<int, mostLines> take{}; ///< ready belts for each line
    std::vector<Share> shares;
    bool fills = true; ///< also cuts for the shelf what pays
};

} // namespace riband::foresight
