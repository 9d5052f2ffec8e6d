#include "tests/catch.h"
#include "tests/core/foresight/buying/cases.h"

using namespace riband::foresight;

namespace {

/// One belt of 30 every five days; a sleeve of 100 gives two, one of 103 three.
BuyingCase thirties() {
    return {.setting = hundredMillimetres({30000}),
            .record = everyDays(5, 730, {{30000, 1}}),
            .remnants = {},
            .sleeves = 1,
            .choices = {{100000, 4000, 7}},
            .price = 0.2};
}

} // namespace

TEST_CASE("What a sleeve really gives is in the reckoning", "[buying]") {
    // 100 - 2.5 - 30 = 67.5, - 32.5 = 35: under 2.5 + 30 + 5, thrown away. 100 used for 60 sold.
    const BuyingAdvice advice = adviseBuying(thirties(), {});
    const WidthAdvice& width = advice.widths.front();
    CHECK(width.consumption.usedPerSold == Approx(100.0 / 60).epsilon(0.02));
    CHECK(width.consumption.wasteShare() == Approx(0.4).margin(0.01));
    CHECK(advice.ordersPerYear == Approx(73).epsilon(0.1));
    CHECK(width.sleevesPerYear == Approx(advice.ordersPerYear / 2).epsilon(0.02));
    CHECK(width.year.rubber == Approx(width.sleevesPerYear * 4000));
}

TEST_CASE("A sleeve a little wider that gives one belt more is worth its price", "[buying]") {
    BuyingCase belt = thirties();
    belt.choices.push_back({103000, 4400, 7}); // a tenth dearer, a half more belts
    belt.choices.push_back({101000, 4040, 7}); // gives no more
    const BuyingAdvice advice = adviseBuying(belt, {});
    CHECK(advice.widths.front().sleeve.width == 103000);
    CHECK(advice.widthOf(103000).consumption.usedPerSold == Approx(103.0 / 90).epsilon(0.02));
    CHECK(advice.widthOf(101000).year.total() > advice.widthOf(100000).year.total());
    CHECK_THROWS_AS(advice.widthOf(5), std::out_of_range);
}

TEST_CASE("A width that hardly saves is not recommended over the present one", "[buying]") {
    BuyingCase belt = thirties();
    belt.choices.push_back({100000 - 1, 3990, 7});
    CHECK(adviseBuying(belt, {}).widths.front().sleeve.width == 100000);
}

TEST_CASE("Nothing is bought while what is there lasts, and enough when it does not", "[buying]") {
    BuyingCase belt = thirties(); // 14 days: 2.8 orders, 1.4 sleeves
    belt.sleeves = 9;
    CHECK(adviseBuying(belt, {}).buy == 0);
    CHECK(adviseBuying(belt, {}).risk < 0.01);
    belt.sleeves = 0;
    const BuyingAdvice bare = adviseBuying(belt, {});
    CHECK(bare.risk > 0.9);
    CHECK(bare.buy >= bare.need.sleevesFor(0.95));
    CHECK(bare.buy >= bare.lot);
    belt.remnants.assign(9, {40000, 0}); // nine belts lie in remnants
    CHECK(adviseBuying(belt, {}).buy == 0);
}

TEST_CASE("More service wants more sleeves", "[buying]") {
    BuyingTerms low, high;
    low.service = 0.8;
    high.service = 0.995;
    CHECK(adviseBuying(thirties(), low).reorderPoint < adviseBuying(thirties(), high).reorderPoint);
}

TEST_CASE("The lot is the economic order quantity in whole sleeves", "[buying]") {
    // K 500, ten a year, 640 to hold one: sqrt(2*500*10/640) = 3.95; 3 costs 2626, 4 costs 2530
    CHECK(economicLot(10, 500, 640, 20) == 4);
    CHECK(economicLot(10, 500, 640, 3) == 3);
    CHECK(economicLot(0.2, 500, 640, 20) == 1);
    CHECK(economicLot(10, 0, 640, 20) == 1);
    CHECK(economicLot(10, 500, 0, 20) == 20);
}

TEST_CASE("A belt that nobody asks for, or too seldom, is not kept as a sleeve", "[buying]") {
    BuyingCase belt = thirties();
    belt.record.orders.clear();
    CHECK(adviseBuying(belt, {}).keeping == Keeping::NotAskedFor);
    CHECK(adviseBuying(belt, {}).buy == 0);
    belt.record = everyDays(700, 1460, {{30000, 1}}); // one in two years: a sleeve in four
    CHECK(adviseBuying(belt, {}).keeping == Keeping::Keep);
    belt.setting.ageLimitDays = 365;
    belt.sleeves = 0;
    CHECK(adviseBuying(belt, {}).keeping == Keeping::TooSlow);
    CHECK(adviseBuying(belt, {}).buy == 0);
}

TEST_CASE("A belt that costs more than it brings says so", "[buying]") {
    BuyingCase belt = thirties();
    CHECK(adviseBuying(belt, {}).earnsPerYear > 0); // 0.2 a um against 4000/60000
    belt.price = 0.05;
    const BuyingAdvice advice = adviseBuying(belt, {});
    CHECK(advice.keeping == Keeping::CostsMoreThanItEarns);
    CHECK(advice.earnsPerYear < 0);
    CHECK(advice.earnsPerYear == Approx(advice.widthPerYear * 0.05 - advice.widths.front().year.total()));
}

TEST_CASE("Widths lie cut only where the trim is the waste", "[buying]") {
    const Record narrow = everyDays(5, 730, {{9000, 1}});
    const auto preCut = preCutOf(hundredMillimetres({9000}), narrow, 73); // 2.5 of 11.5; 12 in 60 days
    REQUIRE(preCut.size() == 1);
    CHECK(preCut[0].width == 9000);
    CHECK(preCut[0].belts == 3);
    const Record wide = everyDays(5, 730, {{85000, 1}}); // 2.5 of 87.5 is 2.9 %
    CHECK(preCutOf(hundredMillimetres({85000}), wide, 73).empty());
    CHECK(preCutOf(hundredMillimetres({9000}), everyDays(100, 730, {{9000, 1}}), 3.65).empty());
    CHECK(preCutOf(hundredMillimetres({15000}), narrow, 73).empty()); // not listed
}

TEST_CASE("The same case gives the same advice, and a faulty one is refused", "[buying]") {
    const BuyingAdvice one = adviseBuying(thirties(), {}), two = adviseBuying(thirties(), {});
    CHECK(one.need.enough == two.need.enough);
    CHECK(one.widths.front().year.total() == two.widths.front().year.total());
    BuyingCase none = thirties();
    none.choices.clear();
    CHECK_THROWS_AS(adviseBuying(none, {}), std::invalid_argument);
}
