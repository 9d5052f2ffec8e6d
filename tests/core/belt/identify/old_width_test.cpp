#include "tests/catch.h"

#include "core/belt/identify/old_width.h"
#include "core/belt/reader.h"
#include "tests/core/belt/read_tables.h"

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::identify;

namespace {

OldWidth of(const char* text, double width, double error = .3) {
    const auto belt = readBelt(text, theTables());
    REQUIRE(belt.ok());
    const auto old = oldWidth(*belt, width, error, theTables());
    REQUIRE(old);
    return *old;
}

Extent mm(std::int64_t micrometres) { return Width::micrometres(micrometres); }

} // namespace

TEST_CASE("An old width is the nearest standard width, with its tolerance", "[identify]") {
    const OldWidth old = of("H8M 1200", 29.4);
    REQUIRE(old.standard);
    CHECK(old.standard->extent == mm(30'000));
    REQUIRE(old.tolerance); // ISO 13050, 840 to 1680 mm long, up to 40 wide: +0.8 -1.2
    CHECK(old.tolerance->plus == Width::micrometres(800));
    CHECK(old.tolerance->minus == Width::micrometres(1'200));
    CHECK(old.fits);
    CHECK(old.offered(false) == mm(30'000));
    REQUIRE(old.next); // the one on the other side
    CHECK(old.next->extent == mm(20'000));
}

TEST_CASE("A custom width is kept if asked, and offered where no standard width fits", "[identify]") {
    CHECK(of("H8M 1200", 29.4).offered(true) == mm(29'400));
    const OldWidth odd = of("T10 1250", 27); // 25 and 32 are sold
    CHECK_FALSE(odd.fits);
    CHECK(odd.standard->extent == mm(25'000));
    CHECK(odd.next->extent == mm(32'000));
    CHECK(odd.offered(false) == mm(27'000));
}

TEST_CASE("An inch width is exact: 19 mm of an L belt is 3/4 in", "[identify]") {
    const OldWidth old = of("L 322", 19);
    CHECK(old.standard->extent == mm(19'050));
    CHECK(old.standard->code == "075");
    CHECK(old.fits);
}

TEST_CASE("Edges lose width in use and never gain it", "[identify]") {
    // T10 25: +-0.5 (DIN 7721, up to 50 mm wide) or what the table gives; error nearly none.
    const OldWidth good = of("T10 1250", 25, .01);
    REQUIRE(good.tolerance);
    const double plus = static_cast<double>(good.tolerance->plus.inMicrometres()) / 1e3;
    const double minus = static_cast<double>(good.tolerance->minus.inMicrometres()) / 1e3;
    CHECK(of("T10 1250", 25 + plus, .01).fits);
    CHECK_FALSE(of("T10 1250", 25 + plus + .1, .01).fits);
    CHECK(of("T10 1250", 25 - minus - .4, .01).fits); // up to 0.5 is rubbed off
    CHECK_FALSE(of("T10 1250", 25 - minus - .6, .01).fits);
}

TEST_CASE("A ribbed belt is its ribs, not its millimetres", "[identify]") {
    CHECK(of("PJ 1194", 13.6).offered(false) == Extent{Ribs{6}}); // 14.04 mm
    CHECK(of("PK 1000", 1).offered(false) == Extent{Ribs{1}});
}

TEST_CASE("A profile without listed widths keeps the measured one", "[identify]") {
    const OldWidth old = of("m3 63 teeth", 16.04);
    CHECK_FALSE(old.standard);
    CHECK(old.offered(false) == mm(16'000));
}

TEST_CASE("An unknown profile has no width to tell", "[identify]") {
    CHECK_FALSE(oldWidth({"X9", {}, Length::millimetres(9), ""}, 10, .3, theTables()));
}
