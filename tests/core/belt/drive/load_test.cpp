#include "core/belt/drive/load.h"
#include "tests/catch.h"
#include "tests/core/belt/read_tables.h"

#include <cmath>
#include <stdexcept>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::drive;

namespace {

TwoPulleys toothedDrive(const char* name, int first, int second) {
    const Profile& profile = *theTables().profile(name);
    return {&profile, pulleyOf(profile, Teeth{first}), pulleyOf(profile, Teeth{second})};
}

std::optional<Carry> carryOf(const TwoPulleys& drive, double centre, const Duty& duty,
                             std::optional<Extent> width) {
    return carry(drive, atDistance(drive, centre).value(), duty, width, theTables());
}

} // namespace

TEST_CASE("Speed, pull and torques of 24 and 48 teeth of H at 1450 1/min and 5.5 kW", "[drive][load]") {
    // 24 x 12.7 mm x 1450 / 60 000 = 7.366 m/s; 5500 W / 7.366 = 746.67 N; 9549.3 x 5.5 / 1450 = 36.22 Nm,
    // doubled on the second.
    const Pull pull = pullOf(toothedDrive("H", 24, 48), {5.5, 1450, 1.4});
    CHECK(pull.beltSpeed == Approx(7.366));
    CHECK(pull.effective == Approx(746.674).margin(0.001));
    CHECK(pull.torqueFirst == Approx(36.2213).margin(0.001));
    CHECK(pull.torqueSecond == Approx(72.4427).margin(0.001));
    // And back from the torque.
    CHECK(dutyOfTorque(pull.torqueFirst, 1450).kilowatts == Approx(5.5));
    CHECK_THROWS_AS(pullOf(toothedDrive("H", 24, 48), {5.5, 0}), std::invalid_argument);
}

TEST_CASE("What a width of H carries, worked by hand", "[drive][load]") {
    // P0 = (2100.85 - 0.448 x 7.366^2) x 7.366 / 1000 = 15.2958 kW at 76.2 mm. 50.8 mm: x (2/3)^1.14 = 9.6346
    // kW. 5.5 kW x 1.4 = 7.7 kW takes 0.7992 of it; 76.2 x (7.7 / 15.2958)^(1/1.14) = 41.73 mm would do: 50.8
    // is the next.
    const auto carried =
        carryOf(toothedDrive("H", 24, 48), 400, {5.5, 1450, 1.4}, Width::micrometres(50'800));
    REQUIRE(carried);
    CHECK(carried->referenceKilowatts == Approx(15.2958).margin(0.0005));
    CHECK(carried->meshFactor == 1);
    CHECK(*carried->kilowatts == Approx(9.6346).margin(0.001));
    CHECK(*carried->share == Approx(0.7992).margin(0.0002));
    CHECK(*carried->leastWidth == Approx(41.73).margin(0.01));
    REQUIRE(carried->nextListed);
    CHECK(carried->nextListed->label == "50.8");
    CHECK(carried->confidence == Confidence::MemoryOnly);
    CHECK(carried->standard == "ISO 5295:1987");
}

TEST_CASE("The least width carries the design power exactly", "[drive][load]") {
    const TwoPulleys drive = toothedDrive("L", 12, 72); // few teeth in mesh
    const Duty duty{0.4, 1400, 1.3};
    const auto carried = carryOf(drive, 170, duty, {});
    REQUIRE(carried);
    CHECK(carried->meshFactor < 1);
    CHECK_FALSE(carried->share);
    const auto exact =
        carryOf(drive, 170, duty, Width::micrometres(std::llround(*carried->leastWidth * 1000)));
    CHECK(*exact->share == Approx(1).margin(1e-4));
}

TEST_CASE("Six teeth in mesh carry fully, each one missing takes a fifth", "[drive][load]") {
    CHECK(meshFactor(12) == 1);
    CHECK(meshFactor(6) == 1);
    CHECK(meshFactor(5) == Approx(0.8));
    CHECK(meshFactor(2) == Approx(0.2));
    CHECK(meshFactor(1) == 0);
    CHECK(meshFactor(0) == 0);
}

TEST_CASE("A belt too fast for its own mass carries nothing", "[drive][load]") {
    // H: sqrt(2100.85 / 0.448) = 68.5 m/s. 24 teeth at 14 000 1/min run at 71 m/s.
    const auto carried = carryOf(toothedDrive("H", 24, 48), 400, {5.5, 14'000}, Width::micrometres(50'800));
    REQUIRE(carried);
    CHECK(carried->referenceKilowatts < 0);
    CHECK_FALSE(carried->leastWidth);
    CHECK_FALSE(carried->share);
    CHECK_FALSE(carried->nextListed);
}

TEST_CASE("Only five profiles have figures; of the others the belt maker's data alone tell",
          "[drive][load]") {
    int known = 0;
    for (const Profile& profile : theTables().profiles()) {
        const Pulley pulley = profile.ribbed() ? pulleyOf(&profile, 60) : pulleyOf(profile, Teeth{30});
        const TwoPulleys drive{&profile, pulley, pulley};
        if (carryOf(drive, 2000, {1, 1000}, {})) ++known;
    }
    CHECK(known == 5); // XL, L, H, XH, XXH
    CHECK_FALSE(carryOf(toothedDrive("H8M", 24, 48), 400, {5.5, 1450}, Width::millimetres(30)));
    CHECK_FALSE(carryOf({nullptr, {50}, {50}}, 400, {5.5, 1450}, Width::millimetres(30)));
    CHECK(theTables().referencePull("XXH")->width == Width::millimetres(127));
    CHECK(theTables().referencePull("nothing") == nullptr);
}
