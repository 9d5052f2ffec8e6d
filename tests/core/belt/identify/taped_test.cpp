#include "tests/catch.h"

#include "core/belt/identify/taped.h"
#include "core/belt/reader.h"
#include "tests/core/belt/read_tables.h"

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::identify;

namespace {

constexpr double tape = 2;

Taped of(const char* text, double measured) {
    const auto belt = readBelt(text, theTables());
    REQUIRE(belt.ok());
    const auto seen = taped(*belt, measured, tape, theTables());
    REQUIRE(seen);
    return *seen;
}

} // namespace

TEST_CASE("A tape that says 818 fits the inch length 322, which is 819.15 mm", "[identify]") {
    const Taped seen = of("L 322", 818);
    CHECK(seen.fits);
    CHECK(seen.how == Measure::Flat);
    CHECK(seen.expected == Approx(819.15));
    CHECK(seen.by() == Approx(-1.15));
    CHECK(seen.allowed < 9.525); // less than a tooth, else it would say nothing
}

TEST_CASE("A tape round the back or the inside is known for what it is", "[identify]") {
    // ISO 5296, table for L: hs 3.6, ht 1.91, a 0.381; so the back lies 1.309 outside the pitch line, the
    // tips 2.291 inside: 2 pi of that is 8.2 and 14.4.
    const Taped back = of("L 322", 827.5);
    CHECK(back.fits);
    CHECK(back.how == Measure::Outside);
    const Taped inside = of("L 322", 804.5);
    CHECK(inside.fits);
    CHECK(inside.how == Measure::Inside);
}

TEST_CASE("A length that the tape can't have read is told with the belts that it fits", "[identify]") {
    const Taped seen = of("H8M 1200", 1120);
    CHECK_FALSE(seen.fits);
    REQUIRE_FALSE(seen.others.empty());
    CHECK(designation(seen.others.front()) == "H8M 1120");
}

TEST_CASE("Of short pitches a tape fits several lengths, and says which", "[identify]") {
    const Taped seen = of("T2.5 500", 500);
    CHECK(seen.fits);
    for (const Belt& other : seen.others)
        CHECK(std::abs(other.length.inMillimetres() - 500) < 2 * seen.allowed);
    CHECK_FALSE(taped({"none", {}, Length::millimetres(1), ""}, 500, tape, theTables()));
}
