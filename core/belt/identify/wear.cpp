#include "core/belt/identify/wear.h"

namespace riband::belt::identify {
namespace {

/// Gauss-Legendre on 0 to 1: exact for polynomials up to the seventh degree (Abramowitz and Stegun, 1964,
/// table 25.4, moved from -1 to 1).
const std::vector<WearNode> used{{.0694318442029737, .1739274225687269},
                                 {.3300094782075719, .3260725774312731},
                                 {.6699905217924281, .3260725774312731},
                                 {.9305681557970263, .1739274225687269}};
const std::vector<WearNode> fresh{{0, 1}};

std::vector<WearNode> eitherWay() {
    std::vector<WearNode> nodes{{0, .5}};
    for (const WearNode& node : used)
        nodes.push_back({node.wear, node.weight / 2});
    return nodes;
}

} // namespace

const std::vector<WearNode>& wearNodes(Condition condition) {
    static const std::vector<WearNode> unknown = eitherWay();
    if (condition == Condition::New) return fresh;
    return condition == Condition::Used ? used : unknown;
}

double mostWear(Condition condition) { return condition == Condition::New ? 0 : 1; }

WearMoments wearMoments(Condition condition) {
    WearMoments moments{0, 0};
    double square = 0;
    for (const auto& [wear, weight] : wearNodes(condition)) {
        moments.mean += weight * wear;
        square += weight * wear * wear;
    }
    moments.variance = square - moments.mean * moments.mean;
    return moments;
}

} // namespace riband::belt::identify
