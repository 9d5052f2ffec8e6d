#pragma once

#include "core/cutting/problem.h"

#include <random>

namespace riband::cutting::testing {

/// What random problems look like.
struct Mix {
    Unit unit = Unit::Micrometre;
    int lines = 3, mostBelts = 3; ///< up to so many
    int sleeves = 2, remnants = 4, ready = 1;
    std::int64_t widthStep = 500; ///< all widths are multiples of it
    std::int64_t narrowest = 6'000, widest = 90'000;
    std::int64_t narrowestPiece = 10'000, sleeve = 400'000;
    std::int64_t mostKerf = 0, mostMountingCost = 0;
    int worthSteps = 0; ///< 0: plain
};

/// Small whole problems; the same seed gives the same problem on every machine.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_{seed} {}
    /// From low to high, both possible.
    std::int64_t number(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(high - low + 1));
    }
    std::int64_t multiple(std::int64_t step, std::int64_t low, std::int64_t high) {
        return number((low + step - 1) / step, high / step) * step;
    }

private:
    std::mt19937_64 engine_;
};

Problem randomProblem(const Mix& mix, std::uint64_t seed);

/// The mix for the seed: rules, sizes and worth of all sorts in turn.
Mix smallMix(std::uint64_t seed);

} // namespace riband::cutting::testing
