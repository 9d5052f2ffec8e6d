#pragma once

#include "core/foresight/demand/fitted.h"

namespace riband::foresight {

/// What one method did in periods that it was not fitted on.
struct Trial {
    Method method;
    Weights weights;  ///< fitted on the older two thirds
    double error = 0; ///< root mean square, of the sum over the horizon
    double bias = 0;
};

/// The method that a series is forecast by, and why.
struct Forecast {
    Method method = Method::Mean;
    Weights weights;           ///< fitted on the whole series
    double expected = 0;       ///< of the next horizon, a period
    std::vector<Trial> trials; ///< least error first; empty if there was too little to test on
    int origins = 0;           ///< forecasts that each was judged by
};

/// Fits every method on the older two thirds of the series, lets each forecast the sum over the next
/// `horizon` periods from every origin of the newer third (their weights fixed, their state rolling on), and
/// takes the one with the least root mean square error. With fewer than `leastDemands` demands among the
/// older two thirds, or fewer than `leastOrigins` origins: the mean of all weeks, untested. (The smoothing
/// methods start from the first demand, and what they make of it fades only in some ten demands more.)
inline constexpr int leastDemands = 4, leastOrigins = 6;
Forecast choose(const Series& series, int horizon);

} // namespace riband::foresight
