#include "core/cutting/setup.h"
#include "tests/catch.h"
#include "tests/core/cutting/problems.h"

#include <algorithm>
#include <fstream>
#include <sstream>

using namespace riband;
using namespace riband::cutting;
using namespace riband::cutting::testing;

namespace {

std::shared_ptr<const belt::Tables> theTables() {
    static const auto tables = [] {
        belt::TableTexts texts;
        for (const char* name :
             {"profiles", "widths", "lengths", "width_tolerances", "length_tolerances", "tooth_shapes",
              "sleeves", "min_pulleys", "trade_words", "shelf_life", "pulls"}) {
            std::ifstream file{std::string{RIBAND_SOURCE_DIR} + "/resources/tables/" + name + ".csv"};
            std::ostringstream text;
            text << file.rdbuf();
            texts[name] = text.str();
        }
        auto loaded = belt::Tables::load(texts);
        REQUIRE(loaded.ok());
        return loaded.value();
    }();
    return tables;
}

Shaft shaft(std::string name, double driven, double tension) {
    return {std::move(name), driven, tension, 450, 60, 1500};
}
Cutter bench(std::vector<Shaft> shafts) { return {"bench", std::move(shafts)}; }
belt::Belt toothedBelt(std::string profile, int teeth, std::int64_t nanometresOfLength,
                       std::string construction = "") {
    return {std::move(profile), Teeth{teeth}, Length::nanometres(nanometresOfLength),
            std::move(construction)};
}
const belt::Belt h8m1200 = toothedBelt("H8M", 150, 1'200'000'000);

bool has(const SetUp& setUp, SetUp::Remark remark) {
    return std::count(setUp.remarks.begin(), setUp.remarks.end(), remark) > 0;
}

} // namespace

TEST_CASE("A sleeve is set up on the thickest shaft that takes it") {
    const Cutter cutter = bench({shaft("thin", 50, 50), shaft("thick", 60, 60)});
    const auto result = setUp(h8m1200, mm(400), *theTables(), cutter);
    REQUIRE(result);
    CHECK(cutter.shafts[result->shaft].name == "thick");
    // 60 + 2 (3.38 + 0.686): the first row of the worked figures
    CHECK(result->centreDistance == Approx(492.9785).margin(0.05));
    CHECK_FALSE(result->approximate);
    CHECK(result->doubt > 0.1);
    CHECK(result->doubt < 1);
}

TEST_CASE("Ten millimetres stay between the sleeve and the edge of the shaft") {
    Cutter cutter = bench({shaft("only", 60, 60)}); // usable 450
    CHECK(setUp(h8m1200, mm(440), *theTables(), cutter));
    const auto tooWide = setUp(h8m1200, mm(440.001), *theTables(), cutter);
    REQUIRE_FALSE(tooWide);
    CHECK(tooWide.reason() == SetUpFault::TooWide);
}

TEST_CASE("A shaft that can't come close or go far enough does not take the sleeve") {
    Shaft small = shaft("only", 60, 60);
    small.closest = 500;
    auto result = setUp(h8m1200, mm(400), *theTables(), bench({small}));
    REQUIRE_FALSE(result);
    CHECK(result.reason() == SetUpFault::TooShort);
    small.closest = 100;
    small.farthest = 400;
    result = setUp(h8m1200, mm(400), *theTables(), bench({small}));
    REQUIRE_FALSE(result);
    CHECK(result.reason() == SetUpFault::TooLong);
    result = setUp(h8m1200, mm(400), *theTables(), bench({}));
    REQUIRE_FALSE(result);
    CHECK(result.reason() == SetUpFault::NoShaft);
}

TEST_CASE("Two shafts never touch, however close the cutter could bring them") {
    // H5M 300 on 80 mm shafts: (300 - pi (80 + 5.304)) / 2 = 16 mm, under the 80 at which they touch.
    Shaft thick = shaft("only", 80, 80);
    thick.closest = 0;
    const auto result = setUp(toothedBelt("H5M", 60, 300'000'000), mm(100), *theTables(), bench({thick}));
    REQUIRE_FALSE(result);
    CHECK(result.reason() == SetUpFault::TooShort);
}

TEST_CASE("A shaft under the profile's smallest pulley is taken only if no other does, and said so") {
    // H14M: smallest pulley 28 teeth = plain shaft of 109.9 mm.
    const belt::Belt h14m = toothedBelt("H14M", 165, 2'310'000'000);
    const Cutter both = bench({shaft("60", 60, 60), shaft("120", 120, 120)});
    auto result = setUp(h14m, mm(200), *theTables(), both);
    REQUIRE(result);
    CHECK(both.shafts[result->shaft].name == "120");
    CHECK(has(*result, SetUp::Remark::NearSmallestShaft)); // under 1.25 x 109.9 = 137.4
    result = setUp(h14m, mm(200), *theTables(), bench({shaft("60", 60, 60)}));
    REQUIRE(result);
    CHECK(has(*result, SetUp::Remark::ShaftUnderSmallest));
    // The thinner one of a pair bends the belt most.
    result = setUp(h14m, mm(200), *theTables(), bench({shaft("200/60", 200, 60), shaft("120", 120, 120)}));
    REQUIRE(result);
    CHECK(result->shaft == 1);
}

TEST_CASE("A short sleeve wants little tension") {
    const Cutter cutter = bench({shaft("only", 30, 30)});
    CHECK(has(setUp(toothedBelt("T5", 60, 300'000'000), mm(100), *theTables(), cutter).value(),
              SetUp::Remark::LittleTension));
    CHECK_FALSE(has(setUp(toothedBelt("T5", 200, 1'000'000'000), mm(100), *theTables(), cutter).value(),
                    SetUp::Remark::LittleTension));
}

TEST_CASE("Cords and bodies that the cutter is not made for are named") {
    Cutter cutter = bench({shaft("only", 60, 60)});
    const auto remarked = [&](const std::string& construction, SetUp::Remark remark) {
        const belt::Belt belt = toothedBelt("H8M", 150, 1'200'000'000, construction);
        return has(setUp(belt, mm(100), *theTables(), cutter).value(), remark);
    };
    CHECK(remarked("Steel cord", SetUp::Remark::SteelCord));
    CHECK(remarked("aramid cord", SetUp::Remark::AramidCord));
    CHECK_FALSE(remarked("", SetUp::Remark::SteelCord));
    CHECK_FALSE(remarked("polyurethane", SetUp::Remark::Polyurethane));
    cutter.cutsSteelCord = cutter.cutsAramidCord = true;
    cutter.cutsPolyurethane = false;
    CHECK_FALSE(remarked("steel cord", SetUp::Remark::SteelCord));
    CHECK_FALSE(remarked("aramid cord", SetUp::Remark::AramidCord));
    CHECK(remarked("polyurethane", SetUp::Remark::Polyurethane));
    const auto t10 = setUp(toothedBelt("T10", 100, 1'000'000'000), mm(100), *theTables(), cutter);
    CHECK(has(t10.value(), SetUp::Remark::Polyurethane)); // the usual body of the profile
}

TEST_CASE("The distance for a ribbed sleeve is approximate, to a millimetre or worse") {
    // PJ 1194 on 40 mm: between 530.1 (2.5 mm from rib tip to cord) and 529.1 (2.8 mm).
    const belt::Belt pj{"PJ", std::nullopt, Length::millimetres(1194), ""};
    const Cutter cutter = bench({shaft("only", 40, 40)});
    const auto result = setUp(pj, Ribs{60}, *theTables(), cutter);
    REQUIRE(result);
    CHECK(result->approximate);
    CHECK(result->doubt >= 1);
    CHECK(result->centreDistance == Approx(530.1).margin(0.1));
    CHECK(has(*result, SetUp::Remark::CutInTheGroove));
    // 189 ribs of 2.34 mm are 442.26 mm, over 440.
    CHECK(setUp(pj, Ribs{188}, *theTables(), cutter));
    CHECK_FALSE(setUp(pj, Ribs{189}, *theTables(), cutter));
}

TEST_CASE("Where no source gives the tooth height, the distance is approximate and the doubt says how much") {
    // m5, pitch 15.708: nobody prints its height or pitch line; 0.175 of the pitch either way, pi times that.
    const belt::Profile* m5 = theTables()->profile("m5");
    REQUIRE(m5);
    REQUIRE_FALSE(m5->form.height);
    const auto result =
        setUp(toothedBelt("m5", 100, 1'570'796'300), mm(200), *theTables(), bench({shaft("80", 80, 80)}));
    REQUIRE(result);
    CHECK(result->approximate);
    CHECK(result->doubt > 8.6);
    CHECK(result->doubt < 11);
}
