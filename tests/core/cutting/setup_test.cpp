#include "core/cutting/setup.h"
#include "tests/catch.h"
#include "tests/core/cutting/problems.h"

#include <algorithm>
#include <fstream>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_roots.h>
#include <numbers>
#include <sstream>

using namespace riband;
using namespace riband::cutting;
using namespace riband::cutting::testing;

namespace {

constexpr double pi = std::numbers::pi;

std::shared_ptr<const belt::Tables> theTables() {
    static const auto tables = [] {
        belt::TableTexts texts;
        for (const char* name : {"profiles", "widths", "lengths", "width_tolerances", "length_tolerances",
                                 "tooth_shapes", "sleeves", "min_pulleys", "trade_words", "shelf_life"}) {
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

/// A thread round two discs of many corners, measured with a ruler: no angle, no arc, no formula of the
/// belt. The convex hull of the corners is where the thread lies.
struct Point {
    double x, y;
};
double cross(Point o, Point a, Point b) { return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x); }

std::vector<Point> hull(std::vector<Point> points) {
    std::sort(points.begin(), points.end(), [](Point a, Point b) {
        return std::pair{a.x, a.y} < std::pair{b.x, b.y};
    });
    std::vector<Point> around;
    for (int side = 0; side < 2; ++side) {
        const std::size_t begin = around.size();
        for (const Point p : points) {
            while (around.size() >= begin + 2 && cross(around[around.size() - 2], around.back(), p) <= 0)
                around.pop_back();
            around.push_back(p);
        }
        around.pop_back();
        std::reverse(points.begin(), points.end());
    }
    return around;
}

double threadLength(double diameter1, double diameter2, double distance) {
    constexpr int corners = 4000;
    std::vector<Point> points;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * pi * i / corners;
        points.push_back({diameter1 / 2 * std::cos(angle), diameter1 / 2 * std::sin(angle)});
        points.push_back({distance + diameter2 / 2 * std::cos(angle), diameter2 / 2 * std::sin(angle)});
    }
    const std::vector<Point> round = hull(points);
    double length = 0;
    for (std::size_t i = 0; i < round.size(); ++i) {
        const Point a = round[i], b = round[(i + 1) % round.size()];
        length += std::hypot(b.x - a.x, b.y - a.y);
    }
    return length;
}

/// The distance at which that thread is as long as the belt, by the root finder of the GNU Scientific
/// Library.
double threadDistance(double diameter1, double diameter2, double length) {
    struct Asked {
        double d1, d2, length;
    } asked{diameter1, diameter2, length};
    gsl_function excess{[](double distance, void* p) {
                            const auto* a = static_cast<const Asked*>(p);
                            return threadLength(a->d1, a->d2, distance) - a->length;
                        },
                        &asked};
    gsl_root_fsolver* solver = gsl_root_fsolver_alloc(gsl_root_fsolver_brent);
    gsl_root_fsolver_set(solver, &excess, std::abs(diameter1 - diameter2) / 2, length);
    double low = 0, high = length;
    for (int step = 0; step < 100 && high - low > 1e-7; ++step) {
        gsl_root_fsolver_iterate(solver);
        low = gsl_root_fsolver_x_lower(solver);
        high = gsl_root_fsolver_x_upper(solver);
    }
    const double root = gsl_root_fsolver_root(solver);
    gsl_root_fsolver_free(solver);
    return root;
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

TEST_CASE("The length of an open belt over equal pulleys is twice the distance and one turn") {
    CHECK(openBeltLength(68.132, 68.132, 492.9785) == Approx(2 * 492.9785 + pi * 68.132).epsilon(1e-12));
    CHECK_THROWS_AS(openBeltLength(100, 20, 39), std::invalid_argument);
}

TEST_CASE("A belt that can't go round the larger pulley has no distance") {
    CHECK_FALSE(centreDistance(100, 100, pi * 100));
    CHECK_FALSE(centreDistance(100, 20, 300));
    CHECK(centreDistance(100, 100, pi * 100 + 2).value() == Approx(1));
}

TEST_CASE("The distance of plain shafts agrees with figures worked by another program") {
    struct Worked {
        const char* belt;
        double length, shaft1, shaft2, offset, distance;
    };
    const Worked worked[] = {
        {"H8M 1200", 1200, 60, 60, 4.066, 492.9785}, {"H8M 1200", 1200, 80, 50, 4.066, 484.8925},
        {"H5M 300", 300, 20, 20, 2.652, 110.2526},   {"H14M 2310", 2310, 100, 100, 7.417, 974.6192},
        {"XL 130", 330.2, 25, 25, 1.524, 121.0423},  {"L 390", 990.6, 50, 40, 2.286, 417.4025},
        {"T5 500", 500, 30, 30, 1.7, 197.5354},      {"T10 1000", 1000, 60, 60, 3.5, 394.7566},
        {"T10 1000", 1000, 60, 60, 3.43, 394.9766},
    };
    for (const Worked& w : worked) {
        INFO(w.belt << " on " << w.shaft1 << "/" << w.shaft2);
        const double c = centreDistance(w.shaft1 + 2 * w.offset, w.shaft2 + 2 * w.offset, w.length).value();
        CHECK(std::abs(c - w.distance) < 6e-5);
    }
}

TEST_CASE("The distance is that at which a thread round two discs is as long as the belt") {
    gsl_set_error_handler_off();
    const double drives[][3] = {{68.132, 68.132, 1200}, {88.132, 58.132, 1200}, {25.3, 25.3, 300},
                                {200, 30, 900},         {30, 200, 900},         {114.8, 114.8, 2310},
                                {120, 30, 400},         {28.05, 28.05, 330.2}};
    for (const auto& [d1, d2, length] : drives) {
        INFO(d1 << "/" << d2 << " " << length);
        CHECK(std::abs(centreDistance(d1, d2, length).value() - threadDistance(d1, d2, length)) < 2e-3);
    }
}

TEST_CASE("The distance gives the length back") {
    for (const double d1 : {20.0, 47.5, 110.0})
        for (const double d2 : {20.0, 60.0, 180.0})
            for (const double length : {650.0, 1200.0, 4000.0}) {
                const double c = centreDistance(d1, d2, length).value();
                CHECK(openBeltLength(d1, d2, c) == Approx(length).epsilon(1e-12));
            }
}

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
