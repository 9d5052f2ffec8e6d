#include "core/belt/drive/open_belt.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <stdexcept>

namespace riband::belt::drive {

using std::numbers::pi;

OpenBelt openBelt(double pitchDiameter1, double pitchDiameter2, double centreDistance) {
    const double difference = std::abs(pitchDiameter1 - pitchDiameter2);
    if (!(2 * centreDistance >= difference) || centreDistance <= 0)
        throw std::invalid_argument{"two pulleys are further apart than the difference of their radii"};
    const double lean = std::asin(difference / (2 * centreDistance));
    const double span = centreDistance * std::cos(lean);
    const double length = 2 * span + pi * (pitchDiameter1 + pitchDiameter2) / 2 + lean * difference;
    return {length, pi - 2 * lean, pi + 2 * lean, span};
}

double openBeltLength(double pitchDiameter1, double pitchDiameter2, double centreDistance) {
    return openBelt(pitchDiameter1, pitchDiameter2, centreDistance).length;
}

std::optional<double> centreDistance(double pitchDiameter1, double pitchDiameter2, double length) {
    // One pulley inside the other: the belt is round the larger one only.
    if (!(length > pi * std::max(pitchDiameter1, pitchDiameter2))) return std::nullopt;
    double close = std::abs(pitchDiameter1 - pitchDiameter2) / 2;
    double far = length / 2; // there and back is at least twice the distance
    for (int halving = 0; halving < 100 && close < far; ++halving) {
        const double middle = std::midpoint(close, far);
        (openBeltLength(pitchDiameter1, pitchDiameter2, middle) < length ? close : far) = middle;
    }
    return far;
}

} // namespace riband::belt::drive
