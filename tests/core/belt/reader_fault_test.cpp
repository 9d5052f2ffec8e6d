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

TEST_CASE("A length that is no whole number of teeth names the made lengths around it", "[reader]") {
    checkAll({
        {"501 5M 15", "! LengthNotMultiple 501 ~H5M 500 ~H5M 510"},
        {"H8M 1204 30", "! LengthNotMultiple 1204 ~H8M 1200 ~H8M 1216"},
        {"500L075", "! LengthNotMultiple 500 ~L 480 ~L 510"}, // 133.33 teeth
        {"T10 1255 25", "! LengthNotMultiple 1255 ~T10 1250 ~T10 1300"},
        {"XH 200 2", "! LengthNotMultiple 200 ~XH 507"},
        {"H8M 1", "! LengthNotMultiple 1 ~H8M 264"},
    });
}

TEST_CASE("A width is more than nothing and no wider than any sleeve", "[reader]") {
    checkAll({
        {"70XL0", "! WidthNotPositive 0"},
        {"T5 500 0", "! WidthNotPositive 0"},
        {"H8M 1200 -30", "! WidthNotPositive -30"},
        {"H8M-1200--30", "! WidthNotPositive -30"},
        {"H8M 1200 900", "! WidthOverSleeve 900 <=500"},
        {"H8M 1200 501", "! WidthOverSleeve 501 <=500"},
        {"H8M 1200 500", "H8M 1200 @500"},
        {"T5 1000 400 mm wide", "! WidthOverSleeve 400 <=380"},
        {"PJ 1194 246", "! WidthOverSleeve 246 <=245"},
        {"300 PJ 1194", "! WidthOverSleeve 300 <=245"},
    });
}

TEST_CASE("Ribs are whole and at least one", "[reader]") {
    checkAll({
        {"0 PJ 1000", "! NoRibs 0"},
        {"PJ 1194 0 ribs", "! NoRibs 0"},
        {"6.5 PJ 1194", "! HalfARib 6.5"},
        {"PJ 1194 6.5 ribs", "! HalfARib 6.5"},
        {"PJ 1194 5 1/2 ribs", "! HalfARib 5 1/2"},
        {"PJ 1194 14 mm", "! HalfARib 14"}, // ribs are counted, not measured
    });
}

TEST_CASE("Belts that are not cut from a sleeve are named", "[reader]") {
    checkAll({
        {"SPZ 1000", "! VBelt SPZ"},
        {"spa1250", "! VBelt SPA"},
        {"4L1000", "! VBelt 4L"},
        {"13x1000", "! VBelt 13x1000"},
        {"13 x 1000", "! VBelt 13x1000"},
        {"A 50", "! VBelt A"},
        {"B60", "! VBelt B"},
        {"BX 60", "! VBelt BX"},
        {"5V1000", "! VBelt 5V"},
        {"7M 1200", "! VBelt 7M"},
        {"11M 1200", "! VBelt 11M"},
        {"T10 open 25", "! OpenEnded open"},
        {"T10 25 open-ended", "! OpenEnded open-ended"},
        {"roll T10 25", "! OpenEnded roll"},
        {"T10 25 by the metre", "! OpenEnded by the metre"},
    });
}

TEST_CASE("A profile that does not exist is named", "[reader]") {
    checkAll({
        {"T7 500 10", "! UnknownProfile T7"},
        {"H9M 1200 30", "! UnknownProfile H9M"},
        {"AT15 500 10", "! UnknownProfile AT15"},
        {"9M 1200 30", "! UnknownProfile 9M"},
        {"R4M 1200 30", "! UnknownProfile R4M"},
    });
}

