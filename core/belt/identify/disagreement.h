#pragma once

#include "core/belt/identify/posterior.h"

namespace riband::belt::identify {

/// A reading that does not go with the others.
struct Disagreement {
    Measure what;
    int over;        ///< as in the measurement
    double given;    ///< 0 for a shape
    double expected; ///< what the belt would have read that all the others fit best
    double by() const { return given - expected; }
    Belt belt;          ///< that belt
    bool fitsOtherwise; ///< without this reading all others agree; else several disagree at once
};

/// Over so many standard errors no belt is taken to have given the reading.
constexpr double mostMisfit = 4;

/// Empty if some possible belt, new or worn, fits all readings. Else the readings one of which must be wrong:
/// each such that the others agree without it; or, where no single one will do, all that are off the belt
/// that comes nearest. `expected` is of the likeliest belt by `prior` that fits the others.
std::vector<Disagreement> disagreementsOf(const Sample& sample, const Prior& prior);

} // namespace riband::belt::identify
