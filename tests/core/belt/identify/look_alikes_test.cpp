#include "tests/catch.h"

#include "core/belt/identify/interchange.h"
#include "tests/core/belt/identify/counter.h"

#include <algorithm>
#include <cmath>

using namespace riband::belt;
using namespace riband::belt::identify;

namespace {

struct Pair {
    const char* first;
    const char* second;
    double over10, over20, over50;
    int forOne, forTwo; ///< pitches needed for 1 mm and 2 mm apart
};

/// Worked out from the pitches of the standards (ISO 5296, DIN 7721, ISO 13050, OST 38 05114) by hand, apart
/// from this program; rounded as printed.
const std::vector<Pair> nearly{
    {"T5", "XL", .8, 1.6, 4.0, 13, 25},       {"G2M", "MXL", .32, .64, 1.6, 32, 63},
    {"MXL", "40DP", .41, .81, 2.0, 25, 50},   {"G2M", "40DP", .73, 1.45, 3.6, 14, 28},
    {"H3M", "XXL", 1.75, 3.5, 8.8, 6, 12},    {"XXL", "m1", .33, .67, 1.7, 30, 60},
    {"H3M", "m1", 1.4, 2.8, 7.1, 8, 15},      {"L", "m3", 1.0, 2.0, 5.0, 10, 20},
    {"L", "T10", 4.75, 9.5, 23.8, 3, 5},      {"H", "m4", 1.3, 2.7, 6.7, 8, 15},
    {"H", "H14M", 13, 26, 65, 1, 2},          {"XH", "m7", 2.3, 4.7, 11.7, 5, 9},
    {"XH", "T20", 22, 45, 111, 1, 1},         {"XXH", "m10", 3.3, 6.7, 16.7, 3, 6},
    {"m1.5", "S4.5M", 2.1, 4.2, 10.6, 5, 10}, {"m1.5", "T5", 2.9, 5.8, 14.4, 4, 7},
};

/// Half a unit of the last place that was printed.
double rounding(double printed) {
    if (printed >= 11) return .51;
    return std::abs(printed * 10 - std::round(printed * 10)) < 1e-6 ? .051 : .0051;
}

double chanceOf(const Identification& answer, const char* name) {
    for (const auto& [profile, probability] : answer.profiles)
        if (profile->name == name) return probability;
    return 0;
}

/// A hundred customers wanted a belt of 100 teeth of it.
Sale usual(const char* profile) {
    const riband::Teeth teeth{100};
    return {{profile, teeth, sizesOf(profile).profile->pitch * teeth, ""}, 100};
}

} // namespace

TEST_CASE("Nearly equal pitches differ by so much over 10, 20 and 50 teeth", "[identify]") {
    for (const Pair& pair : nearly) {
        INFO(pair.first << " and " << pair.second);
        const Apart both = apart(sizesOf(pair.first), sizesOf(pair.second));
        CHECK(both.over(10) == Approx(pair.over10).margin(rounding(pair.over10)));
        CHECK(both.over(20) == Approx(pair.over20).margin(rounding(pair.over20)));
        CHECK(both.over(50) == Approx(pair.over50).margin(rounding(pair.over50)));
        CHECK(pitchesFor(both, 1) == pair.forOne);
        CHECK(pitchesFor(both, 2) == pair.forTwo);
    }
}

TEST_CASE("Of nearly equal pitches none may stand for the other", "[identify]") {
    for (const Pair& pair : nearly) {
        INFO(pair.first << " and " << pair.second);
        CHECK_FALSE(interchange(*sizesOf(pair.first).profile, *sizesOf(pair.second).profile).interchanges());
    }
}

TEST_CASE("Of nearly equal pitches, both as usual, neither is certain halfway between", "[identify]") {
    for (const Pair& pair : nearly) {
        INFO(pair.first << " and " << pair.second);
        const double p = sizesOf(pair.first).figures.pitch, q = sizesOf(pair.second).figures.pitch;
        // 0.8 mm apart at the most: in the middle a rule (0.5) is less than one error off both.
        const int pitches = static_cast<int>(.8 / std::abs(p - q));
        if (pitches < 1) continue;
        const Prior both{listsOnly().sharedTables(), {usual(pair.first), usual(pair.second)}};
        const Identification answer = identify::identify({{over(pitches, pitches * (p + q) / 2)}}, both);
        CHECK_FALSE(answer.profileSettled);
        for (const char* name : {pair.first, pair.second})
            CHECK(chanceOf(answer, name) > .2);
    }
}

