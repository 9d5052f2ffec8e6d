#include "core/foresight/demand/fitted.h"

#include "core/foresight/demand/methods.h"

#include <functional>
#include <numeric>

namespace riband::foresight {

namespace {

struct Range {
    double from, to;
};
constexpr double goldenShare = 0.6180339887498949;
constexpr int sections = 12; ///< 0.62^12 of a step of the grid: 0.3 % of it

Range rangeOf(Method method) {
    return method == Method::Smoothing ? Range{0.0001, 0.9999} : Range{0.01, 0.5};
}

/// Least point of a function of one weight between two neighbours of the best on the grid.
double golden(double low, double high, const std::function<double(double)>& error) {
    double left = high - goldenShare * (high - low), right = low + goldenShare * (high - low);
    double atLeft = error(left), atRight = error(right);
    for (int i = 0; i < sections; ++i) {
        if (atLeft <= atRight) {
            high = right;
            right = left;
            atRight = atLeft;
            atLeft = error(left = high - goldenShare * (high - low));
        } else {
            low = left;
            left = right;
            atLeft = atRight;
            atRight = error(right = low + goldenShare * (high - low));
        }
    }
    return (low + high) / 2;
}

double leastOf(Range range, const std::function<double(double)>& error) {
    constexpr int steps = 8;
    const double step = (range.to - range.from) / steps;
    double best = range.from, least = error(best);
    for (int i = 1; i <= steps; ++i)
        if (const double there = error(range.from + i * step); there < least) {
            least = there;
            best = range.from + i * step;
        }
    const double refined = golden(std::max(range.from, best - step), std::min(range.to, best + step), error);
    return error(refined) <= least ? refined : best;
}

} // namespace

namespace {

/// The sum of the `horizon` periods behind each origin; reckoned once for all weights that are tried.
Series sumsAhead(const Series& series, int horizon) {
    Series sums;
    for (std::size_t known = 1; known + static_cast<std::size_t>(horizon) <= series.size(); ++known) {
        const auto next = series.begin() + static_cast<std::ptrdiff_t>(known);
        sums.push_back(std::accumulate(next, next + horizon, 0.0));
    }
    return sums;
}

RollingErrors errorsAgainst(const Series& ahead, const Series& series, Method method, Weights weights,
                            int horizon, std::size_t from) {
    RollingErrors errors = methods::with(method, weights, [&](auto filter) {
        RollingErrors sums;
        for (std::size_t known = 1; known <= ahead.size(); ++known) {
            filter.take(series[known - 1]);
            if (known < from) continue;
            const double error = filter.ahead(horizon) - ahead[known - 1];
            sums.meanSquare += error * error;
            sums.bias += error;
            ++sums.origins;
        }
        return sums;
    });
    if (errors.origins == 0) return errors;
    errors.meanSquare /= errors.origins;
    errors.bias /= errors.origins;
    return errors;
}

} // namespace

RollingErrors rollingErrors(const Series& series, Method method, Weights weights, int horizon,
                            std::size_t from) {
    return errorsAgainst(sumsAhead(series, horizon), series, method, weights, horizon, from);
}

Weights bestWeights(const Series& series, Method method, int horizon) {
    Weights weights;
    if (method == Method::Mean || method == Method::Bootstrap) return weights;
    const Range range = rangeOf(method);
    const Series ahead = sumsAhead(series, horizon);
    const auto error = [&](Weights tried) {
        return errorsAgainst(ahead, series, method, tried, horizon, 1).meanSquare;
    };
    const int rounds = method == Method::Smoothing ? 1 : 2;
    for (int round = 0; round < rounds; ++round) {
        weights.size = leastOf(range, [&](double size) { return error({size, weights.interval}); });
        if (method == Method::Smoothing) break;
        weights.interval = leastOf(range, [&](double interval) { return error({weights.size, interval}); });
    }
    return weights;
}

} // namespace riband::foresight
