#include "tests/catch.h"
#include "tests/core/belt/belt_words.h"

using namespace riband;
using namespace riband::belt;

namespace {

struct Case {
    const char* text;
    const char* meaning;
};

template <std::size_t N>
void checkAll(const Case (&cases)[N]) {
    for (const Case& one : cases) {
        INFO(one.text);
        CHECK(understood(one.text) == one.meaning);
    }
}

} // namespace

TEST_CASE("The length code of an inch belt is the nearest whole number of teeth", "[reader]") {
    checkAll({
        {"322L075", "L 322 @19.05 CodeRounded"}, // 86 x 9.525 = 819.15, not 32.2 in
        {"124L050", "L 124 @12.7 CodeRounded"},  // 33 teeth
        {"817L100", "L 817 @25.4 CodeRounded"},  // 218 teeth = 2076.45
        {"300L075", "L 300 @19.05"},
        {"172L075", "L 172 @19.05 CodeRounded"},
        {"173L075", "L 172 @19.05 CodeRounded"}, // the same belt, its half rounded the other way
        {"436L075", "L 435 @19.05 CodeRounded"}, // 116 teeth = 43.5 in
        {"640L100", "L 637 @25.4 CodeRounded"},  // one maker's code, a quarter inch off: 170 teeth
        {"534XH200", "XH 534 @50.8 CodeRounded"},
        {"700XXH500", "XXH 700 @127"},
        {"L 819 19", "L 322 @19.05 CodeRounded WidthFromLabel"}, // no code, so millimetres
        {"L 819.15 19.05", "L 322 @19.05"},
        {"37.5 L 3/4", "L 375 @19.05"},
        {"XL 10 in 3/8", "XL 100 @9.525"},
        {"XL 10\" 3/8\"", "XL 100 @9.525"},
        {"XL 254 mm 3/8", "XL 100 @9.525"},
    });
}

TEST_CASE("The width code of an inch belt is hundredths of an inch, cut to two figures", "[reader]") {
    checkAll({
        {"80.0MXL012", "MXL 80.0 @3.175"},
        {"80.0MXL019", "MXL 80.0 @4.763"}, // 3/16 in = 4.7625
        {"60XL031", "XL 60 @7.938"},       // 5/16 in = 7.9375
        {"60XL037", "XL 60 @9.525"},
        {"60XL37", "XL 60 @9.525"},
        {"322 L 1 1/2", "L 322 @38.1 CodeRounded"},
        {"322 L 1-1/2\"", "L 322 @38.1 CodeRounded"},
        {"322 L 1.5 in", "L 322 @38.1 CodeRounded"},
        {"322L 0,75", "L 322 @19.05 CodeRounded"},
        {"322L .75", "L 322 @19.05 CodeRounded"},
        {"XL 60 0.31", "XL 60 @7.938 WidthFromLabel"},
        {"XL 60 5/16", "XL 60 @7.938"},
        {"XXH 700 3", "XXH 700 @76.2"}, // three inches
        {"3/4 L 322", "L 322 @19.05 CodeRounded"},
        {"1\u00bd\" L 322", "L 322 @38.1 CodeRounded"},
    });
}

TEST_CASE("Millimetres said for an inch width mean the listed one that they are rounded from", "[reader]") {
    checkAll({
        {"300L 19", "L 300 @19.05 WidthFromLabel"},
        {"300L 19.1", "L 300 @19.05 WidthFromLabel"},
        {"300L 19.0", "L 300 @19"}, // said to a tenth: 19.0 is not 19.05
        {"300L 13", "L 300 @12.7 WidthFromLabel"},
        {"300L 38", "L 300 @38.1 WidthFromLabel"},
        {"300L 25 mm", "L 300 @25.4 WidthFromLabel"},
        {"300L 25.0 mm", "L 300 @25"},
        {"300L 27.3", "L 300 @27.3"},
        {"300L 27 mm", "L 300 @27"},
        {"70 XL 10", "XL 70 @10"}, // 9.525 is too far from 10
        {"70XL 6.4", "XL 70 @6.35 WidthFromLabel"},
        {"480 H 51", "H 480 @50.8 WidthFromLabel"},
    });
}

