#include "core/foresight/best_fit.h"
#include "core/foresight/referee.h"
#include "tests/catch.h"
#include "tests/core/foresight/shops.h"

using namespace riband::foresight;

namespace {

const Order thirty{1, {{30000, 1}}};

/// A new sleeve P1 gives one 30: 400 - 2.5 - 30 = 367.5 are left.
Mounting firstCut() { return {1, true, {{30000, 1, For::Order}}, 367500, 2}; }

Answer answer(Mounting mounting) { return {{}, {std::move(mounting)}, {}, {}}; }

void refused(const Setting& setting, const Order& order, const Answer& given) {
    Referee referee{setting};
    CHECK_THROWS_AS(referee.book(order, given), Breach);
}

} // namespace

TEST_CASE("A plain cut is booked: the sleeve is opened and its rest lies on the rack", "[foresight]") {
    Referee referee{eightMillimetre()};
    referee.book(thirty, answer(firstCut()));
    CHECK(referee.tally().sleeves == 1);
    CHECK(referee.tally().sold == 30000);
    REQUIRE(referee.rack().contains(2));
    CHECK(referee.rack().at(2).size == 367500);
}

TEST_CASE("Every breach of the protocol is refused", "[foresight]") {
    const auto setting = eightMillimetre();
    auto mounting = firstCut();
    SECTION("nothing done") { refused(setting, thirty, {}); }
    SECTION("what is left is out by a micrometre") {
        mounting.left += 1;
        refused(setting, thirty, answer(mounting));
    }
    SECTION("a belt too few") { refused(setting, {1, {{30000, 2}}}, answer(mounting)); }
    SECTION("a belt too many") {
        mounting.cuts[0].count = 2;
        mounting.left -= 30000;
        refused(setting, thirty, answer(mounting));
    }
    SECTION("no such piece") {
        mounting.opensSleeve = false;
        refused(setting, thirty, answer(mounting));
    }
    SECTION("a rest under the sleeve's own name") {
        mounting.keepAs = 1;
        refused(setting, thirty, answer(mounting));
    }
    SECTION("scrapping what was never there") {
        auto given = answer(mounting);
        given.scrap = {9};
        refused(setting, thirty, given);
    }
    SECTION("cutting for a shelf that isn't there") {
        mounting.cuts.push_back({20000, 1, For::Shelf});
        mounting.left -= 20000;
        refused(setting, thirty, answer(mounting));
    }
    SECTION("more remnants than the rack holds") {
        auto small = setting;
        small.rackLimit = 0;
        refused(small, thirty, answer(mounting));
    }
    SECTION("taking from an empty shelf") { refused(setting, thirty, {{{30000, 1}}, {}, {}, {}}); }
}

TEST_CASE("The end must stay, and exactly the end is allowed", "[foresight]") {
    // 400 - 2.5 - 392.5 = 5.0 is the end; a micrometre more can't be cut.
    const auto cut = [](Size width) {
        Referee referee{eightMillimetre()};
        referee.book({1, {{width, 1}}}, answer({1, true, {{width, 1, For::Order}}, 397500 - width, {}}));
    };
    CHECK_NOTHROW(cut(392500));
    CHECK_THROWS_AS(cut(392501), Breach);
}

TEST_CASE("A narrow belt needs a stub to hold the piece by", "[foresight]") {
    // The widest belt is 9 wide, the stub 15: 6 must be left, not only the end of 5.
    auto setting = eightMillimetre();
    setting.sleeve = 2500 + 9000 + 6000;
    setting.listed = {9000};
    const auto cut = [&](Size sleeve) {
        setting.sleeve = sleeve;
        Referee referee{setting};
        referee.book({1, {{9000, 1}}}, answer({1, true, {{9000, 1, For::Order}}, sleeve - 11500, {}}));
    };
    CHECK_NOTHROW(cut(17500));
    CHECK_THROWS_AS(cut(17499), Breach);
}

TEST_CASE("The last belt pays its kerf too", "[foresight]") {
    auto setting = eightMillimetre();
    setting.rules.kerf = 500;
    Referee referee{setting};
    CHECK_NOTHROW(referee.book({1, {{30000, 2}}}, answer({1, true, {{30000, 2, For::Order}}, 336500, 2})));
}

TEST_CASE("A rest is as old as its sleeve and is gone the moment it is over the limit", "[foresight]") {
    auto setting = eightMillimetre();
    setting.ageLimitDays = 100;
    const auto secondAt = [&](double day) {
        Referee referee{setting};
        referee.book(thirty, answer(firstCut())); // on day 1
        referee.book({day, {{30000, 1}}}, answer({2, false, {{30000, 1, For::Order}}, 335000, 3}));
    };
    CHECK_NOTHROW(secondAt(101)); // exactly at the limit it is good
    CHECK_THROWS_AS(secondAt(101.01), Breach);
}

