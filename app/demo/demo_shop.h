#pragma once

#include "core/shop/shop.h"

#include <cstdint>
#include <functional>
#include <string>

namespace riband::app {

/// The name by which a file is known to be the demo shop, which alone may be written over.
extern const char* const demoName;

/// The invented shop's settings and people: owner OW, stock manager ST, clerk CL.
void furnish(store::Connection& connection);

/// A shop of 26 belts with half a year of business, as told in resources/demo; `seed` deals the ordinary
/// sales.
void makeSmallShop(store::Connection& connection, const std::shared_ptr<const belt::Tables>& tables,
                   Moment now, std::uint64_t seed);

/// How large a large shop is.
struct LargeShop {
    std::int64_t belts = 3'000;
    std::int64_t pieces = 20'000;
    std::int64_t movements = 500'000;
    int years = 5;
};
/// A shop of exactly so many belts, live pieces and movements. `told` is given a share from 0 to 1.
void makeLargeShop(store::Connection& connection, const std::shared_ptr<const belt::Tables>& tables,
                   Moment now, std::uint64_t seed, const LargeShop& size,
                   const std::function<void(double)>& told = nullptr);

/// Makes the worth tables of the belts that are ordered most, so that the first suggestion rests on one.
void learnMostOrdered(store::Connection& connection, const std::shared_ptr<const belt::Tables>& tables,
                      Moment now);

} // namespace riband::app
