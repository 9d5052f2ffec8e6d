#include "core/belt/drive/remarks.h"
#include "core/belt/drive/two_pulleys.h"
#include "tests/catch.h"
#include "tests/core/belt/drive/measured.h"
#include "tests/core/belt/read_tables.h"

#include <algorithm>
#include <numbers>
#include <random>
#include <stdexcept>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::drive;

namespace {

constexpr double pi = std::numbers::pi;

const Profile& profile(const char* name) { return *theTables().profile(name); }

TwoPulleys toothedDrive(const char* name, int first, int second) {
    return {&profile(name), pulleyOf(profile(name), Teeth{first}), pulleyOf(profile(name), Teeth{second})};
}

TwoPulleys plain(double first, double second) {
    return {nullptr, pulleyOf(nullptr, first), pulleyOf(nullptr, second)};
}

bool has(const std::vector<Remark>& remarks, Remark::Kind kind) {
    return std::any_of(remarks.begin(), remarks.end(), [&](const Remark& r) { return r.kind == kind; });
}

} // namespace

TEST_CASE("Equal pulleys: twice the distance and one turn of teeth", "[drive]") {
    // 24 teeth of T5: 2 x 200 + 24 x 5 = 520.
    const auto run = atDistance(toothedDrive("T5", 24, 24), 200);
    REQUIRE(run);
    CHECK(run->length == Approx(520).epsilon(1e-12));
    CHECK(run->arcSmallDegrees == Approx(180));
    CHECK(run->arcLargeDegrees == Approx(180));
    CHECK(run->span == Approx(200));
    CHECK(run->teethInMesh() == 12);
    CHECK(run->ratio == 1);
}

TEST_CASE("Half of an odd pulley is in mesh, and only whole teeth carry", "[drive]") {
    CHECK(*atDistance(toothedDrive("T5", 25, 25), 200)->mesh == Approx(12.5));
    CHECK(atDistance(toothedDrive("T5", 25, 25), 200)->teethInMesh() == 12);
    CHECK(atDistance(toothedDrive("T5", 20, 20), 123.456)->teethInMesh() == 10); // not 9 by the last digit
}

TEST_CASE("The ratio is that of the second pulley's teeth to the first's; the order changes nothing else",
          "[drive]") {
    const auto down = atDistance(toothedDrive("H5M", 22, 44), 300),
               up = atDistance(toothedDrive("H5M", 44, 22), 300);
    CHECK(down->ratio == 2);
    CHECK(up->ratio == 0.5);
    CHECK(down->length == up->length);
    CHECK(down->arcSmallDegrees == up->arcSmallDegrees);
    CHECK(down->mesh == up->mesh);
}

TEST_CASE("A ribbed belt is told by its effective length and pulleys by their effective diameters",
          "[drive]") {
    // ISO 9982: the cords of PJ run be = 1.2 mm above the effective line, on every pulley and on the belt
    // alike, so the effective length goes with the effective diameters.
    const Profile& pj = profile("PJ");
    const TwoPulleys drive{&pj, pulleyOf(&pj, 50), pulleyOf(&pj, 120)};
    CHECK(drive.first.pitchDiameter == Approx(52.4));
    const auto run = atDistance(drive, 400), bare = atDistance(plain(50, 120), 400);
    CHECK(run->length == Approx(bare->length).epsilon(1e-12));
    CHECK(run->arcSmallDegrees == Approx(bare->arcSmallDegrees));
    CHECK_FALSE(run->mesh);
    CHECK(run->ratio == Approx(122.4 / 52.4)); // the cords' speed turns the pulleys
    CHECK(withLength(drive, 1194)->centre == Approx(withLength(plain(50, 120), 1194)->centre).epsilon(1e-12));
}

TEST_CASE("Pulleys that overlap say the least distance that works", "[drive]") {
    const auto close = atDistance(plain(100, 60), 79.9);
    REQUIRE_FALSE(close);
    CHECK(close.reason().kind == DriveFault::Kind::PulleysOverlap);
    CHECK(close.reason().given == 79.9);
    CHECK(close.reason().least == 80);
    CHECK(atDistance(plain(100, 60), close.reason().least)); // and it does work
}

TEST_CASE("A belt too short says the least length that works", "[drive]") {
    // 20 and 60 teeth of T5 touch at 63.66 mm; 66 teeth would bring them nearer.
    const TwoPulleys drive = toothedDrive("T5", 20, 60);
    const auto tight = withLength(drive, 330);
    REQUIRE_FALSE(tight);
    CHECK(tight.reason().kind == DriveFault::Kind::BeltTooShort);
    CHECK(tight.reason().least == Approx(atDistance(drive, leastCentre(drive))->length));
    CHECK(withLength(drive, tight.reason().least + 1e-6));
    CHECK_FALSE(withLength(drive, tight.reason().least - 1e-6));
    CHECK_FALSE(withLength(drive, 1)); // not even round one of them
}

