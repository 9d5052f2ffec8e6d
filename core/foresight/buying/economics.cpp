#include "core/foresight/buying/economics.h"

#include <algorithm>
#include <cmath>

namespace riband::foresight {

int economicLot(double sleevesPerYear, double orderCost, double holdingOfSleeve, int most) {
    const auto cost = [&](int lot) { return orderCost * sleevesPerYear / lot + holdingOfSleeve * lot / 2; };
    const double root =
        holdingOfSleeve > 0 ? std::sqrt(2 * orderCost * sleevesPerYear / holdingOfSleeve) : most;
    const int below = std::clamp(static_cast<int>(std::min<double>(root, most)), 1, std::max(most, 1));
    const int above = std::min(below + 1, std::max(most, 1));
    return cost(above) < cost(below) ? above : below;
}

} // namespace riband::foresight
