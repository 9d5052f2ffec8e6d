#include "tests/catch.h"
#include "tests/core/belt/read_tables.h"

#include <set>

using namespace riband;
using namespace riband::belt;

namespace {

Length mm(std::int64_t whole) { return Length::millimetres(whole); }

std::set<std::string> lookAlikesOf(std::string_view profile) {
    std::set<std::string> names;
    for (const Profile* other : theTables().lookAlikes(profile))
        names.insert(other->name);
    return names;
}

/// Loads the tables with one of them changed.
TableFault faultWith(const std::string& file, const std::string& from, const std::string& to) {
    TableTexts texts = tableTexts();
    std::string& text = texts.at(file);
    const auto at = text.find(from);
    REQUIRE(at != std::string::npos);
    text.replace(at, from.size(), to);
    const auto loaded = Tables::load(texts);
    REQUIRE_FALSE(loaded.ok());
    return loaded.reason();
}

} // namespace

TEST_CASE("Every profile of the standards is known by its name and pitch", "[tables]") {
    const Tables& tables = theTables();
    CHECK(tables.profiles().size() == 64);
    // ISO 5296: L is 3/8 in; ISO 13050: 8M is 8 mm; ISO 9982: PK ribs stand 3.56 mm apart.
    CHECK(tables.profile("L")->pitch == Length::nanometres(9'525'000));
    CHECK(tables.profile("H8M")->pitch == mm(8));
    CHECK(tables.profile("PK")->pitch == Length::nanometres(3'560'000));
    CHECK(tables.profile("S4.5M")->pitch == Length::micrometres(4500));
    CHECK(tables.profile("MXL")->pitch == Length::nanometres(2'032'000));
    CHECK(tables.profile("l") == nullptr);
    CHECK(tables.profile("") == nullptr);
}

TEST_CASE("A profile says its standard, shape and body", "[tables]") {
    const Profile& h8m = *theTables().profile("H8M");
    CHECK(h8m.standard == "ISO 13050");
    CHECK(h8m.shape == ToothShape::HalfRound);
    CHECK(h8m.unit() == Unit::Micrometre);
    CHECK(theTables().profile("PJ")->unit() == Unit::Rib);
    CHECK(theTables().profile("S8M")->shape == ToothShape::FlatTopRound);
    CHECK(theTables().profile("AT10")->body == "polyurethane");
    CHECK(theTables().profile("DH8M")->doubleSided);
    CHECK(theTables().profile("T5-DL")->base == "T5");
}

TEST_CASE("A drawn tooth has the joints that its standard gives", "[tables]") {
    // ISO 13050 Table 9, H8M: half a tooth from the land (3.30, 0) to the tip (0, -3.38).
    const ToothForm& form = theTables().profile("H8M")->form;
    REQUIRE(form.joints.size() == 4);
    CHECK(form.joints.front().x == Approx(-3.30));
    CHECK(form.joints.back().y == Approx(-3.38));
    CHECK(*form.tipRadius == Approx(2.59));
    CHECK(*theTables().profile("R8M")->form.parabola == Approx(1.0954));
    CHECK(*theTables().profile("S8M")->form.noseRadius == Approx(4.04));
    CHECK(*theTables().profile("T10")->form.rootWidth == Approx(5.30));
}

TEST_CASE("A double-sided profile has the tooth of its single-sided one and its own total height",
          "[tables]") {
    const ToothForm& form = theTables().profile("DH8M")->form;
    CHECK(form.joints.size() == 4);
    CHECK(*form.total == Approx(8.1));
}

TEST_CASE("Lengths come short first and each one once", "[tables]") {
    std::size_t count = 0;
    for (const Profile& profile : theTables().profiles()) {
        if (profile.doubleSided) continue;
        const auto& lengths = theTables().lengths(profile.name);
        count += lengths.size();
        for (std::size_t i = 1; i < lengths.size(); ++i)
            CHECK(lengths[i - 1].length < lengths[i].length);
    }
    CHECK(count == 3246); // 3,250 rows, four of which are a second code of a ribbed length
}

TEST_CASE("Every toothed length is a whole number of pitches", "[tables]") {
    for (const Profile& profile : theTables().profiles())
        for (const MadeLength& made : theTables().lengths(profile.name))
            if (!profile.ribbed()) CHECK(profile.pitch * *made.teeth == made.length);
}

