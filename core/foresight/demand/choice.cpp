#include "core/foresight/demand/choice.h"

#include <algorithm>
#include <cmath>

namespace riband::foresight {

namespace {

double expectedOf(const Series& series, const Choice& choice, int horizon) {
    const auto filter = filterOf(choice.method, choice.weights);
    for (const double demand : series)
        filter->take(demand);
    return filter->ahead(horizon) / horizon;
}

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

Choice choose(const Series& series, int horizon) {
    Choice choice;
    const std::size_t known = series.size() * 2 / 3;
    if (canTest(series, known, horizon)) {
        for (const Method method : allMethods)
            choice.trials.push_back(trialOf(method, series, known, horizon));
        std::stable_sort(choice.trials.begin(), choice.trials.end(),
                         [](const Trial& a, const Trial& b) { return a.error < b.error; });
        choice.origins = static_cast<int>(series.size() - known) - horizon + 1;
        choice.method = choice.trials.front().method;
        choice.weights = bestWeights(series, choice.method, horizon);
    }
    choice.expected = expectedOf(series, choice, horizon);
    return choice;
}

} // namespace riband::foresight
