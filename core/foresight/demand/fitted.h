#pragma once

#include "core/foresight/demand/filters.h"

#include <cstddef>

namespace riband::foresight {

/// Errors of forecasts of the sum over the next `horizon` periods, made anew after each period: the origin
/// rolls from `from` periods known to as many as leave a whole horizon to compare with.
struct RollingErrors {
    double meanSquare = 0;
    double bias = 0; ///< mean of forecast less truth
    int origins = 0;
};
RollingErrors rollingErrors(const Series& series, Method method, Weights weights, int horizon,
                            std::size_t from);

/// The weights with the least mean square error over the origins of the series, from the first period on: a
/// grid, then a search by golden section, one weight after the other. Sizes, intervals and chances of Croston
/// and his followers are held between 0.01 and 0.5, a level between 0.0001 and 0.9999.
Weights bestWeights(const Series& series, Method method, int horizon);

} // namespace riband::foresight
