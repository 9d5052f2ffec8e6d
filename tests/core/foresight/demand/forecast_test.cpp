#include "core/foresight/demand/forecast.h"
#include "core/foresight/dice.h"
#include "tests/catch.h"

#include <algorithm>

using namespace riband::foresight;

namespace {

Series drawn(std::uint64_t seed, int periods, double chance, double most) {
    Dice dice{seed};
    Series series;
    for (int i = 0; i < periods; ++i)
        series.push_back(dice.share() < chance ? 1 + dice.share() * most : 0);
    return series;
}

Method bestOf(const Series& series) { return choose(series, 4).method; }

double errorOf(const Forecast& forecast, Method method) {
    return std::find_if(forecast.trials.begin(), forecast.trials.end(),
                        [&](const Trial& trial) { return trial.method == method; })
        ->error;
}

} // namespace

TEST_CASE("Errors are of the sum over the horizon, from every origin", "[demand]") {
    // Mean of 2 4 | 6 0: after 2 it says 4 for 4+6; after 2 4 it says 6 for 6+0; after 2 4 6 no horizon is
    // left.
    const RollingErrors all = rollingErrors({2, 4, 6, 0}, Method::Mean, {}, 2, 1);
    CHECK(all.origins == 2);
    CHECK(all.meanSquare == Approx((36 + 0) / 2.0));
    CHECK(all.bias == Approx(-3));
    CHECK(rollingErrors({2, 4, 6, 0}, Method::Mean, {}, 2, 2).meanSquare == Approx(0));
    CHECK(rollingErrors({2}, Method::Mean, {}, 2, 1).origins == 0);
}

TEST_CASE("No weights on a fine grid do better than those found", "[demand]") {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const Series series = drawn(seed, 80, 0.4, 9);
        const double found =
            rollingErrors(series, Method::Smoothing, bestWeights(series, Method::Smoothing, 1), 1, 1)
                .meanSquare;
        for (double alpha = 0.005; alpha < 1; alpha += 0.005)
            CHECK(found <=
                  rollingErrors(series, Method::Smoothing, {alpha, .1}, 1, 1).meanSquare * (1 + 1e-6));
    }
}

TEST_CASE("A belt that dies is forecast by a method that lets it die", "[demand]") {
    Series series = drawn(3, 70, 0.6, 5);
    series.resize(120, 0);
    const Forecast forecast = choose(series, 4);
    CHECK(forecast.origins == 120 - 80 - 4 + 1);
    REQUIRE(forecast.trials.size() == 6);
    CHECK(errorOf(forecast, Method::TeunterSyntetosBabai) < errorOf(forecast, Method::Croston));
    CHECK(errorOf(forecast, Method::TeunterSyntetosBabai) < errorOf(forecast, Method::SyntetosBoylan));
    CHECK(forecast.expected < 0.5);
}

TEST_CASE("A step up is followed by what forgets, not by the mean", "[demand]") {
    Series series = drawn(5, 60, 0.9, 2);
    for (int i = 0; i < 60; ++i)
        series.push_back(20);
    CHECK(bestOf(series) != Method::Mean);
    CHECK(choose(series, 4).expected == Approx(20).epsilon(0.25));
}

TEST_CASE("Trials stand least error first, and no method sees the future", "[demand]") {
    const Series series = drawn(7, 90, 0.3, 6);
    const Forecast forecast = choose(series, 3);
    CHECK(std::is_sorted(forecast.trials.begin(), forecast.trials.end(),
                         [](const Trial& a, const Trial& b) { return a.error < b.error; }));
    CHECK(forecast.method == forecast.trials.front().method);
    Series other = series; // the last two thirds of what is tested on may change; the weights may not
    for (std::size_t i = 60; i < other.size(); ++i)
        other[i] += 3;
    for (const Trial& trial : choose(other, 3).trials)
        for (const Trial& same : forecast.trials)
            if (same.method == trial.method) CHECK(same.weights == trial.weights);
}

TEST_CASE("Too little to test on gives the usual method, and says so", "[demand]") {
    const Forecast forecast = choose({0, 0, 5, 0, 0, 0, 4, 0}, 2);
    CHECK(forecast.method == Method::Mean);
    CHECK(forecast.trials.empty());
    CHECK(forecast.expected == Approx(9.0 / 8));
    CHECK(choose({}, 2).expected == 0);
}
