#pragma once

#include <optional>

/// An open belt over two pulleys, and belts over more. Lengths in mm, angles in radians unless a name says
/// degrees; doubles, for this is geometry: a belt that can be bought keeps its exact Length. Diameters are
/// those of the pitch circles, where the cords run (docs/drive.md).
namespace riband::belt::drive {

/// The length at the cords. The order of the pulleys does not matter. Throws std::invalid_argument where one
/// pitch circle lies in the other.
double openBeltLength(double pitchDiameter1, double pitchDiameter2, double centreDistance);

/// The inverse, to the last digit: the length grows with the distance, so bisection always works. Nothing if
/// the belt is too short to go round both. Circles that overlap are allowed: whether pulleys may is not asked
/// here.
std::optional<double> centreDistance(double pitchDiameter1, double pitchDiameter2, double length);

/// How the belt lies.
struct OpenBelt {
    double length;   ///< at the cords
    double arcSmall; ///< that it wraps of the smaller pulley, at most half a turn
    double arcLarge;
    double span; ///< of each of the two free runs
};
/// Throws as openBeltLength does.
OpenBelt openBelt(double pitchDiameter1, double pitchDiameter2, double centreDistance);

} // namespace riband::belt::drive