TEST_CASE("A fine-pitch code that may be teeth or inches is asked about", "[reader]") {
    checkAll({
        {"80MXL025", "MXL 80.0 @6.35 | MXL 64.0 @6.35 ? WhichMxlCode"},
        {"800MXL025", "MXL 80.0 @6.35 | MXL 800.0 @6.35 LengthNotListed ? WhichMxlCode"},
        {"80.0MXL025", "MXL 80.0 @6.35"},
        {"MXL 100 teeth 1/4", "MXL 80.0 @6.35"},
        {"MXL 100T 025", "MXL 80.0 @6.35"},
        {"MXL 203.2 mm 025", "MXL 80.0 @6.35"},
        {"MXL 8 in 025", "MXL 80.0 @6.35"},
        {"6 M / 182.88", "MXL 72.0 @6"}, // a polyurethane maker's M
        {"B80XXL6.4", "XXL B80 @6.4"},
        {"XXL 80 6.4", "XXL B80 @6.4"},
    });
}

TEST_CASE("A pitch without its tooth is asked about, never taken for H", "[reader]") {
    checkAll({
        {"8m-1200-30", "H8M 1200 @30 | S8M 1200 @30 | R8M 1200 @30 | G8M 1200 @30 ? WhichToothShape"},
        {"three eight-M twelve-hundred by thirty",
         "H8M 1200 @30 x3 | S8M 1200 @30 x3 | R8M 1200 @30 x3 | G8M 1200 @30 x3 ? WhichToothShape"},
        {"30 8M 1200", "H8M 1200 @30 | S8M 1200 @30 | R8M 1200 @30 | G8M 1200 @30 ? WhichToothShape"},
        {"20M 2000 115", "H20M 2000 @115 | R20M 2000 @115 ? WhichToothShape"},
        {"4.5M 238.5 10", "S4.5M 238.5 @10"}, // only S has that pitch
        {"8M 1200 30 H", "H8M 1200 @30"},
        {"HTD 8M 1200 30", "H8M 1200 @30"},
        {"8M HTD 1200 30", "H8M 1200 @30"},
        {"htd8m1200 30", "H8M 1200 @30"},
        {"STD 8M 1200 30", "S8M 1200 @30"},
        {"S 8M 1200 30", "S8M 1200 @30"},
        {"H-8M 960 x 50", "H8M 960 @50"},
    });
}

TEST_CASE("Teeth, or a narrow V-belt of the same name: asked, unless a width or teeth are said", "[reader]") {
    checkAll({
        {"5M 280", "H5M 280 | S5M 280 LengthNotListed | R5M 280 | G5M 280 ? ToothedOrVBelt"},
        {"3M 600", "H3M 600 | S3M 600 | R3M 600 | G3M 600 ? ToothedOrVBelt"},
        {"HTD 5M 280", "H5M 280 ? HowWide"},
        {"8M 1200", "H8M 1200 | S8M 1200 | R8M 1200 | G8M 1200 ? WhichToothShape"},
    });
    CHECK(understand("5M 280 9", theTables()).question == Question::WhichToothShape);
    CHECK(understand("5M 56 teeth", theTables()).question == Question::WhichToothShape);
}

TEST_CASE("S belts say tenths of a millimetre or plain ones; where both may be meant it is asked",
          "[reader]") {
    checkAll({
        {"1200S8M250", "S8M 1200 @25"},
        {"250-S8M-1200", "S8M 1200 @25"},
        {"960-S8M-50", "S8M 960 @50"},
        {"50 S8M 800", "S8M 800 @50 | S8M 800 @5 ? WidthTimesTen"},
        {"400-S14M-1008", "S14M 1008 @40"},
        {"60-S3M-123", "S3M 123 @6"},
        {"S8M 960 27", "S8M 960 @27"},
        {"S8M 1200 350", "S8M 1200 @35 | S8M 1200 @350 ? WidthTimesTen"},
        {"S4.5M-239", "S4.5M 238.5 HalfLost ? HowWide"},
    });
}

