#include "core/shop/places.h"

#include "core/shop/place_advice.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

namespace {

using store::Place;
using store::PlaceLevel;

struct Shelves {
    TestShop shop;
    store::Places places{shop.connection};

    Shelves() { become(store::Role::StockManager); }
    void become(store::Role role) {
        store::People people{shop.connection};
        store::Person person = people.at(shop.shop.person);
        person.role = role;
        people.change(person);
    }
    std::optional<PlaceFault> add(const std::string& name, PlaceLevel level) {
        return addPlace(shop.shop, {store::PlaceId{0}, name, {}, level, {}, false, 0});
    }
    Place named(const std::string& name) { return places.byName(name).value(); }
};

} // namespace

TEST_CASE("A larger place that is added takes in the smaller ones named like it", "[shop][places]") {
    Shelves shelves;
    CHECK_FALSE(shelves.add("B3-2", PlaceLevel::Bin));
    CHECK_FALSE(shelves.add("B33-1", PlaceLevel::Bin));
    CHECK_FALSE(shelves.add("B3", PlaceLevel::Bay));
    CHECK(shelves.named("B3-2").parent == shelves.named("B3").id);
    CHECK_FALSE(shelves.named("B33-1").parent);
}

TEST_CASE("What a place is kept for and whether it is in front decides where a piece goes",
          "[shop][places]") {
    Shelves shelves;
    shelves.add("A1-1", PlaceLevel::Bin);
    shelves.add("F1-1", PlaceLevel::Bin);
    const auto piece = shelves.shop.remnant(shelves.shop.h8m1200, mm(40));
    const store::StockPiece lies = shelves.shop.at(piece);
    const auto belt = store::Catalogue{shelves.shop.connection}.at(lies.belt);
    const auto best = [&] { return advisePlaces(shelves.shop.shop, belt, lies.kind, lies.extent).front(); };
    Place front = shelves.named("F1-1");
    front.front = true;
    CHECK_FALSE(changePlace(shelves.shop.shop, front));
    CHECK(best().place == "F1-1");
    CHECK(best().why == PlaceAdvice::Why::Front);
    Place kept = shelves.named("A1-1");
    kept.fixedFor = belt.id;
    CHECK_FALSE(changePlace(shelves.shop.shop, kept));
    CHECK(best().place == "A1-1");
    CHECK(best().why == PlaceAdvice::Why::Fixed);
}

TEST_CASE("A place that can't be is refused with its reason, and nothing changes", "[shop][places]") {
    Shelves shelves;
    shelves.add("B3", PlaceLevel::Bay);
    shelves.add("B3-2", PlaceLevel::Bin);
    CHECK(shelves.add("", PlaceLevel::Bin) == PlaceFault::NoName);
    CHECK(shelves.add("B3", PlaceLevel::Bin) == PlaceFault::NameTaken);
    CHECK(shelves.add("two\nlines", PlaceLevel::Bin) == PlaceFault::BadName);
    const std::string before = shelves.shop.everything();
    Place bay = shelves.named("B3"), bin = shelves.named("B3-2");
    bay.level = PlaceLevel::Bin;
    CHECK(changePlace(shelves.shop.shop, bay) == PlaceFault::HoldsLarger);
    bay.level = PlaceLevel::Bay;
    bay.parent = bin.id;
    CHECK(changePlace(shelves.shop.shop, bay) == PlaceFault::StandsInSmaller);
    CHECK(shelves.shop.everything() == before);
}

TEST_CASE("Only a place that was never used is taken out", "[shop][places]") {
    Shelves shelves;
    shelves.add("B3", PlaceLevel::Bay);
    shelves.add("B3-2", PlaceLevel::Bin);
    shelves.add("C1", PlaceLevel::Bin);
    const auto piece = shelves.shop.remnant(shelves.shop.h8m1200, mm(40));
    move(shelves.shop.shop, piece, "B3-2");
    const auto out = [&](const char* name) { return removePlace(shelves.shop.shop, shelves.named(name).id); };
    CHECK(out("B3") == PlaceFault::HoldsPlaces);
    CHECK(out("B3-2") == PlaceFault::LiesThere);
    move(shelves.shop.shop, piece, "");
    CHECK(out("B3-2") == PlaceFault::HasLain);
    CHECK(shelves.places.byName("B3-2"));
    CHECK_FALSE(out("C1"));
    CHECK_FALSE(shelves.places.byName("C1"));
}

TEST_CASE("The places are the stock manager's and the owner's", "[shop][places]") {
    Shelves shelves;
    shelves.add("B3", PlaceLevel::Bay);
    const Place bay = shelves.named("B3");
    shelves.become(store::Role::Clerk);
    checkRefused(shelves.shop, Refusal::Why::NotTheirs, [&] { shelves.add("B4", PlaceLevel::Bay); });
    checkRefused(shelves.shop, Refusal::Why::NotTheirs, [&] { changePlace(shelves.shop.shop, bay); });
    checkRefused(shelves.shop, Refusal::Why::NotTheirs, [&] { removePlace(shelves.shop.shop, bay.id); });
}

} // namespace riband::shop
