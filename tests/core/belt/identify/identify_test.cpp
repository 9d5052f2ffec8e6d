#include "tests/catch.h"

#include "tests/core/belt/identify/counter.h"

#include <cmath>
#include <stdexcept>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::identify;

namespace {

Identification ask(const Sample& sample) { return identify::identify(sample, listsOnly()); }

std::string first(const Identification& answer) {
    const Candidate& best = answer.candidates.front();
    return best.belt ? designation(*best.belt) : best.profile->name;
}

} // namespace

TEST_CASE("White trapezoids, 20 teeth measure 100.1, 2.7 mm thick: AT5, not T5 (2.2) and not XL (101.6)",
          "[identify]") {
    // T5 and AT5 differ by 0.5 mm in total thickness (DIN 7721, ISO 17396); XL would be 1.5 mm longer.
    Sample sample{{over(20, 100.1), read(Measure::Thickness, 2.7)}, SeenShape::Trapezoid};
    const Identification answer = ask(sample);
    CHECK(first(answer) == "AT5");
    CHECK(answer.profileSettled);
    SECTION("but which AT5 nobody has measured: count the teeth") {
        CHECK_FALSE(answer.settled);
        CHECK_FALSE(answer.lengthAsked);
        REQUIRE(answer.next);
        CHECK(answer.next->what == Measure::Teeth);
    }
    SECTION("100 of them are AT5 500") {
        sample.measured.push_back(read(Measure::Teeth, 100));
        CHECK(first(ask(sample)) == "AT5 500");
        CHECK(ask(sample).settled);
        CHECK_FALSE(ask(sample).next);
    }
    SECTION("without the thickness it may as well be T5") {
        sample.measured.pop_back();
        CHECK_FALSE(ask(sample).profileSettled);
    }
}

TEST_CASE("Half-round teeth 8 mm apart, 150 of them, 30 mm wide are H8M 1200", "[identify]") {
    const Identification answer = ask({{over(20, 160.1), read(Measure::Teeth, 150),
                                        read(Measure::Thickness, 5.8), read(Measure::Width, 30)},
                                       SeenShape::HalfRound});
    CHECK(first(answer) == "H8M 1200");
    CHECK(answer.settled);
    REQUIRE(answer.candidates.front().width);
    CHECK(answer.candidates.front().width->offered(false) == Extent{Width::millimetres(30)});
    CHECK(answer.candidates.front().supply == Supply::FromSleeve);
}

TEST_CASE("A tape round the back is 2 pi times the back over the pitch line too long", "[identify]") {
    // H8M: hs 5.7 (5.4 to 6.0) less ht 3.38 less a 0.686 is 1.634: 10.3 mm more than 1200.
    const Identification answer =
        ask({{over(20, 160), read(Measure::Outside, 1210.3)}, SeenShape::HalfRound});
    CHECK(first(answer) == "H8M 1200");
    // S8M: hs 5.2 less 3.05 less 0.686 is 1.464: 9.2 mm.
    CHECK(first(ask({{over(20, 160), read(Measure::Outside, 1209.2)}, SeenShape::FlatTopRound})) ==
          "S8M 1200");
}

TEST_CASE("Cut open, the belt is as long as its pitch line; pressed flat, half of it and the bends",
          "[identify]") {
    // L 322: 86 teeth of 9.525 mm are 819.15 mm.
    CHECK(first(ask({{over(20, 190.5), read(Measure::Flat, 819)}, SeenShape::Trapezoid})) == "L 322");
    // L/2 + 2 (h + r) - pi (ht + a + r) with h 3.55, r = h, ht 1.91, a 0.381: 409.6 + 14.2 - 18.4 = 405.4.
    CHECK(first(ask({{over(20, 190.5), read(Measure::HalfLoop, 405.4)}, SeenShape::Trapezoid})) == "L 322");
    // Inside: 819.15 - 2 pi (1.91 + 0.381) = 804.8.
    CHECK(first(ask({{over(20, 190.5), read(Measure::Inside, 804.8)}, SeenShape::Trapezoid})) == "L 322");
}

TEST_CASE("Of a ribbed belt the rib pitch tells the profile", "[identify]") {
    // ISO 9982 rib pitches over 5 ribs, so 4 pitches.
    const auto [profile, distance] = GENERATE(table<const char*, double>(
        {{"PH", 6.40}, {"PJ", 9.36}, {"PK", 14.24}, {"PL", 18.80}, {"PM", 37.60}}));
    const Identification answer = ask({{ribsOver(5, distance), read(Measure::RibCount, 6)}});
    CHECK(first(answer) == profile);
    CHECK(answer.profileSettled);
    CHECK(answer.candidates.front().width->measured == Extent{Ribs{6}});
}

TEST_CASE("Who measured 5 rib pitches for 5 ribs is understood", "[identify]") {
    CHECK(first(ask({{ribsOver(5, 5 * 2.34)}})) == "PJ");
}

TEST_CASE("A width without a count of ribs is whole ribs of the profile", "[identify]") {
    const Identification answer = ask({{ribsOver(5, 9.36), read(Measure::Width, 14.1)}});
    CHECK(answer.candidates.front().width->measured == Extent{Ribs{6}}); // 14.04 mm
}