TEST_CASE("A letter that stands for teeth or ribs is asked about", "[reader]") {
    checkAll({
        {"390L", "PL 991 CodeRounded | L 390 ? ToothedOrRibbed"},
        {"540 L 12", "PL 1371 @12 CodeRounded | L 540 @12.7 WidthFromLabel ? ToothedOrRibbed"},
        {"300 H 10", "PH 762 @10 | H 300 ? ToothedOrRibbed"},
        {"390L075", "L 390 @19.05"}, // a width code leaves no doubt
        {"poly-V L 540 12", "PL 1371 @12 CodeRounded"},
        {"poly v 540L 12", "PL 1371 @12 CodeRounded"},
        {"toothed 390L", "L 390 ? HowWide"},
        {"322L", "L 322 CodeRounded ? HowWide"},       // no ribbed belt of that length
        {"410L", "PL 1041 CodeRounded ? HowManyRibs"}, // no whole number of teeth
    });
}

TEST_CASE("A ribbed length means the made belt within 6 mm", "[reader]") {
    checkAll({
        {"470J6", "PJ 1194 @6 CodeRounded"}, // 1193.8
        {"6PJ1194", "PJ 1194 @6"},
        {"6PJ1200", "PJ 1200 @6"}, // made as well
        {"PJ 1195 x 6", "PJ 1194 @6 MatchedLength"},
        {"6PJ1040", "PJ 1041 @6 MatchedLength"}, // another number that makers print
        {"472K6", "PK 1200 @6 MatchedLength"},   // 1198.88
        {"Six PJ, forty-seven inch", "PJ 1194 @6 CodeRounded"},
        {"PJ 47 in 6 ribs", "PJ 1194 @6 CodeRounded"},
        {"PJ 1.194 m 6 grooves", "PJ 1194 @6"},
        {"350J6", "PJ 889 @6"},
        {"900M12", "PM 2286 @12"},
        {"PM2286/30", "PM 2286 @30"}, // a sleeve on a shelf
        {"J457 4", "PJ 457 @4 | PJ 1161 @4 CodeRounded LengthNotListed ? MillimetreOrInch"},
        {"J1600 6", "PJ 1600 @6"},
        {"P J 1194 6", "PJ 1194 @6"},
        {"PJ 470 6", "PJ 470 @6 LengthNotListed"},
    });
}

