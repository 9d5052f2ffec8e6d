#pragma once

#include "core/belt/identify/measurement.h"

#include <vector>

namespace riband::belt::identify {

/// What use does to a belt at the most; every share common practice, no source. A used belt measures long,
/// its teeth thin, its back and edges are rubbed. One figure from 0 (new) to 1 (ready for the bin) says how
/// far it has come.
namespace wear {
constexpr double stretchOfToothed = .002; ///< of the length: glass, steel and aramid hardly give
constexpr double stretchOfRibbed = .006;  ///< polyester cords give more
constexpr double toothLoss = .08;         ///< of the height and of the width at the root
constexpr double backLoss = .03;          ///< of the total thickness
constexpr double edgeLoss = .5;           ///< mm of the width
} // namespace wear

/// A degree of wear and how likely it is.
struct WearNode {
    double wear;
    double weight;
};

/// Fixed nodes that stand for all degrees of wear, weights summing to 1. Used: even over 0 to 1
/// (Gauss-Legendre, four points). Unknown: new as often as used.
const std::vector<WearNode>& wearNodes(Condition condition);

/// The most that is possible: 0 of a new belt, else 1.
double mostWear(Condition condition);

/// Mean and variance of the nodes.
struct WearMoments {
    double mean;
    double variance;
};
WearMoments wearMoments(Condition condition);

} // namespace riband::belt::identify