TEST_CASE("A count alone asks for the tape: 3 mm round 150 teeth tell the pitch to 0.02 mm", "[identify]") {
    const Identification answer = ask({{read(Measure::Teeth, 150)}});
    CHECK_FALSE(answer.settled);
    REQUIRE(answer.next);
    CHECK(answer.next->what == Measure::Outside);
    for (const Candidate& each : answer.candidates)
        CHECK(each.belt->teeth.has_value()); // nothing ribbed has teeth to count
}

TEST_CASE("A belt that is in no list is found by its teeth, and said to be in none", "[identify]") {
    // T5 633 teeth: nobody lists 3165 mm.
    REQUIRE_FALSE(listsOnly().tables().made("T5", Length::millimetres(3165)));
    const Identification answer = ask({{over(50, 250), read(Measure::Teeth, 633),
                                        read(Measure::Outside, 3168), read(Measure::Thickness, 2.2)},
                                       SeenShape::Trapezoid});
    CHECK(first(answer) == "T5 3165");
    CHECK_FALSE(answer.candidates.front().listed);
}

TEST_CASE("An old national size is known by its pitch of pi times the module", "[identify]") {
    const Identification answer =
        ask({{over(20, 20 * 3 * 3.14159265), read(Measure::Teeth, 63)}, SeenShape::Trapezoid});
    CHECK(first(answer) == "m3 63"); // 188.5 mm; L would be 190.5
}

TEST_CASE("Teeth on both sides: a double-sided belt, cut from a double-sided sleeve only", "[identify]") {
    Sample sample{{over(20, 100), read(Measure::Thickness, 3.4)}, SeenShape::Trapezoid};
    sample.doubleSided = true;
    const Identification answer = ask(sample);
    CHECK(first(answer) == "T5-DL"); // total 3.4 = 2 x 1.2 + 2 x 0.5 (DIN 7721)
    CHECK(answer.candidates.front().supply == Supply::DoubleSidedSleeve);
}

TEST_CASE("An open-ended piece has a profile but no length, and comes from no sleeve", "[identify]") {
    Sample sample{{over(20, 100.1), read(Measure::Thickness, 2.7), read(Measure::Flat, 2345)}};
    sample.openEnded = true;
    const Identification answer = ask(sample);
    CHECK(first(answer) == "AT5");
    CHECK(answer.settled);
    CHECK(answer.candidates.front().supply == Supply::ByTheMetre);
    CHECK_FALSE(answer.next);
}

TEST_CASE("Candidates are the likeliest first and have 99 % together", "[identify]") {
    const Identification answer = ask({{over(20, 160), read(Measure::Teeth, 150)}});
    double sum = 0, before = 1;
    for (const Candidate& each : answer.candidates) {
        CHECK(each.probability <= before);
        before = each.probability;
        sum += each.probability;
    }
    CHECK(sum == Approx(answer.together));
    CHECK(answer.together >= .99);
    CHECK(answer.among == answer.candidates.size());
    double profiles = 0;
    for (const auto& [profile, probability] : answer.profiles)
        profiles += probability;
    CHECK(profiles == Approx(1).margin(.05));
}

TEST_CASE("The order in which things were measured does not matter", "[identify]") {
    const Sample one{{over(10, 80.3), read(Measure::Teeth, 150), read(Measure::Thickness, 5.5)}};
    const Sample other{{read(Measure::Thickness, 5.5), over(10, 80.3), read(Measure::Teeth, 150)}};
    CHECK(first(ask(one)) == first(ask(other)));
    CHECK(ask(one).candidates.front().probability == Approx(ask(other).candidates.front().probability));
}

TEST_CASE("A finer reading makes surer, a coarser one less sure", "[identify]") {
    Sample sample{{over(10, 50.8)}, SeenShape::Trapezoid};
    const double byRule = ask(sample).candidates.front().probability;
    sample.measured[0].error = .1; // calliper
    CHECK(ask(sample).candidates.front().probability > byRule);
    sample.measured[0].error = 2;
    CHECK(ask(sample).candidates.front().probability < byRule);
}

TEST_CASE("A sample that can't be used is told, and never weighed", "[identify]") {
    using Kind = SampleFault::Kind;
    const auto kindOf = [](const Sample& sample) {
        const auto fault = faultOf(sample);
        REQUIRE(fault);
        CHECK_THROWS_AS(ask(sample), std::invalid_argument);
        return fault->kind;
    };
    CHECK(kindOf({}) == Kind::Nothing);
    CHECK(kindOf({{read(Measure::Thickness, -1)}}) == Kind::NotPositive);
    CHECK(kindOf({{read(Measure::Thickness, std::nan(""))}}) == Kind::NotPositive);
    CHECK(kindOf({{{Measure::Thickness, 2, 0}}}) == Kind::NotPositive);
    CHECK(kindOf({{read(Measure::Outside, 1e6)}}) == Kind::TooLarge);
    CHECK(kindOf({{read(Measure::Outside, INFINITY)}}) == Kind::TooLarge);
    CHECK(kindOf({{read(Measure::Teeth, 99.5)}}) == Kind::NotWhole);
    CHECK(kindOf({{over(0, 100)}}) == Kind::TooFew);
    CHECK(kindOf({{ribsOver(1, 100)}}) == Kind::TooFew);
    CHECK_FALSE(faultOf({{over(1, 5)}}));
    CHECK_FALSE(faultOf({{}, SeenShape::Ribs}));
}
