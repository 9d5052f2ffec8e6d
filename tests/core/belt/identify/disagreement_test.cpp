#include "tests/catch.h"

#include "tests/core/belt/identify/counter.h"

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::identify;

namespace {

Identification ask(const Sample& sample) { return identify::identify(sample, listsOnly()); }

} // namespace

TEST_CASE("175 teeth 8 mm apart don't go round with 1209 mm: 25 teeth too many or 201 mm too few",
          "[identify]") {
    const Identification answer =
        ask({{over(10, 80), read(Measure::Teeth, 175), read(Measure::Outside, 1210)}, SeenShape::HalfRound});
    CHECK(answer.contradictory());
    CHECK_FALSE(answer.settled);
    CHECK_FALSE(answer.next);
    REQUIRE(answer.disagreements.size() == 2);
    const Disagreement &teeth = answer.disagreements[0], &tape = answer.disagreements[1];
    CHECK(teeth.what == Measure::Teeth);
    CHECK(designation(teeth.belt) == "H8M 1200");
    CHECK(teeth.by() == 25);
    CHECK(tape.what == Measure::Outside);
    CHECK(designation(tape.belt) == "H8M 1400"); // 175 teeth
    CHECK(tape.by() == Approx(1210 - 1410.3).margin(1));
    CHECK((teeth.fitsOtherwise && tape.fitsOtherwise));
}

TEST_CASE("A reading that all others contradict is the one that is named", "[identify]") {
    // Five agree on T10 1000; the thickness is that of nothing of 10 mm pitch.
    const Identification answer =
        ask({{over(20, 200), read(Measure::Teeth, 100), read(Measure::Outside, 1006),
              read(Measure::ToothHeight, 2.5), read(Measure::Thickness, 9)},
             SeenShape::Trapezoid});
    REQUIRE(answer.disagreements.size() == 1);
    CHECK(answer.disagreements[0].what == Measure::Thickness);
    CHECK(answer.disagreements[0].by() == Approx(9 - 4.5).margin(.1));
    CHECK(answer.candidates.front().profile->name == "T10"); // what it would be without
}

TEST_CASE("A pitch that no belt has is off by what it is off the nearest", "[identify]") {
    // 6.0 mm; m2 has 6.283, 62.8 over 10.
    const Identification answer = ask({{over(10, 60)}});
    REQUIRE(answer.disagreements.size() == 1);
    CHECK(answer.disagreements[0].belt.profile == "m2");
    CHECK(answer.disagreements[0].by() == Approx(60 - 62.83).margin(.01));
}

TEST_CASE("Ribs have no teeth to count", "[identify]") {
    CHECK(ask({{read(Measure::Teeth, 40)}, SeenShape::Ribs}).contradictory());
    CHECK(ask({{read(Measure::RibCount, 6), over(10, 50)}}).contradictory());
}

TEST_CASE("Round teeth half an inch apart are contradictory: 12.7 mm is only made as a trapezoid",
          "[identify]") {
    const Identification answer = ask({{over(20, 254)}, SeenShape::DimpledRound});
    REQUIRE(answer.contradictory());
    CHECK(answer.disagreements.back().what == Measure::Shape);
}

TEST_CASE("Within the errors nothing is contradictory", "[identify]") {
    // Three standard errors off, each by itself.
    CHECK_FALSE(ask({{over(20, 161.5), read(Measure::Teeth, 150)}}).contradictory());
    CHECK_FALSE(
        ask({{over(20, 160), read(Measure::Teeth, 150), read(Measure::Outside, 1219)}}).contradictory());
    // One tooth miscounted is what happens.
    CHECK_FALSE(
        ask({{over(20, 160), read(Measure::Teeth, 151), read(Measure::Outside, 1210)}}).contradictory());
}

TEST_CASE("A wrong width contradicts nothing: belts are cut to any", "[identify]") {
    CHECK_FALSE(ask({{over(20, 160), read(Measure::Teeth, 150), read(Measure::Width, 37)}}).contradictory());
}
