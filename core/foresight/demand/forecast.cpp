#include "core/foresight/demand/forecast.h"

#include <algorithm>
#include <cmath>

namespace riband::foresight {

namespace {

Trial trialOf(Method method, const Series& series, std::size_t known, int horizon) {
    const Series older(series.begin(), series.begin() + static_cast<std::ptrdiff_t>(known));
    const Weights weights = bestWeights(older, method, horizon);
    const RollingErrors errors = rollingErrors(series, method, weights, horizon, known);
    return {method, weights, std::sqrt(errors.meanSquare), errors.bias};
}

bool canTest(const Series& series, std::size_t known, int horizon) {
    const auto end = series.begin() + static_cast<std::ptrdiff_t>(known);
    const auto demands = std::count_if(series.begin(), end, [](double demand) { return demand > 0; });
    return demands >= leastDemands &&
           series.size() + 1 >= known + static_cast<std::size_t>(horizon) + leastOrigins;
}

} // namespace

Forecast choose(const Series& series, int horizon) {
    Forecast forecast;
    const std::size_t known = series.size() * 2 / 3;
    if (canTest(series, known, horizon)) {
        for (const Method method : allMethods)
            forecast.trials.push_back(trialOf(method, series, known, horizon));
        std::stable_sort(forecast.trials.begin(), forecast.trials.end(),
                         [](const Trial& a, const Trial& b) { return a.error < b.error; });
        forecast.origins = static_cast<int>(series.size() - known) - horizon + 1;
        forecast.method = forecast.trials.front().method;
        forecast.weights = bestWeights(series, forecast.method, horizon);
    }
    forecast.expected = expectedAfter(series, forecast.method, forecast.weights, horizon) / horizon;
    return forecast;
}

} // namespace riband::foresight
