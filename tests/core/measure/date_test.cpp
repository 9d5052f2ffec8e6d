#include "core/measure/date.h"
#include "tests/catch.h"

using namespace riband;
using namespace std::chrono;

TEST_CASE("A day is read as people write it", "[measure]") {
    const Date day = sys_days{2026y / March / 31};
    CHECK(readDate("2026-03-31") == day);
    CHECK(readDate("31.3.2026") == day);
    CHECK(readDate(" 31/03/2026 ") == day);
    CHECK(printDate(day) == "2026-03-31");
}

TEST_CASE("A day that does not exist is refused", "[measure]") {
    for (const char* text : {"2026-02-29", "2026-13-01", "0000-00-00", "1969-12-31", "today", "", "2026-3-1",
                             "31.3.26", "1.2.3.2026", "2026-03-31x"}) {
        INFO(text);
        CHECK_FALSE(readDate(text).has_value());
    }
    CHECK(readDate("2028-02-29").has_value());
}

TEST_CASE("A moment reads back to the millisecond", "[measure]") {
    const Moment moment = sys_days{2026y / November / 25} + 14h + 5min + 9s + 250ms;
    CHECK(printMoment(moment) == "2026-11-25T14:05:09.250Z");
    CHECK(readMoment("2026-11-25T14:05:09.250Z") == moment);
    CHECK(dayOf(moment) == sys_days{2026y / November / 25});
    CHECK_FALSE(readMoment("2026-11-25T24:00:00.000Z").has_value());
    CHECK_FALSE(readMoment("2026-11-25 14:05:09").has_value());
}