TEST_CASE("Nonsense is refused", "[drive]") {
    CHECK_THROWS_AS(pulleyOf(nullptr, 0.0), std::invalid_argument);
    CHECK_THROWS_AS(pulleyOf(nullptr, std::nan("")), std::invalid_argument);
    CHECK_THROWS_AS(pulleyOf(profile("PJ"), Teeth{20}), std::invalid_argument);
    CHECK_FALSE(atDistance(plain(100, 60), std::nan("")));
    CHECK_FALSE(withLength(plain(100, 60), std::nan("")));
}

TEST_CASE("A toothed pulley by its diameter gets its teeth; a measured outside is seen as such", "[drive]") {
    const Profile& h8m = profile("H8M");
    CHECK(pulleyOf(&h8m, 91.67).teeth == Teeth{36}); // 36 x 8 / pi = 91.673
    CHECK_FALSE(pulleyOf(&h8m, 90.30).teeth);        // 35.46 teeth
    CHECK(teethOfOutside(h8m, 90.30) == Teeth{36});  // 91.673 less 1.372
    const TwoPulleys drive{&h8m, pulleyOf(&h8m, 90.30), pulleyOf(h8m, Teeth{56})};
    const auto remarks = remarksOn(drive, atDistance(drive, 425).value());
    CHECK(has(remarks, Remark::Kind::LooksLikeOutside));
    const TwoPulleys odd{&h8m, pulleyOf(&h8m, 89.4), pulleyOf(h8m, Teeth{56})}; // 35.1 or 35.6 teeth
    CHECK(has(remarksOn(odd, atDistance(odd, 425).value()), Remark::Kind::NoWholeTeeth));
}

TEST_CASE("Few teeth in mesh, a small pulley and odd distances are remarked", "[drive]") {
    const auto kinds = [](const TwoPulleys& drive, double centre, Remark::Kind kind) {
        return has(remarksOn(drive, atDistance(drive, centre).value()), kind);
    };
    using Kind = Remark::Kind;
    // Smallest pulley of T10: 12 teeth. 12 teeth against 72 at 160 mm: 3.7 in mesh.
    CHECK(kinds(toothedDrive("T10", 12, 72), 160, Kind::FewTeeth));
    CHECK_FALSE(kinds(toothedDrive("T10", 12, 72), 160, Kind::PulleyUnderSmallest));
    CHECK(kinds(toothedDrive("T10", 11, 72), 160, Kind::PulleyUnderSmallest));
    CHECK_FALSE(kinds(toothedDrive("T10", 24, 24), 160, Kind::FewTeeth));
    // 24 teeth of T10 are 76.4 mm: from 91.4 to 305.6.
    CHECK(kinds(toothedDrive("T10", 24, 24), 91, Kind::TooClose));
    CHECK_FALSE(kinds(toothedDrive("T10", 24, 24), 92, Kind::TooClose));
    CHECK_FALSE(kinds(toothedDrive("T10", 24, 24), 305, Kind::VeryFar));
    CHECK(kinds(toothedDrive("T10", 24, 24), 306, Kind::VeryFar));
}

TEST_CASE("Three thousand random drives agree with a solver that knows no belts", "[drive][random]") {
    std::mt19937_64 dice{20261125};
    std::uniform_real_distribution<double> size{8, 500}, far{1.0, 6.0};
    for (int i = 0; i < 3000; ++i) {
        const double d1 = size(dice), d2 = size(dice);
        const TwoPulleys drive = plain(d1, d2);
        const double centre = leastCentre(drive) * far(dice);
        INFO(d1 << " " << d2 << " at " << centre);
        const auto run = atDistance(drive, centre);
        REQUIRE(run);
        CHECK(std::abs(run->length - testing::perimeter({{0, 0, d1 / 2}, {centre, 0, d2 / 2}})) < 1e-6);
        CHECK(std::abs(withLength(drive, run->length)->centre - centre) < 1e-8);
        CHECK(run->arcSmallDegrees + run->arcLargeDegrees == Approx(360));
        if (i % 3 == 0) CHECK(std::abs(testing::distanceOf(d1, d2, run->length) - centre) < 1e-5);
    }
}

TEST_CASE("A longer belt never brings the pulleys nearer", "[drive][random]") {
    std::mt19937_64 dice{7};
    std::uniform_int_distribution<int> teeth{10, 120};
    for (int i = 0; i < 500; ++i) {
        const TwoPulleys drive = toothedDrive("T5", teeth(dice), teeth(dice));
        double before = 0;
        for (int belt = 60; belt < 400; belt += 7) {
            const auto run = withLength(drive, belt * 5.0);
            if (!run) continue;
            CHECK(run->centre > before);
            CHECK(run->length ==
                  Approx(2 * run->span + (run->arcSmallDegrees * std::min(drive.first.pitchDiameter,
                                                                          drive.second.pitchDiameter) +
                                          run->arcLargeDegrees * std::max(drive.first.pitchDiameter,
                                                                          drive.second.pitchDiameter)) *
                                             pi / 360));
            before = run->centre;
        }
    }
}