TEST_CASE("An end is finished only if its rest is scrapped; with the listed shelf it may stay",
          "[foresight]") {
    auto mounting = firstCut();
    mounting.cuts.push_back({20000, 1, For::Shelf});
    mounting.left -= 20000;
    refused(eightMillimetre(Shelf::Stub), thirty, answer(mounting));
    Referee listed{eightMillimetre(Shelf::Listed)};
    CHECK_NOTHROW(listed.book(thirty, answer(mounting)));
    CHECK(listed.shelf().at(20000) == 1);
    mounting.keepAs.reset();
    Referee stub{eightMillimetre(Shelf::Stub)};
    CHECK_NOTHROW(stub.book(thirty, answer(mounting)));
}

TEST_CASE("Seven ready belts of a width are one too many, and odd widths don't lie on the shelf",
          "[foresight]") {
    auto mounting = firstCut();
    mounting.cuts.push_back({20000, 7, For::Shelf});
    mounting.left -= 140000;
    refused(eightMillimetre(Shelf::Listed), thirty, answer(mounting));
    mounting = firstCut();
    mounting.cuts.push_back({21000, 1, For::Shelf});
    mounting.left -= 21000;
    refused(eightMillimetre(Shelf::Listed), thirty, answer(mounting));
}

TEST_CASE("The smallest piece that fits keeps every rule in forty drawn shops", "[foresight]") {
    for (std::uint64_t number = 0; number < 40; ++number) {
        const auto shop = drawnScenario(number);
        Referee referee{shop.setting};
        BestFit player{shop.setting};
        CAPTURE(shop.name);
        for (const auto& order : ordersOf(shop, Dice::of(number, 1)))
            REQUIRE_NOTHROW(referee.book(order, player.answer(order)));
    }
}

namespace {

std::size_t openedBy(const Answer& answer) {
    return static_cast<std::size_t>(std::count_if(answer.mountings.begin(), answer.mountings.end(),
                                                  [](const Mounting& each) { return each.opensSleeve; }));
}

} // namespace

TEST_CASE("Serving an order opens what the answer to it opens, or is as if it had not come", "[foresight]") {
    std::size_t turnedAway = 0, several = 0;
    for (std::uint64_t number = 0; number < 40; ++number) {
        auto shop = drawnScenario(number);
        BestFit told{shop.setting}, untold{shop.setting};
        CAPTURE(shop.name);
        for (auto order : ordersOf(shop, Dice::of(number, 1))) {
            if (number % 2 == 0) order.lines.front().quantity *= 20; // more than a sleeve gives
            const BestFit before = told;
            const Answer answer = told.answer(order);
            const std::size_t opens = openedBy(answer), most = number % 3;
            several += answer.mountings.size() > 1 ? 1 : 0;
            const auto opened = untold.serve(order.lines, order.day, most);
            REQUIRE(opened == (opens <= most ? std::optional{opens} : std::nullopt));
            if (!opened) {
                told = before;
                ++turnedAway;
            }
            REQUIRE(untold.held() <= told.held()); // aged pieces may be gone already
        }
        const Order last{1e9, {{shop.setting.listed.front(), 1}}}; // whatever is left has aged by then
        CHECK(untold.serve(last.lines, last.day, BestFit::anyNumber) == openedBy(told.answer(last)));
        CHECK(untold.held() == told.held());
    }
    CHECK(turnedAway > 100);
    CHECK(several > 100);
}

TEST_CASE("The same dice draw the same orders", "[foresight]") {
    const auto shop = drawnScenario(3);
    const auto once = ordersOf(shop, Dice{5}), again = ordersOf(shop, Dice{5}),
               other = ordersOf(shop, Dice{6});
    REQUIRE(once.size() == again.size());
    for (std::size_t i = 0; i < once.size(); ++i)
        CHECK(once[i].lines == again[i].lines);
    CHECK_FALSE(
        (once.size() == other.size() && once[0].lines == other[0].lines && once[1].lines == other[1].lines));
}

TEST_CASE("What waits till closing time is one order a day, no belt lost", "[foresight]") {
    const auto days = atClosingTime(
        {{1.2, {{30000, 2}, {50000, 1}}}, {1.9, {{30000, 1}}}, {2.0, {{30000, 1}}}, {5.5, {{20000, 4}}}});
    REQUIRE(days.size() == 3);
    CHECK(days[0].day == 1.9);
    CHECK(days[0].lines == std::vector<Line>{{30000, 3}, {50000, 1}});
    CHECK(days[1].lines == std::vector<Line>{{30000, 1}});
    CHECK(days[2].lines == std::vector<Line>{{20000, 4}});
    CHECK(atClosingTime({}).empty());
}