TEST_CASE("Of nearly equal pitches the right one is taken where they are 2 mm apart", "[identify]") {
    for (const Pair& pair : nearly)
        for (const bool swap : {false, true}) {
            const char* is = swap ? pair.second : pair.first;
            const char* isNot = swap ? pair.first : pair.second;
            INFO(is << ", not " << isNot);
            Sample sample{{over(pair.forTwo * 2, pair.forTwo * 2 * sizesOf(is).figures.pitch)},
                          sizesOf(is).shape};
            const Identification answer = identify::identify(sample, listsOnly());
            CHECK(chanceOf(answer, is) > chanceOf(answer, isNot));
            CHECK(chanceOf(answer, isNot) < .1);
        }
}

TEST_CASE("Over 10 teeth T5 and XL differ by 0.8 mm and can't be told apart; over 20 by 1.6: measure 20",
          "[identify]") {
    const Identification answer = identify::identify({{over(10, 50.4)}, SeenShape::Trapezoid}, listsOnly());
    CHECK_FALSE(answer.settled);
    REQUIRE(answer.apart);
    CHECK(std::min(answer.apart->first->name, answer.apart->second->name) == "T5");
    CHECK(std::max(answer.apart->first->name, answer.apart->second->name) == "XL");
    CHECK(answer.apart->over(10) == Approx(.8));
    REQUIRE(answer.next);
    CHECK(answer.next->what == Measure::PitchOver);
    CHECK(answer.next->over == 20);
    CHECK(answer.apart->over(20) == Approx(1.6));
}

TEST_CASE("Of one pitch the shape tells, where it is seen", "[identify]") {
    const auto& group = GENERATE(std::vector<const char*>{"G2M", "S2M", "T2"},
                                 std::vector<const char*>{"H3M", "S3M", "R3M", "G3M", "AT3"},
                                 std::vector<const char*>{"T5", "AT5", "H5M", "S5M", "R5M", "G5M"},
                                 std::vector<const char*>{"H8M", "S8M", "R8M", "G8M"},
                                 std::vector<const char*>{"T10", "AT10"},
                                 std::vector<const char*>{"H14M", "S14M", "R14M", "G14M"},
                                 std::vector<const char*>{"T20", "AT20", "H20M", "R20M"});
    for (const char* name : group) {
        INFO(name);
        const Sizes& sizes = sizesOf(name);
        const Figures& figures = sizes.figures;
        const Sample sample{{over(20, 20 * figures.pitch), read(Measure::Thickness, figures.thickness.mean),
                             read(Measure::ToothHeight, figures.height.mean)},
                            sizes.shape};
        const Identification answer = identify::identify(sample, listsOnly());
        // MXL is as thick as T2 and 0.64 mm apart over 20 teeth, which a rule can't tell: both are stated.
        if (std::string{name} != "T2") CHECK(answer.candidates.front().profile->name == name);
        for (const char* other : group)
            if (std::string{other} != name) {
                CHECK(chanceOf(answer, name) > chanceOf(answer, other));
                CHECK(interchange(*sizes.profile, *sizesOf(other).profile).verdict ==
                      Interchange::Verdict::SamePitchNo);
            }
    }
}

TEST_CASE("H, R and G of one pitch can't be told by their height", "[identify]") {
    // ISO 13050: 8 mm 3.38, 3.25, 3.40; makers differ among themselves by as much.
    const Identification answer =
        identify::identify({{over(20, 160), read(Measure::ToothHeight, 3.35)}}, listsOnly());
    CHECK_FALSE(answer.profileSettled);
    for (const char* name : {"H8M", "R8M", "G8M"})
        CHECK(chanceOf(answer, name) > .02);
    CHECK(chanceOf(answer, "S8M") < chanceOf(answer, "H8M")); // 3.05
    REQUIRE(answer.next);
    CHECK(answer.next->what == Measure::Shape);
}
