#include "core/store/advices.h"
#include "core/store/statement.h"
#include "core/store/worth_tables.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

namespace {

struct Fixture {
    Connection connection = Connection::inMemory();
    SmallShop shop{connection};
    PieceId wide = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    PieceId narrow = shop.receive(shop.toothed, mm(50), Money::minor(4000));
    OrderId order = Orders{connection}.orderOf(shop.order(shop.toothed, mm(30), 1));

    Advice advice() const {
        AdvisedWay suggested{.cost = 31'500.25,
                             .costMoney = Money::minor(2520),
                             .worthLeft = 8'000,
                             .sleevesOpened = 0,
                             .fromShelf = 1,
                             .pieces = {{narrow, Width::micrometres(7'500)}},
                             .forShelf = {{mm(10), 1}, {mm(20), 2}}};
        AdvisedWay taken = suggested;
        taken.pieces = {{wide, Width::micrometres(67'500)}};
        taken.forShelf.clear();
        taken.cost += 9'000;
        return {.id = AdviceId{0},
                .order = order,
                .belt = shop.toothed,
                .at = shop.now,
                .person = shop.clerk,
                .basis = AdviceBasis::LookAhead,
                .worthVersion = 4,
                .suggested = suggested,
                .taken = taken,
                .shelfDeclined = true,
                .overridden = true,
                .overrideKey = OverrideKey::Other,
                .overrideWords = "wanted for the mill"};
    }

    AdviceId add(const Advice& advice) {
        Transaction transaction{connection};
        const AdviceId id = Advices{connection}.add(advice);
        transaction.commit();
        return id;
    }
};

} // namespace

TEST_CASE("A suggestion and what was done instead come back as they were", "[store][advice]") {
    Fixture fixture;
    const Advice written = fixture.advice();
    const AdviceId id = fixture.add(written);
    const auto read = Advices{fixture.connection}.ofOrder(fixture.order);
    REQUIRE(read.size() == 1);
    CHECK(read[0].id == id);
    CHECK(read[0].belt == written.belt);
    CHECK(read[0].at == written.at);
    CHECK(read[0].person == written.person);
    CHECK(read[0].basis == AdviceBasis::LookAhead);
    CHECK(read[0].worthVersion == 4);
    CHECK(read[0].suggested == written.suggested);
    CHECK(read[0].taken == written.taken);
    CHECK(read[0].shelfDeclined);
    CHECK(read[0].overridden);
    CHECK(read[0].overrideKey == OverrideKey::Other);
    CHECK(read[0].overrideWords == "wanted for the mill");
}

TEST_CASE("Suggestions are found by the time in which they were made", "[store][advice]") {
    Fixture fixture;
    Advice first = fixture.advice(), second = fixture.advice();
    second.at = first.at + std::chrono::hours{1};
    fixture.add(second);
    fixture.add(first);
    const Advices advices{fixture.connection};
    CHECK(advices.between(first.at, second.at).size() == 1);
    const auto both = advices.between(first.at, second.at + std::chrono::milliseconds{1});
    REQUIRE(both.size() == 2);
    CHECK(both[0].at == first.at);
    CHECK(advices.between(second.at + std::chrono::hours{1}, second.at + std::chrono::hours{2}).empty());
}

TEST_CASE("A reason without an override is refused by the store itself", "[store][advice]") {
    Fixture fixture;
    Advice wrong = fixture.advice();
    wrong.overridden = false;
    CHECK_THROWS_AS(fixture.add(wrong), StoreError);
    CHECK(Advices{fixture.connection}.ofOrder(fixture.order).empty());
}

TEST_CASE("A belt has one worth table, and each new one has the next version", "[store][advice]") {
    Fixture fixture;
    WorthTables tables{fixture.connection};
    CHECK_FALSE(tables.of(fixture.shop.toothed));
    StoredWorth table{1, 0, fixture.shop.now, 12, "sleeve 100", "0 0 5"};
    Transaction transaction{fixture.connection};
    CHECK(tables.put(fixture.shop.toothed, table) == 1);
    table.orders = 20;
    table.contents = "0 1 6";
    CHECK(tables.put(fixture.shop.toothed, table) == 2);
    CHECK(tables.put(fixture.shop.ribbed, table) == 1);
    transaction.commit();
    const auto read = tables.of(fixture.shop.toothed);
    REQUIRE(read);
    CHECK(read->version == 2);
    CHECK(read->orders == 20);
    CHECK(read->made == fixture.shop.now);
    CHECK(read->madeFor == "sleeve 100");
    CHECK(read->contents == "0 1 6");
}