TEST_CASE("How many belts may be said before, behind, with a cross or a word", "[reader]") {
    checkAll({
        {"3 x H8M 1200 30", "H8M 1200 @30 x3"},
        {"3xH8M-1200-30", "H8M 1200 @30 x3"},
        {"3xh8m 1200 30", "H8M 1200 @30 x3"},
        {"3 H8M 1200 30", "H8M 1200 @30 x3"},
        {"H8M 1200 30 3x", "H8M 1200 @30 x3"},
        {"H8M 1200 30 x3", "H8M 1200 @30 x3"},
        {"H8M 1200 30 x 3", "H8M 1200 @30 x3"},
        {"H8M 1200 x 30 x 3", "H8M 1200 @30 x3"},
        {"H8M 1200 30 *3", "H8M 1200 @30 x3"},
        {"H8M 1200 30 3 pcs", "H8M 1200 @30 x3"},
        {"H8M 1200 30 3pcs.", "H8M 1200 @30 x3"},
        {"3 pieces H8M 1200 30", "H8M 1200 @30 x3"},
        {"2 off T10 1250 27", "T10 1250 @27 x2"},
        {"qty 3 T5 500 10", "T5 500 @10 x3"},
        {"T5 500 10 qty: 3", "T5 500 @10 x3"},
        {"T5 500 10, quantity 3", "T5 500 @10 x3"},
        {"3 belts H8M 1200 30", "H8M 1200 @30 x3"},
        {"3 T5 x 500 x 10", "T5 500 @10 x3"},
        {"2 x 6PJ1194", "PJ 1194 @6 x2"},
        {"2 x B80XXL6.4", "XXL B80 @6.4 x2"},
        {"B80XXL6.4 x 2", "XXL B80 @6.4 x2"},
        {"4 x 470J6", "PJ 1194 @6 x4 CodeRounded"},
        {"10 x 10 T5 / 500", "T5 500 @10 x10"},
        {"10 T5 / 500 x 5", "T5 500 @10 x5"},
        {"2 x 250-S8M-1200", "S8M 1200 @25 x2"},
        {"3 1200H8M30", "H8M 1200 @30 x3"},
        {"6PJ1194 x 2", "PJ 1194 @6 x2"},
        {"PJ 1194 6 ribs 2 off", "PJ 1194 @6 x2"},
        {"two PJ 1194 six ribs", "PJ 1194 @6 x2"},
        {"4 x 322L075", "L 322 @19.05 x4 CodeRounded"},
        {"16 x T5 x 480", "T5 480 @16"}, // DIN 7721 writes the width so
        {"20 x H8M 1200 30", "H8M 1200 @30 x20"},
        {"20 H8M 1200 30", "H8M 1200 @30 x20 | H8M 1200 @20 x30 ? HowWide"},
        {"10 T5 500 16", "T5 500 @16 x10 | T5 500 @10 x16 ? HowWide"},
        {"3 H8M 1200", "H8M 1200 x3 ? HowWide"},                  // no belt of 8 mm pitch is 3 mm wide
        {"15 H8M 1200", "H8M 1200 @15 | H8M 1200 x15 ? HowWide"}, // 15 is no width of H8M, but could be

        {"T10 500 5", "T10 500 x5 | T10 500 @5 ? HowWide"},
        {"3 PJ 1194 6", "PJ 1194 @6 x3 | PJ 1194 @3 x6 ? HowManyRibs"},
        {"five hundred T5 ten", "T5 500 @10"},
        {"T5 five-hundred by sixteen, three pieces", "T5 500 @16 x3"},
        {"one thousand two hundred H8M thirty", "H8M 1200 @30"},
    });
}

TEST_CASE("Teeth, widths and lengths may be named", "[reader]") {
    checkAll({
        {"35 teeth XL 3/8", "XL 70 @9.525"},
        {"35T XL 3/8", "XL 70 @9.525"},
        {"Z35 XL 025", "XL 70 @6.35"},
        {"z=35 XL 025", "XL 70 @6.35"},
        {"XL 35Z 025", "XL 70 @6.35"},
        {"XL35T10", "XL 70 @10"},
        {"T5 100 teeth 10 wide", "T5 500 @10"},
        {"H8M 150 teeth 30", "H8M 1200 @30"},
        {"H8M 1200 long 30 wide", "H8M 1200 @30"},
        {"H8M width 30 length 1200", "H8M 1200 @30"},
        {"H8M w30 1200", "H8M 1200 @30"},
        {"H8M 1.2 m 30 mm", "H8M 1200 @30"},
        {"H8M 1.2m x 30", "H8M 1200 @30"},
        {"H8M 1,200 30", "H8M 1200 @30"}, // a thousands comma or metres: the same
        {"H8M 120 cm 3 cm", "H8M 1200 @30"},
        {"10 T 10 500", "T10 500 @10"}, // the ten beside T is the profile
        {"T2.5-177", "T2.5 177.5 HalfLost ? HowWide"},
        {"a T5 500 10 please", "T5 500 @10"},
    });
}

