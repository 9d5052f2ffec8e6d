#include "core/shop/people.h"

#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

namespace {

using store::Person;
using store::Role;
using Why = Refusal::Why;

/// Who acts becomes an owner.
Shop ownersShop(TestShop& shop) {
    store::People people{shop.connection};
    Person owner = people.at(shop.shop.person);
    owner.role = Role::Owner;
    people.change(owner);
    return shop.shop;
}

Person person(const std::string& initials, Role role = Role::Clerk) {
    return {store::PersonId{0}, initials, "Somebody", role};
}

} // namespace

TEST_CASE("Only an owner changes who acts in the shop", "[shop][people]") {
    TestShop shop;
    checkRefused(shop, Why::NotTheirs, [&] { addPerson(shop.shop, person("CD")); });
    const Shop owners = ownersShop(shop);
    const auto added = addPerson(owners, person("CD", Role::StockManager), "4711");
    CHECK(store::People{shop.connection}.at(added).role == Role::StockManager);
    CHECK(store::People{shop.connection}.unlocks(added, "4711"));
    CHECK_FALSE(store::People{shop.connection}.unlocks(added, "4712"));
    CHECK_NOTHROW(demandRole({shop.connection, owners.tables, added, owners.now}, Role::StockManager));
    checkRefused(shop, Why::NotTheirs, [&] {
        demandRole({shop.connection, owners.tables, added, owners.now}, Role::Owner);
    });
}

TEST_CASE("Initials are written and nobody else's; a wrong number changes nothing", "[shop][people]") {
    TestShop shop;
    const Shop owners = ownersShop(shop);
    for (const char* wrong : {"", "AB", "A B", "A-B", "ABCDEFGHI"}) {
        INFO(wrong);
        checkRefused(shop, Why::InitialsTaken, [&] { addPerson(owners, person(wrong)); });
    }
    for (const char* wrong : {"123", "12a4", "1234567890123"})
        checkRefused(shop, Why::BadNumber, [&] { addPerson(owners, person("CD"), wrong); });
    const auto added = addPerson(owners, person("CD"));
    Person taken = store::People{shop.connection}.at(added);
    taken.initials = "AB";
    checkRefused(shop, Why::InitialsTaken, [&] { changePerson(owners, taken); });
}

TEST_CASE("The last owner stays one", "[shop][people]") {
    TestShop shop;
    const Shop owners = ownersShop(shop);
    Person owner = store::People{shop.connection}.at(owners.person);
    owner.role = Role::Clerk;
    checkRefused(shop, Why::LastOwner, [&] { changePerson(owners, owner); });
    owner.role = Role::Owner;
    owner.gone = true;
    checkRefused(shop, Why::LastOwner, [&] { changePerson(owners, owner); });

    addPerson(owners, person("CD", Role::Owner));
    changePerson(owners, owner);
    CHECK(store::People{shop.connection}.present().size() == 1);
}

} // namespace riband::shop
