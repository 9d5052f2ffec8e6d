#include "core/belt/drive/substitutes.h"
#include "core/belt/reader.h"
#include "tests/catch.h"
#include "tests/core/belt/read_tables.h"

#include <algorithm>
#include <cmath>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::drive;

namespace {

Belt beltOf(const char* profile, int teeth) { return *beltOfTeeth(profile, Teeth{teeth}, theTables()); }

TwoPulleys twoOfH5m() {
    const Profile& h5m = *theTables().profile("H5M");
    return {&h5m, pulleyOf(h5m, Teeth{22}), pulleyOf(h5m, Teeth{44})};
}

template <class Offer>
std::vector<std::int64_t> teethOf(const std::vector<Offer>& offers) {
    std::vector<std::int64_t> teeth;
    for (const Offer& offer : offers)
        teeth.push_back(offer.belt.teeth->count());
    return teeth;
}

using Counts = std::vector<std::int64_t>;

} // namespace

TEST_CASE("When a length is not here its neighbours say what the distance would do, if the drive takes it",
          "[drive][substitutes]") {
    // 770 mm stands at 301.99. 755, 775 and 790 would stand at 294.48, 304.50 and 312.01.
    const auto others = otherLengths(twoOfH5m(), beltOf("H5M", 154), Range{8, 3}, {}, theTables());
    REQUIRE(others);
    CHECK(others->any);
    CHECK(teethOf(others->belts) == Counts{155, 151, 158, 150, 149});
    CHECK(others->belts[0].shift == Approx(304.49657710618607 - 301.9924002978662).epsilon(1e-9));
    CHECK(others->belts[0].reachable);
    CHECK(others->belts[1].shift == Approx(-7.51295777).epsilon(1e-6));
    CHECK(others->belts[1].reachable);
    CHECK_FALSE(others->belts[2].reachable); // 10.016 farther, three can be done
    CHECK_FALSE(others->belts[3].reachable); // 10.017 nearer, eight can be done
}

TEST_CASE("Where the drive takes no other length there is no substitute", "[drive][substitutes]") {
    const auto others = otherLengths(twoOfH5m(), beltOf("H5M", 154), Range{2, 2}, {}, theTables());
    REQUIRE(others);
    CHECK_FALSE(others->any);
    CHECK_FALSE(others->belts.empty());
}

TEST_CASE("A belt too short for the pulleys has no substitutes but the least length",
          "[drive][substitutes]") {
    const auto others = otherLengths(twoOfH5m(), beltOf("H5M", 50), {}, {}, theTables());
    REQUIRE_FALSE(others);
    CHECK(others.reason().kind == DriveFault::Kind::BeltTooShort);
}

TEST_CASE("Without pulleys the distance changes by half of the length at least", "[drive][substitutes]") {
    const std::vector<Stocked> stock = {{beltOf("H5M", 158), Width::millimetres(50)},
                                        {beltOf("S5M", 155), Width::millimetres(50)}};
    const auto around = neighbours(beltOf("H5M", 154), Extent{Width::millimetres(25)}, theTables(), stock);
    CHECK(teethOf(around) == Counts{158, 155, 151, 150, 149, 160});
    CHECK(around[0].shift == 10);
    CHECK(around[1].shift == 2.5);
    CHECK(around[2].shift == -7.5);
    CHECK(around[1].stock.empty()); // S5M is another tooth
    // "At least": round pulleys of 22 and 44 teeth 775 mm move it by a little more.
    const auto exact = otherLengths(twoOfH5m(), beltOf("H5M", 154), {}, {}, theTables());
    CHECK(exact->belts[0].shift > 2.5);
}

TEST_CASE("What is here is named though others lie between, up to a tenth off", "[drive][substitutes]") {
    // 770 mm: 710 is 7.8 % shorter, 850 is 10.4 % longer.
    const std::vector<Stocked> stock = {{beltOf("H5M", 142), Width::millimetres(50)},
                                        {beltOf("H5M", 170), Width::millimetres(50)}};
    const auto around = neighbours(beltOf("H5M", 154), Extent{Width::millimetres(25)}, theTables(), stock);
    CHECK(teethOf(around) == Counts{142, 155, 151, 150, 158, 149, 160});
    CHECK(around[0].shift == -30);
}

TEST_CASE("A substitute is never of another profile", "[drive][substitutes]") {
    std::vector<Stocked> stock;
    for (const Profile& profile : theTables().profiles())
        for (const MadeLength& made : theTables().lengths(profile.name))
            stock.push_back(
                {{profile.name, made.teeth, made.length, ""}, Extent::of(profile.unit(), 100'000)});
    const auto others = otherLengths(twoOfH5m(), beltOf("H5M", 154), {}, {}, theTables(), stock);
    for (const Choice& choice : others->belts) {
        CHECK(choice.belt.profile == "H5M");
        for (const Stocked& stocked : choice.stock)
            CHECK(stocked.belt.profile == "H5M");
    }
    for (const Neighbour& neighbour : neighbours(beltOf("L", 86), {}, theTables(), stock))
        CHECK(neighbour.belt.profile == "L");
}

TEST_CASE("Other widths of L carry by its width factor", "[drive][substitutes]") {
    // ISO 5295, from memory: (b / b0)^1.14. 12.7 and 25.4 beside 19.05 mm.
    const auto others = otherWidths(*theTables().profile("L"), Width::micrometres(19'050), theTables());
    REQUIRE(others.size() >= 2);
    const auto of = [&](std::int64_t micrometres) {
        return *std::find_if(others.begin(), others.end(),
                             [&](const OtherWidth& w) { return w.width.count() == micrometres; });
    };
    CHECK(of(12'700).share == Approx(std::pow(2.0 / 3, 1.14)));
    CHECK(of(12'700).share == Approx(0.6299).margin(0.0001));
    CHECK(of(25'400).share == Approx(1.3881).margin(0.0001));
    CHECK(of(25'400).how == Confidence::MemoryOnly);
    CHECK(of(25'400).label == "25.4");
}

TEST_CASE("Where no factor is known a width carries by its millimetres, and that is said",
          "[drive][substitutes]") {
    // H8M is listed in 20, 30, 50, 85.
    const auto others = otherWidths(*theTables().profile("H8M"), Width::millimetres(30), theTables());
    REQUIRE(others.size() == 3);
    CHECK(others[0].label == "20");
    CHECK(others[0].share == Approx(2.0 / 3));
    CHECK(others[1].share == Approx(5.0 / 3));
    CHECK(others[0].how == Confidence::CommonPractice);
    // An odd width has neighbours, too.
    const auto odd = otherWidths(*theTables().profile("H8M"), Width::millimetres(27), theTables());
    REQUIRE(odd.size() == 3);
    CHECK(odd[1].label == "30");
}

TEST_CASE("A ribbed belt carries by its ribs", "[drive][substitutes]") {
    const Profile& pj = *theTables().profile("PJ");
    const auto others = otherWidths(pj, Ribs{6}, theTables());
    REQUIRE(others.size() == 4);
    CHECK(others[0].width == Extent{Ribs{4}});
    CHECK(others[1].share == Approx(5.0 / 6));
    CHECK(others[3].label == "8");
    CHECK(otherWidths(pj, Ribs{1}, theTables()).size() == 2); // none with no ribs
    CHECK(otherWidths(pj, Ribs{0}, theTables()).empty());
}
