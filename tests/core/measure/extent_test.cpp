#include "core/measure/extent.h"
#include "core/measure/length.h"
#include "tests/catch.h"

using namespace riband;

static_assert(!std::is_convertible_v<std::int64_t, Width>); // the unit must be said
static_assert(!std::is_convertible_v<std::int64_t, Ribs>);
static_assert(!std::is_convertible_v<std::int64_t, Length>);
static_assert(!std::is_convertible_v<Ribs, Width>);

TEST_CASE("A width is never negative", "[measure]") {
    CHECK_THROWS_AS(Width::micrometres(-1), std::invalid_argument);
    CHECK_THROWS_AS(Width::millimetres(2) - Width::millimetres(3), std::invalid_argument);
    CHECK_THROWS_AS(Ribs{-1}, std::invalid_argument);
}

TEST_CASE("Sums of ribs never drift: 100 ribs of PJ are 234 mm to the micrometre", "[measure]") {
    const Width pitch = Width::micrometres(2340);
    CHECK(pitch * Ribs{100} == Width::millimetres(234));
    CHECK(Extent{Ribs{6}}.shownWidth(pitch) == Width::micrometres(14040));
}

TEST_CASE("Millimetres and ribs can't be mixed", "[measure]") {
    const Extent belt = Width::millimetres(30);
    const Extent ribs = Ribs{6};
    CHECK_THROWS_AS(belt + ribs, std::logic_error);
    CHECK_THROWS_AS(belt < ribs, std::logic_error);
    CHECK_THROWS_AS(belt.ribs(), std::logic_error);
    CHECK_THROWS_AS(ribs.width(), std::logic_error);
    CHECK_FALSE(belt == ribs);
}

TEST_CASE("Three belts of 30 mm are 90 mm", "[measure]") {
    CHECK(Extent{Width::millimetres(30)} * 3 == Extent{Width::millimetres(90)});
}

TEST_CASE("Teeth times pitch is exact for the finest pitches of the tables", "[measure]") {
    CHECK(Length::nanometres(2'072'600) * Teeth{100} == Length::micrometres(207'260)); // 40DP, as printed
    CHECK(Length::micrometres(9525) * Teeth{33} == Length::micrometres(314'325));      // 124L of ISO 5296
    CHECK_THROWS_AS(Teeth{0}, std::invalid_argument);
}
