#pragma once

#include <array>
#include <cstddef>
#include <vector>

/// Lengths found without a tangent, an arc or a formula of belts: what the drives of the program are measured
/// by.
namespace riband::belt::drive::testing {

struct Disc {
    double x, y, radius;
    bool back = false; ///< the thread passes with this disc outside
};

/// Round the convex hull of discs: by Cauchy the integral, over the whole turn of directions, of how far they
/// reach. Cut where another disc takes over, each piece integrated by the GNU Scientific Library.
double perimeter(const std::vector<Disc>& discs);

/// The distance at which the hull of two discs is so long, by the root finder of the GNU Scientific Library.
double distanceOf(double diameter1, double diameter2, double length);

/// The discs that the hull touches, in turn and counter-clockwise, the first of them in front; by trying
/// 7,200 directions.
std::vector<std::size_t> hullOrder(const std::vector<Disc>& discs);

/// A thread round the discs in their order, counter-clockwise round those inside. Each free run is found by a
/// ruler that is laid against two polygons of many corners; on the discs the corners are counted.
struct Thread {
    double length;
    std::vector<double> turned; ///< radians at each disc
};
Thread threadByRuler(const std::vector<Disc>& discs);

/// What is seen of a closed line of many points, whatever made it.
struct Laid {
    double length;
    double clearance;             ///< between the line and the discs; negative: it cuts into one
    double sharpest;              ///< radians: the sharpest turn between two steps
    std::vector<double> windings; ///< how often it goes round each centre, counter-clockwise
};
Laid lay(const std::vector<std::array<double, 2>>& line, const std::vector<Disc>& discs);

} // namespace riband::belt::drive::testing