TEST_CASE("Two numbers that may each be the length are asked about", "[reader]") {
    checkAll({
        {"50 T5 150", "T5 150 @50 | T5 50 @150 ShortForBelt LengthNotListed ? WhichIsLength"},
        {"100 T10 100", "T10 100 @100 ShortForBelt LengthNotListed ? WhichIsLength"},
        {"50 T5 / 150", "T5 150 @50"}, // the slash stands before the length
        {"150/T5/50", "T5 150 @50 | T5 50 @150 ShortForBelt LengthNotListed ? WhichIsLength"},
        {"25 T10 1500", "T10 1500 @25"},
        {"H 300 100", "H 300 @25.4"},
        {"H 200 300", "H 300 @50.8 | H 200 @76.2 LengthNotListed ? WhichIsLength"},
        {"XL 200 25", "XL 200 @6.35 | XL 200 @25.4 WidthFromLabel ? MillimetreOrInch"},
    });
}

TEST_CASE("Teeth on both sides", "[reader]") {
    checkAll({
        {"300DL075", "DL 300 @19.05"},
        {"510DH100", "DH 510 @25.4"},
        {"960DH8M50", "DH8M 960 @50"},
        {"DS8M 1200 30", "DS8M 1200 @30"},
        {"16 T5 / 480 DL", "T5-DL 480 @16"},
        {"16 T5 480 D", "T5-DL 480 @16"},
        {"T5-DL 480 16", "T5-DL 480 @16"},
        {"double-sided H8M 960 50", "DH8M 960 @50"},
        {"double sided L 300 075", "DL 300 @19.05"},
        {"T20 2000 50 DL", "! UnknownProfile T20-DL"},
        {"double R8M 1200 30", "! UnknownProfile DR8M"},
        {"6 PJ 1194 double-sided", "! UnknownProfile DPJ"}, // ribs on both sides: no sleeve gives them
    });
    CHECK(understand("960DH8M50", theTables()).readings.front().doubleSided);
}

TEST_CASE("Old national sizes: module, teeth, width", "[reader]") {
    checkAll({
        {"3-63-16", "m3 63 @16"},
        {"1.5-40-10", "m1.5 40 @10"},
        {"m3-63-16", "m3 63 @16"},
        {"40DP 100T 6", "40DP 100T @6"},
        {"3-63", "! NoProfile"},
        {"2 x 3-63-16", "m3 63 @16 x2"},
        {"3-63-16 x 2", "m3 63 @16 x2"},
    });
}

TEST_CASE("What the belt is made of is part of the belt", "[reader]") {
    checkAll({
        {"T5 500 10 steel cord", "T5 500 steel cord @10"},
        {"steel cord T5 500 10", "T5 500 steel cord @10"},
        {"10 T5 / 500, steel cord", "T5 500 steel cord @10"},
        {"10 T5 / 500, red cover, 2 mm", "T5 500 red cover, 2 mm @10"}, // a word of the shop, behind a comma
        {"T5 500 10 red", "! NotUnderstood red"},
    });
}

TEST_CASE("A length that nobody lists is a possible belt, with its neighbours", "[reader]") {
    // XL 416 is 41.6 in = 208 teeth of 0.2 in.
    const auto xl = understand("XL 416 025", theTables());
    CHECK(inWords(xl) == "XL 416 @6.35 LengthNotListed");
    REQUIRE(xl.readings.front().nearestMade.size() == 2);
    CHECK(designation(xl.readings.front().nearestMade[0]) == "XL 414");
    CHECK(designation(xl.readings.front().nearestMade[1]) == "XL 424");
    CHECK(understood("H8M 1208 30") == "H8M 1208 @30 LengthNotListed");
}

TEST_CASE("A remark says the number that was said", "[reader]") {
    const auto reading = understand("L 322 19", theTables()).readings.front();
    CHECK(reading.said == "322");
    CHECK(reading.saidWidth == "19");
}