TEST_CASE("Lengths that two catalogues misprint are right here", "[tables]") {
    const auto teeth = [](std::string_view profile, std::string_view code) {
        const auto found = theTables().coded(profile, code);
        REQUIRE(found.size() == 1);
        return std::pair{found[0]->teeth->count(), found[0]->length.inNanometres()};
    };
    CHECK(teeth("L", "817") == std::pair<std::int64_t, std::int64_t>{218, 2'076'450'000});    // not 2075.18
    CHECK(teeth("L", "124") == std::pair<std::int64_t, std::int64_t>{33, 314'325'000});       // not 314.96
    CHECK(teeth("XH", "534") == std::pair<std::int64_t, std::int64_t>{61, 1'355'725'000});    // not 1356.36
    CHECK(teeth("S5M", "640") == std::pair<std::int64_t, std::int64_t>{128, 640'000'000});    // not 127 teeth
    CHECK(teeth("H8M", "4400") == std::pair<std::int64_t, std::int64_t>{550, 4'400'000'000}); // not 530
}

TEST_CASE("Two makers' codes of one belt lead to it", "[tables]") {
    for (const char* code : {"172", "173"}) {
        const auto found = theTables().coded("L", code);
        REQUIRE(found.size() == 1);
        CHECK(found[0]->teeth == Teeth{46});
    }
    CHECK(theTables().coded("PJ", "470J").front()->length == mm(1194));
    CHECK(theTables().coded("PJ", "1200").size() == 2); // 1194 is also printed 1200
    CHECK(theTables().coded("L", "no such").empty());
}

TEST_CASE("The lengths around one that nobody makes are found", "[tables]") {
    // XL 416 is 1056.64 mm; the lists go from 414 (1051.56) to 424 (1076.96).
    const auto around = theTables().around("XL", Length::nanometres(1'056'640'000));
    REQUIRE(around.size() == 2);
    CHECK(around[0]->code == "414");
    CHECK(around[1]->code == "424");
    CHECK(theTables().around("T5", mm(1)).size() == 1);
    CHECK(theTables().around("T5", mm(99'000)).size() == 1);
    CHECK(theTables().around("nothing", mm(1)).empty());
}

TEST_CASE("Inch widths that end in half a micrometre are rounded up", "[tables]") {
    const auto& widths = theTables().widths("MXL");
    REQUIRE(widths.size() == 4);
    CHECK(widths[1].code == "019");
    CHECK(widths[1].extent == Extent{Width::micrometres(4763)}); // 3/16 in = 4.7625 mm
    CHECK(theTables().widths("XL")[1].extent == Extent{Width::micrometres(7938)});
    CHECK(theTables().widths("PJ").empty());
}

TEST_CASE("The sleeve of a short moulded belt is narrower", "[tables]") {
    const Tables& tables = theTables();
    CHECK(tables.usualSleeve({"T5", Teeth{60}, mm(300), ""}) == Extent{Width::millimetres(200)});
    CHECK(tables.usualSleeve({"T5", Teeth{100}, mm(500), ""}) == Extent{Width::millimetres(380)});
    CHECK(tables.usualSleeve({"H8M", Teeth{150}, mm(1200), ""}) == Extent{Width::millimetres(470)});
    CHECK(tables.widestSleeve("H8M") == Extent{Width::millimetres(500)});
    CHECK(tables.usualSleeve({"PJ", {}, mm(1194), ""}) == Extent{Ribs{190}});
    CHECK(tables.widestSleeve("PJ") == Extent{Ribs{245}});
    const auto sleeves = tables.sleeves({"H8M", Teeth{150}, mm(1200), ""});
    CHECK(std::is_sorted(sleeves.begin(), sleeves.end()));
    CHECK(std::adjacent_find(sleeves.begin(), sleeves.end()) == sleeves.end());
    CHECK(sleeves.back() == Extent{Width::millimetres(500)});
    CHECK(tables.sleeves({"unknown", {}, mm(1194), ""}).empty());
}

TEST_CASE("Profiles of the same pitch, or nearly, are named as look-alikes", "[tables]") {
    CHECK(lookAlikesOf("H8M") == std::set<std::string>{"S8M", "R8M", "G8M"});
    CHECK(lookAlikesOf("T10") == std::set<std::string>{"AT10"});
    CHECK(lookAlikesOf("XL") == std::set<std::string>{"T5", "AT5", "H5M", "R5M", "S5M", "G5M"});
    CHECK(lookAlikesOf("PJ").empty());
    CHECK(lookAlikesOf("unknown").empty());
}

TEST_CASE("Polyurethane ages sooner than rubber", "[tables]") {
    // ISO 2230:2002: group A 5 years and 2 more, group B 7 and 3.
    CHECK(theTables().shelfLife("T5").years == 5);
    CHECK(theTables().shelfLife("T5").extension == 2);
    CHECK(theTables().shelfLife("H8M").years == 7);
    CHECK(theTables().shelfLife("MXL").years == 7); // usually rubber
    CHECK(theTables().shelfLife("PK").extension == 3);
    CHECK(theTables().shelfLife("unknown").years == 5); // the shortest
}

TEST_CASE("A broken table is refused with its file and line", "[tables]") {
    SECTION("a length that is no multiple of its pitch") {
        const auto fault = faultWith("lengths", "MXL,24,30,60.96,", "MXL,24,30,60.97,");
        CHECK(fault.file == "lengths");
        CHECK(fault.line == 2);
        CHECK(fault.what.find("teeth x pitch") != std::string::npos);
    }
    SECTION("an unknown profile") { CHECK(faultWith("widths", "MXL,012", "MXX,012").line == 2); }
    SECTION("an inch width that is not its millimetres") {
        CHECK(faultWith("widths", "0.125,3.175", "0.125,3.174").file == "widths");
    }
    SECTION("an inch pitch that is not its millimetres") {
        CHECK(faultWith("profiles", "2.032,0.080", "2.032,0.081").line == 2);
    }
    SECTION("a figure that is none") { CHECK(faultWith("sleeves", "470", "4x0").file == "sleeves"); }
    SECTION("a missing column") { CHECK(faultWith("lengths", "makers", "maker").line == 1); }
    SECTION("an unknown mark of confidence") {
        CHECK(faultWith("width_tolerances", "confirmed", "hearsay").line == 2);
    }
    SECTION("a word of no kind") { CHECK(faultWith("trade_words", ",tooth,", ",tusk,").line == 2); }
    SECTION("a rule for an unknown profile") {
        CHECK(faultWith("length_tolerances", "T2.5 T5", "T2.6 T5").file == "length_tolerances");
    }
    SECTION("a row too short") { CHECK(faultWith("shelf_life", ",A,", ",").line == 2); }
    SECTION("a table that is not there") {
        TableTexts texts = tableTexts();
        texts.erase("sleeves");
        CHECK(Tables::load(texts).reason().file == "sleeves");
    }
}
