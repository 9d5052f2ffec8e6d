// Every length of every profile, with every listed width and some odd ones: what is printed is read back.
#include "core/measure/text.h"
#include "tests/catch.h"
#include "tests/core/belt/belt_words.h"

using namespace riband;
using namespace riband::belt;

namespace {

/// Those of the lists; of profiles without a list, some that could be.
std::vector<Belt> beltsOf(const Profile& profile) {
    std::vector<Belt> belts;
    for (const MadeLength& made : theTables().lengths(profile.name))
        belts.push_back({profile.name, made.teeth, made.length, ""});
    for (std::int64_t teeth = 20; belts.empty() || (belts.size() < 60 && teeth < 600); teeth += 11)
        if (const auto belt = beltOfTeeth(profile.name, Teeth{teeth}, theTables()))
            belts.push_back(*belt);
        else
            break;
    return belts;
}

/// Listed widths, odd ones that lie close to the labels of listed ones, and the widest sleeve.
std::vector<Extent> widthsOf(const Profile& profile) {
    const Extent widest = theTables().widestSleeve(profile.name);
    std::vector<Extent> widths{widest};
    if (profile.ribbed()) {
        for (const std::int64_t ribs : {1, 2, 3, 6, 7, 10, 12, 40, 41})
            if (Extent{Ribs{ribs}} < widest) widths.push_back(Ribs{ribs});
        return widths;
    }
    for (const StandardWidth& listed : theTables().widths(profile.name))
        widths.push_back(listed.extent);
    for (const std::int64_t um : {1, 999, 2500, 4762, 5000, 7937, 9500, 12345, 12700, 19000, 19050, 19100,
                                  25000, 27300, 50000, 100000, 160000, 199999})
        if (Extent{Width::micrometres(um)} < widest) widths.push_back(Width::micrometres(um));
    return widths;
}

bool isReadFrom(const std::string& text, const Belt& belt, Extent width, std::int64_t quantity) {
    const Understanding back = understand(text, theTables());
    if (back.readings.size() != 1 || back.question) return false;
    const Reading& reading = back.readings.front();
    return reading.belt == belt && reading.width == width && reading.quantity == quantity;
}

bool isReadBack(const Belt& belt, Extent width) {
    return isReadFrom(printed(belt, width, theTables()), belt, width, 1);
}

} // namespace

TEST_CASE("What is printed of any belt is read back to the same belt and width", "[round]") {
    std::size_t belts = 0;
    for (const Profile& profile : theTables().profiles()) {
        const auto widths = widthsOf(profile);
        for (const Belt& belt : beltsOf(profile)) {
            ++belts;
            for (const Extent width : widths)
                if (!isReadBack(belt, width)) FAIL_CHECK(printed(belt, width, theTables()));
        }
    }
    CHECK(belts > 3246);
}

TEST_CASE("How many belts may stand before or behind any printed form", "[round]") {
    for (const Profile& profile : theTables().profiles()) {
        const auto widths = widthsOf(profile);
        for (const Belt& belt : beltsOf(profile))
            for (const Extent width : widths) {
                const std::string text = printed(belt, width, theTables());
                for (const std::string& asked : {"3 x " + text, text + " x3", text + " 3 pcs"})
                    if (!isReadFrom(asked, belt, width, 3)) FAIL_CHECK(asked);
            }
    }
}

TEST_CASE("A designation is read back to the same belt, whatever its construction", "[round]") {
    for (const Profile& profile : theTables().profiles())
        for (const Belt& plain : beltsOf(profile))
            for (const char* construction : {"", "steel cord", "red cover, 2 mm"}) {
                Belt belt = plain;
                belt.construction = construction;
                const auto back = readBelt(designation(belt), theTables());
                if (!back || *back != belt) FAIL_CHECK(designation(belt));
                const Extent width = theTables().widestSleeve(profile.name);
                if (!isReadBack(belt, width)) FAIL_CHECK(printed(belt, width, theTables()));
            }
}

TEST_CASE("Belts are printed as their standards write them", "[round]") {
    const auto print = [](const char* belt, Extent width) {
        return printed(*readBelt(belt, theTables()), width, theTables());
    };
    CHECK(print("L 322", Width::micrometres(19'050)) == "322L075");      // ISO 5296
    CHECK(print("L 322", Width::micrometres(27'300)) == "322L-27.3mm");  // no code says it
    CHECK(print("L 322", Width::micrometres(19'100)) == "322L-19.10mm"); // 19.1 would be read as 19.05
    CHECK(print("MXL 80.0", Width::micrometres(6'350)) == "80.0MXL025");
    CHECK(print("DL 300", Width::micrometres(19'050)) == "300DL075");
    CHECK(print("XXL B80", Width::micrometres(6'400)) == "B80XXL6.4");
    CHECK(print("T5 500", Width::millimetres(10)) == "10 T5 / 500"); // DIN 7721
    CHECK(print("T2.5 177.5", Width::millimetres(6)) == "6 T2.5 / 177.5");
    CHECK(print("T5-DL 480", Width::millimetres(16)) == "16 T5 / 480 DL");
    CHECK(print("H8M 1200", Width::millimetres(30)) == "1200H8M30");  // ISO 13050
    CHECK(print("S8M 1200", Width::millimetres(25)) == "1200S8M250"); // S: tenths of a millimetre
    CHECK(print("S8M 1200", Width::millimetres(27)) == "1200S8M-27mm");
    CHECK(print("DH8M 960", Width::millimetres(50)) == "960DH8M50");
    CHECK(print("PJ 1194", Ribs{6}) == "6PJ1194"); // ISO 9982
    CHECK(print("m3 63", Width::millimetres(16)) == "3-63-16");
    CHECK(print("T5 500 steel cord", Width::millimetres(10)) == "10 T5 / 500, steel cord");
}

TEST_CASE("A designation names the belt without its width", "[round]") {
    CHECK(designation({"H8M", Teeth{150}, Length::millimetres(1200), ""}) == "H8M 1200");
    CHECK(designation({"L", Teeth{86}, Length::nanometres(819'150'000), ""}) == "L 322");
    CHECK(designation({"L", Teeth{46}, Length::nanometres(438'150'000), ""}) == "L 172");
    CHECK(designation({"MXL", Teeth{100}, Length::nanometres(203'200'000), ""}) == "MXL 80.0");
    CHECK(designation({"PJ", std::nullopt, Length::millimetres(1194), ""}) == "PJ 1194");
    CHECK(designation({"T5", Teeth{100}, Length::millimetres(500), "steel cord"}) == "T5 500 steel cord");
}
