#include "tests/catch.h"

#include "core/belt/identify/instruments.h"

using namespace riband::belt::identify;

TEST_CASE("The usual instruments give the usual errors", "[identify]") {
    const Errors errors;
    CHECK(errors.of(Measure::PitchOver) == Approx(.5));
    CHECK(errors.of(Measure::Outside) == Approx(3));
    CHECK(errors.of(Measure::Flat) == Approx(2));
    CHECK(errors.of(Measure::Thickness) == Approx(.1));
    CHECK(errors.of(Measure::ToothHeight) == Approx(.15));
    CHECK(errors.of(Measure::ToothRoot) == Approx(.2));
    CHECK(errors.of(Measure::RibsOver) == Approx(.2));
    CHECK(errors.of(Measure::Width) == Approx(.3));
    CHECK(errors.of(Measure::Teeth) == Approx(.33));
}

TEST_CASE("A pitch held to by calliper is known better, a worn belt worse", "[identify]") {
    const Instruments shop;
    CHECK(errorOf(Measure::PitchOver, Instrument::Calliper, shop, Condition::New) == Approx(.1));
    // 0.1 and 0.2 at a right angle
    CHECK(errorOf(Measure::Thickness, Instrument::Calliper, shop, Condition::Used) ==
          Approx(.2236).epsilon(1e-3));
    CHECK(errorOf(Measure::Teeth, Instrument::Tape, shop, Condition::Used) == Approx(.33));
}

TEST_CASE("A shop with a poor tape says so once", "[identify]") {
    Instruments shop;
    shop.tape = 4;
    CHECK(errorsOf(shop, Condition::Unknown).of(Measure::Flat) == Approx(4));
    CHECK(errorsOf(shop, Condition::Unknown).of(Measure::Outside) ==
          Approx(4.583).epsilon(1e-3)); // root of 16 + 5
    CHECK(errorsOf(shop, Condition::Unknown).of(Measure::PitchOver) == Approx(.5));
}
