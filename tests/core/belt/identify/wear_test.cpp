#include "tests/catch.h"

#include "core/belt/identify/wear.h"
#include "tests/core/belt/identify/counter.h"

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::identify;

TEST_CASE("The nodes of wear are exact for what is even between new and worn out", "[identify]") {
    // Even over 0 to 1: mean 1/2, variance 1/12; new or even alike often: 1/4 and 1/6 - 1/16.
    CHECK(wearMoments(Condition::Used).mean == Approx(.5));
    CHECK(wearMoments(Condition::Used).variance == Approx(1.0 / 12));
    CHECK(wearMoments(Condition::Unknown).mean == Approx(.25));
    CHECK(wearMoments(Condition::Unknown).variance == Approx(1.0 / 6 - 1.0 / 16));
    CHECK(wearMoments(Condition::New).mean == 0);
    double sum = 0;
    for (const WearNode& node : wearNodes(Condition::Unknown))
        sum += node.weight;
    CHECK(sum == Approx(1));
}

TEST_CASE("A used belt may measure long and its teeth thin, a new one may not", "[identify]") {
    // T10 over 100 teeth, 2 mm long: 0.2 % is what a belt may stretch. Teeth 2.3 high for 2.5: 8 % are worn
    // off.
    Sample sample{{over(100, 1002), read(Measure::ToothHeight, 2.3)}, SeenShape::Trapezoid};
    sample.measured[0].error = .3;
    sample.measured[1].error = .05;
    sample.condition = Condition::Used;
    CHECK_FALSE(identify::identify(sample, listsOnly()).contradictory());
    sample.condition = Condition::New;
    CHECK(identify::identify(sample, listsOnly()).contradictory());
}

TEST_CASE("No belt measures short by use", "[identify]") {
    Sample sample{{over(100, 998)}, SeenShape::Trapezoid};
    sample.measured[0].error = .3;
    sample.condition = Condition::Used;
    CHECK(identify::identify(sample, listsOnly()).contradictory());
}

TEST_CASE("A worn AT5 is taken for AT5, though as thin as no new one", "[identify]") {
    // 2.7 mm new; 8 % of 1.2 mm tooth and 3 % of the whole off are 2.52 mm. T5 has 2.2.
    Sample sample{{over(20, 100.2), read(Measure::Thickness, 2.52)}, SeenShape::Trapezoid};
    sample.condition = Condition::Used;
    CHECK(identify::identify(sample, listsOnly()).candidates.front().profile->name == "AT5");
}