TEST_CASE("What is missing or means nothing is said", "[reader]") {
    checkAll({
        {"", "! Empty"},
        {" \t ", "! Empty"},
        {"--", "! Empty"},
        {"foo", "! NotUnderstood foo"},
        {"T5 500 foo 10", "! NotUnderstood foo"},
        {"\u03a98M 1200", "! NotUnderstood \u03a9"},
        {"T5 500 10 \u20ac", "! NotUnderstood \u20ac"},
        {"T5 500 10 16 20 25", "! NotUnderstood 25"},
        {"T5 99999999 10", "! NotUnderstood 99999999"},
        {"1200 30", "! NoProfile"},
        {"500", "! NoProfile"},
        {"H8M", "! NoLength ? HowLong"},
        {"T5 10", "! NoLength 10 ? HowLong"}, // 10 is a width of T5
        {"XL 25", "! NoLength 25 ? HowLong"},
        {"PJ", "! NoLength ? HowLong"},
        {"6PJ", "! NoLength 6 ? HowLong"},
        {"T5 7 teeth", "! LengthImpossible 7"},
        {"T5 0 10", "! LengthImpossible 0"},
        {"T5 30005 10", "! LengthImpossible 30005"}, // over 30 m
        {"PJ 20000 6", "! LengthImpossible 20000"},
        {"0 x H8M 1200 30", "! QuantityImpossible 0"},
        {"H8M 1200 30 0 pcs", "! QuantityImpossible 0"},
        {"2.5 pcs H8M 1200 30", "! QuantityImpossible 2.5"},
        {"H8M 1200 30 50000 pcs", "! QuantityImpossible 50000"},
    });
    CHECK(understand(std::string(201, '1'), theTables()).fault->kind == ReadFault::Kind::TooLong);
    CHECK(understand(std::string_view{"T5\0 500", 7}, theTables()).fault->kind ==
          ReadFault::Kind::NotUnderstood);
}

TEST_CASE("A width that is not said is asked for", "[reader]") {
    checkAll({
        {"H8M 1200", "H8M 1200 ? HowWide"},
        {"L 322", "L 322 CodeRounded ? HowWide"},
        {"PJ 1194", "PJ 1194 ? HowManyRibs"},
        {"2 off T10 1250", "T10 1250 x2 ? HowWide"},
    });
}

TEST_CASE("A belt of a stock list is read without a width", "[reader]") {
    const auto belt = [](std::string_view text) {
        const auto read = readBelt(text, theTables());
        if (read) return designation(*read);
        Understanding fault;
        fault.fault = read.reason();
        return inWords(fault);
    };
    CHECK(belt("H8M 1200") == "H8M 1200");
    CHECK(belt("h8m-1200") == "H8M 1200");
    CHECK(belt("1200H8M") == "H8M 1200");
    CHECK(belt("L 390") == "L 390"); // as the program writes it: no question
    CHECK(belt("390L") == "! SeveralBelts 390L ~PL 991 ~L 390");
    CHECK(belt("322L") == "L 322");
    CHECK(belt("MXL 80.0") == "MXL 80.0");
    CHECK(belt("MXL 80") == "! SeveralBelts MXL 80 ~MXL 80.0 ~MXL 64.0");
    CHECK(belt("PJ 1194") == "PJ 1194");
    CHECK(belt("470J") == "PJ 1194");
    CHECK(belt("T5 500 steel cord") == "T5 500 steel cord");
    CHECK(belt("T5 500 blue, 2 mm cover") == "T5 500 blue, 2 mm cover");
    CHECK(belt("8M 1200") == "! SeveralBelts 8M 1200 ~H8M 1200 ~S8M 1200 ~R8M 1200 ~G8M 1200");
    CHECK(belt("H8M 1200 x 30") == "! NotUnderstood H8M 1200 x 30");
    CHECK(belt("H8M 1204") == "! LengthNotMultiple 1204 ~H8M 1200 ~H8M 1216");
    CHECK(belt("nonsense") == "! NotUnderstood nonsense");
}

TEST_CASE("A belt of so many teeth", "[reader]") {
    CHECK(beltOfTeeth("L", Teeth{86}, theTables())->length == Length::nanometres(819'150'000));
    CHECK_FALSE(beltOfTeeth("PJ", Teeth{86}, theTables()));
    CHECK_FALSE(beltOfTeeth("Q", Teeth{86}, theTables()));
}
