#include "tests/catch.h"
#include "ui/drive/entries.h"

namespace riband::ui {

using belt::drive::Range;

TEST_CASE("A pulley is typed by its teeth or its diameter", "[drive]") {
    for (const char* teeth : {"22", "22 teeth", "22z", "z22", " 22 T "}) {
        INFO(teeth);
        const auto said = readPulley(QString::fromUtf8(teeth), true);
        REQUIRE(said);
        CHECK(said->teeth == Teeth{22});
        CHECK_FALSE(said->diameter);
    }
    const auto diameterOf = [](const char* typed, bool toothed) {
        const auto said = readPulley(QString::fromUtf8(typed), toothed);
        REQUIRE(said);
        CHECK_FALSE(said->teeth);
        return said->diameter.value();
    };
    CHECK(diameterOf("70 mm", true) == Approx(70));
    CHECK(diameterOf("22,5", true) == Approx(22.5)); // no half teeth
    CHECK(diameterOf("d70", true) == Approx(70));
    CHECK(diameterOf("ø 70", true) == Approx(70));
    CHECK(diameterOf("22", false) == Approx(22)); // the belt has no teeth
    CHECK(diameterOf("2 3/4 in", false) == Approx(69.85));
    for (const char* none : {"", "abc", "0", "-22", "0 mm", "22 33", "99999999999999999999"}) {
        INFO(none);
        CHECK_FALSE(readPulley(QString::fromUtf8(none), true));
    }
}

TEST_CASE("What a drive can be set is typed either way, or for each", "[drive]") {
    const auto is = [](const char* typed, double nearer, double farther) {
        INFO(typed);
        const auto range = readRange(QString::fromUtf8(typed));
        REQUIRE(range);
        CHECK(range->nearer == Approx(nearer));
        CHECK(range->farther == Approx(farther));
    };
    is("10", 10, 10);
    is("±10 mm", 10, 10);
    is("+/-2,5", 2.5, 2.5);
    is("-5 +10", 5, 10);
    is("-5/+10", 5, 10);
    is("+10", 0, 10);
    is("-5", 5, 0);
    is("0", 0, 0);
    for (const char* none : {"", "abc", "-", "+", "10 10", "--5"}) {
        INFO(none);
        CHECK_FALSE(readRange(QString::fromUtf8(none)));
    }
}

TEST_CASE("Power and torque are told by their units", "[drive]") {
    CHECK(readDuty("1.5", 1000, 1)->kilowatts == Approx(1.5));
    CHECK(readDuty("1,5 kW", 1000, 1)->kilowatts == Approx(1.5));
    CHECK(readDuty("200 W", 1000, 1)->kilowatts == Approx(0.2));
    // P = 2 pi n M: 10 Nm at 1000 1/min are 1.0472 kW.
    CHECK(readDuty("10 Nm", 1000, 1)->kilowatts == Approx(1.0472).epsilon(1e-4));
    CHECK_FALSE(readDuty("0", 1000, 1));
    CHECK_FALSE(readDuty("strong", 1000, 1));
}

TEST_CASE("A place may be negative, a distance not", "[drive]") {
    CHECK(*readPlace("-12,5") == Approx(-12.5));
    CHECK_FALSE(readPlace(""));
    CHECK_FALSE(readPlace("2e6"));
    CHECK(*readDistance("11.8 in") == Approx(299.72));
    CHECK_FALSE(readDistance("-300"));
    CHECK_FALSE(readDistance("0"));
}

} // namespace riband::ui
