// Whether the suggestion pays, on histories where the answer is known because the test made it.
#include "core/shop/reports/overrides.h"
#include "tests/catch.h"

#include <random>

namespace riband::shop {

namespace {

store::Advice advice(std::int64_t person, std::optional<std::int64_t> extra,
                     std::optional<store::OverrideKey> key = std::nullopt) {
    store::Advice made{.id = store::AdviceId{0},
                       .order = store::OrderId{1},
                       .belt = store::BeltId{1},
                       .at = Moment{},
                       .person = store::PersonId{person},
                       .suggested = {},
                       .taken = {}};
    made.suggested.cost = made.taken.cost = 1; // there was an expectation
    made.suggested.costMoney = Money::minor(500);
    made.taken.costMoney = Money::minor(500 + extra.value_or(0));
    made.overridden = extra.has_value();
    made.overrideKey = key;
    return made;
}

std::string initials(store::PersonId person) { return person.value() == 1 ? "AB" : "CD"; }

} // namespace

TEST_CASE("Followed and overridden suggestions are counted by person and by reason", "[reports]") {
    using store::OverrideKey;
    const OverrideReport report =
        overridesOf({advice(1, {}), advice(1, {}), advice(1, 120, OverrideKey::OlderFirst),
                     advice(2, 80, OverrideKey::OlderFirst), advice(2, -30), advice(2, {})},
                    initials);
    CHECK(report.all.suggested == 6);
    CHECK(report.all.overridden == 3);
    CHECK(report.all.departures == 3);
    CHECK(report.all.extra == Money::minor(170));
    REQUIRE(report.people.size() == 2);
    CHECK(report.people[0].name == "AB");
    CHECK(report.people[0].extra == Money::minor(120));
    CHECK(report.people[1].overridden == 2);
    REQUIRE(report.reasons.size() == 2);
    CHECK(report.reasons[0].name == "older first");
    CHECK(report.reasons[0].extra == Money::minor(200));
    CHECK(report.reasons[1].name.empty());
    CHECK(report.reasons[1].extra == Money::minor(-30)); // saved: said as it is
}

TEST_CASE(
    "Who refuses belts for the shelf did not follow: counted by person, with what it is expected to cost",
    "[reports]") {
    using store::OverrideKey;
    const auto offered = [](store::Advice made, bool refused) {
        made.suggested.forShelf = {{Width::millimetres(20), 2}};
        made.shelfDeclined = refused;
        return made;
    };
    store::Advice dear = offered(advice(1, {}), true);
    dear.taken.costMoney = Money::minor(540); // the rest is worth less than the belts
    const OverrideReport report =
        overridesOf({dear, offered(advice(1, {}), false), advice(1, {}), offered(advice(2, {}), true),
                     offered(advice(2, 60, OverrideKey::OlderFirst), true)},
                    initials);
    CHECK(report.all.departures == 3);
    CHECK(report.all.overridden == 1);
    CHECK(report.all.shelfOffered == 4);
    CHECK(report.all.shelfRefused == 3);
    CHECK(report.all.extra == Money::minor(100));
    REQUIRE(report.people.size() == 2);
    CHECK(report.people[0].name == "CD");
    CHECK(report.people[0].shelfRefused == 2);
    CHECK(report.people[1].departures == 1);
    CHECK(report.people[1].shelfOffered == 2);
    REQUIRE(report.reasons.size() == 2); // other pieces have their own reason
    CHECK(report.reasons[0].name == "older first");
    CHECK(report.reasons[1].name == "shelf not wanted");
    CHECK(report.reasons[1].extra == Money::minor(40));
}

TEST_CASE("The interval is 1.96 standard deviations of the sum, and one decision proves nothing",
          "[reports]") {
    // 100 and 300: standard deviation 141.42, of the sum of two 200; times 1.96.
    const OverrideRow two = overridesOf({advice(1, 100), advice(1, 300)}, initials).all;
    CHECK(two.extra == Money::minor(400));
    CHECK(two.uncertain == Money::minor(392));
    CHECK(two.told());
    CHECK_FALSE(overridesOf({advice(1, 100)}, initials).all.told());
    CHECK(overridesOf({}, initials).all.suggested == 0);
    store::Advice unknown = advice(1, 0);
    unknown.suggested.cost = unknown.taken.cost = 0;
    const OverrideRow row = overridesOf({unknown, advice(1, 100), advice(1, 300)}, initials).all;
    CHECK(row.departures == 3);
    CHECK(row.expected == 2);
    CHECK(row.uncertain == Money::minor(392)); // what nobody could tell that day says nothing of the scatter
}

TEST_CASE("Overrides that cost nothing on average are told as chance 19 times in 20, costly ones as costly",
          "[reports]") {
    std::mt19937 random{11};
    std::normal_distribution<double> chance{0, 90};
    const auto told = [&](double harm) {
        int count = 0;
        for (int shop = 0; shop < 400; ++shop) {
            std::vector<store::Advice> advices;
            for (int i = 0; i < 60; ++i)
                advices.push_back(advice(1, static_cast<std::int64_t>(harm + chance(random))));
            count += overridesOf(advices, initials).all.told() ? 1 : 0;
        }
        return count;
    };
    CHECK(told(0) < 40); // 20 expected, standard deviation 4.4
    CHECK(told(60) > 380);
    CHECK(told(-60) > 380);
}

} // namespace riband::shop
