#pragma once

#include "core/belt/drive/choices.h"
#include "core/belt/drive/route.h"

namespace riband::belt::drive {

/// A pulley that can be set: by `farthest` mm at most along `way`, and as far as `back` the other way.
struct Mover {
    std::size_t station;
    Point way; ///< any length but none
    double back, farthest;
};

/// How far along its way the pulley must be set for a belt of this length, as told; the least move that will
/// do. Nothing within the reach gives it: the route is followed in steps of a four-hundredth of the reach.
std::optional<double> moveFor(const Layout& layout, const Mover& mover, double length);

/// A belt that exists, for a drive of many pulleys.
struct RouteChoice {
    Belt belt; ///< of the usual construction
    bool listed;
    std::vector<Stocked> stock; ///< of this length and wide enough
    double excess;              ///< mm longer than the exact route; negative: shorter
    std::optional<double> move; ///< mm that the mover must be set; none if it can't, or nothing moves

    bool inStock() const { return !stock.empty(); }
};

/// The three next lengths on either side of the route and the next on either side that is in stock; those
/// that the mover can take first, then those in stock, then the nearest.
std::vector<RouteChoice> beltsFor(const Layout& layout, const Route& route, const std::optional<Mover>& mover,
                                  const std::optional<Extent>& width, const Tables& tables,
                                  const std::vector<Stocked>& stock = {});

} // namespace riband::belt::drive
