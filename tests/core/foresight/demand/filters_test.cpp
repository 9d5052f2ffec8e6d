#include "core/foresight/demand/filters.h"
#include "tests/catch.h"

using namespace riband::foresight;

namespace {

// 24 periods; its figures were worked out apart from this code, those of Croston also by R forecast 8.20.
const Series example{0, 0, 3, 0, 0, 0, 2, 0, 5, 0, 0, 1, 0, 0, 0, 0, 4, 0, 2, 0, 0, 0, 3, 0};

Series withEmpty(Series series, std::size_t periods) {
    series.resize(series.size() + periods, 0);
    return series;
}

} // namespace

TEST_CASE("Croston smooths sizes and intervals, each only at a demand", "[demand]") {
    // sizes 3 2 4 at intervals 1 2 3, weights a half: 3, 2.5, 3.25 and 1, 1.5, 2.25
    const Series series{3, 0, 2, 0, 0, 4};
    CHECK(expectedAfter(series, Method::Croston, {0.5, 0.5}) == Approx(3.25 / 2.25));
    CHECK(expectedAfter(series, Method::SyntetosBoylan, {0.5, 0.5}) == Approx(0.75 * 3.25 / 2.25));
    CHECK(expectedAfter(withEmpty(series, 9), Method::Croston, {0.5, 0.5}) == Approx(3.25 / 2.25));
}

TEST_CASE("The worked example comes out to ten decimals", "[demand]") {
    CHECK(expectedAfter(example, Method::Croston, {.1, .1}) == Approx(0.9216323549).epsilon(1e-9));
    CHECK(expectedAfter(example, Method::SyntetosBoylan, {.1, .1}) == Approx(0.8755507372).epsilon(1e-9));
    CHECK(expectedAfter(example, Method::Croston, {.2, .2}) == Approx(0.8725119038).epsilon(1e-9));
    CHECK(expectedAfter(example, Method::SyntetosBoylan, {.2, .2}) == Approx(0.7852607134).epsilon(1e-9));
}

TEST_CASE("Teunter, Syntetos and Babai fall while nothing sells", "[demand]") {
    const Weights weights{.2, .1};
    CHECK(expectedAfter(example, Method::TeunterSyntetosBabai, weights) ==
          Approx(0.8582184219).epsilon(1e-9));
    CHECK(expectedAfter(withEmpty(example, 12), Method::TeunterSyntetosBabai, weights) ==
          Approx(0.2423862311).epsilon(1e-9));
}

TEST_CASE("Smoothing starts at the first period, the mean counts all", "[demand]") {
    const Series series{4, 0, 8};
    CHECK(expectedAfter(series, Method::Smoothing, {.25, .1}) == Approx(4.25)); // 4, 3, 4.25
    CHECK(expectedAfter(series, Method::Mean, {}) == Approx(4));
}

TEST_CASE("The bootstrap's chain counts what followed what", "[demand]") {
    // steps: 0>0 0>1 1>1 1>0 0>1; half of the periods had one: after none (2+.5)/(3+1), after demand
    // (1+.5)/(2+1)
    const Series series{0, 0, 2, 4, 0, 6};
    const Chain chain = chainOf(series);
    CHECK(chain.afterNone == Approx(2.5 / 4));
    CHECK(chain.afterDemand == Approx(0.5));
    CHECK(chain.lastHadDemand);
    const double second = 0.5 * 0.5 + 0.5 * 2.5 / 4;
    CHECK(expectedAfter({}, Method::Bootstrap, {}, 3) == 0);
    CHECK(expectedAfter(series, Method::Bootstrap, {}) == Approx(0.5 * 4));
    CHECK(expectedAfter(series, Method::Bootstrap, {}, 2) == Approx((0.5 + second) * 4));
}

TEST_CASE("One week without a demand after many with one is no farewell", "[demand]") {
    const Chain chain = chainOf({3, 3, 3, 0});
    CHECK(chain.afterDemand == Approx((2 + .75) / (3 + 1)));
    CHECK(chain.afterNone == Approx(.75)); // never seen: as all the weeks
    CHECK(expectedAfter({3, 3, 3, 0}, Method::Bootstrap, {}) == Approx(.75 * 3));
}

TEST_CASE("Nothing asked for is nothing expected", "[demand]") {
    for (const Method method : allMethods) {
        CHECK(expectedAfter({}, method, {}) == 0);
        CHECK(expectedAfter({0, 0, 0}, method, {}) == 0);
    }
}

TEST_CASE("A series is called smooth, erratic, intermittent or lumpy by the published cut-offs", "[demand]") {
    CHECK(patternOf({0, 0}).pattern == Pattern::None);
    CHECK(patternOf({5, 6, 5, 4}).pattern == Pattern::Smooth);
    CHECK(patternOf({1, 20, 1, 1}).pattern == Pattern::Erratic);
    CHECK(patternOf({1, 0, 0, 0, 0, 20, 0, 1}).pattern == Pattern::Lumpy);
    const PatternFigures figures = patternOf(example);
    CHECK(figures.pattern == Pattern::Intermittent);
    CHECK(figures.interval == Approx(24.0 / 7));
    CHECK(figures.variation == Approx(0.19)); // sizes 3 2 5 1 4 2 3: mean 20/7, 68/7 squared
}
