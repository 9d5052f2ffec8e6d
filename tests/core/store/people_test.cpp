#include "core/store/people.h"
#include "core/store/statement.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

TEST_CASE("A person is known by initials that nobody else has", "[store][people]") {
    auto connection = Connection::inMemory();
    People people{connection};
    const PersonId owner = people.add("CD", "C. Driver", Role::Owner);
    people.add("AB", "A. Binder", Role::Clerk);
    CHECK_THROWS_AS(people.add("CD", "Another", Role::Clerk), StoreError);
    CHECK(people.all().front().initials == "AB");
    CHECK(people.at(owner).role == Role::Owner);
    CHECK_THROWS_AS(people.at(PersonId{99}), StoreError);
}

TEST_CASE("Who leaves acts no more and keeps the name", "[store][people]") {
    auto connection = Connection::inMemory();
    People people{connection};
    Person leaving = people.at(people.add("AB", "A. Binder", Role::Clerk));
    leaving.gone = true;
    people.change(leaving);
    CHECK(people.present().empty());
    REQUIRE(people.all().size() == 1);
    CHECK(people.at(leaving.id).name == "A. Binder");
    CHECK(people.at(leaving.id).gone);
}

TEST_CASE("A number locks, is not kept, and nothing else unlocks", "[store][people]") {
    auto connection = Connection::inMemory();
    People people{connection};
    const PersonId owner = people.add("CD", "C. Driver", Role::Owner);
    const PersonId other = people.add("EF", "E. Fell", Role::Owner);
    CHECK(people.unlocks(owner, ""));
    people.lock(owner, "4711");
    people.lock(other, "4711");
    CHECK(people.at(owner).locked);
    CHECK(people.unlocks(owner, "4711"));
    CHECK_FALSE(people.unlocks(owner, "4712"));
    CHECK_FALSE(people.unlocks(owner, ""));
    const auto secretOf = [&](PersonId person) {
        return *only<std::string>(connection, "SELECT secret FROM person WHERE id = ?", person);
    };
    CHECK(secretOf(owner).find("4711") == std::string::npos);
    CHECK(secretOf(owner) != secretOf(other)); // the salt
    people.lock(owner, "");
    CHECK_FALSE(people.at(owner).locked);
    CHECK(people.unlocks(owner, "anything"));
}
