#include "ui/words/entry_words.h"

#include "tests/catch.h"

using namespace riband;

TEST_CASE("A wrong figure is answered with what is expected, a right one with nothing", "[words]") {
    const Currency euro{"EUR", 2};
    const Money most = Money::minor(1'000'000);
    CHECK(ui::wrongAmount("38,50", euro, most).isEmpty());
    CHECK(ui::wrongAmount("0", euro, most).isEmpty());
    CHECK(ui::wrongAmount("abc", euro, most) == "Type an amount, for example 38.50.");
    CHECK(ui::wrongAmount("-30", euro, most) ==
          "This must not be negative. Type an amount, for example 38.50.");
    CHECK(ui::wrongAmount("10000.01", euro, most) == "At most 10000.00 can be meant here.");

    CHECK(ui::wrongExtent("30", Unit::Micrometre).isEmpty());
    CHECK(ui::wrongExtent("6 ribs", Unit::Rib).isEmpty());
    CHECK(ui::wrongExtent("", Unit::Rib) == "Type a whole number of ribs, for example 6.");
    CHECK(ui::wrongExtent("0", Unit::Rib).startsWith("This must be more than nothing."));
    CHECK(ui::wrongExtent("-5", Unit::Micrometre).startsWith("This must not be negative."));
    CHECK(ui::wrongExtent("31", Unit::Micrometre, Extent{Width::millimetres(30)}) ==
          "At most 30 mm can be meant here.");

    const Date today = *readDate("2026-03-02");
    CHECK(ui::wrongDay("2.3.2026", today, today).isEmpty());
    CHECK(ui::wrongDay("31.2.2026", today) == "Type a day, for example 2026-03-02.");
    CHECK(ui::wrongDay("2026-03-03", today).isEmpty());
    CHECK(ui::wrongDay("2026-03-03", today, today) == "This day is still to come: today is 2026-03-02.");

    CHECK(ui::wrongWhole("500", 1, 500).isEmpty());
    for (const char* typed : {"0", "501", "2.5", "x", "1000000000000000000000"})
        CHECK(ui::wrongWhole(typed, 1, 500) == "Type a whole number from 1 to 500.");
}
