#include "core/shop/place_advice.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using cutting::PieceKind;
using Why = PlaceAdvice::Why;

namespace {

struct Rooms {
    TestShop shop;
    store::StockedBelt h8m = *store::Catalogue{shop.connection}.find(shop.h8m1200);

    store::Place place(const std::string& name, store::PlaceLevel level, bool front = false,
                       std::optional<store::BeltId> fixed = {}) {
        store::Places places{shop.connection};
        places.named(name);
        store::Place made = *places.byName(name);
        made.level = level;
        made.front = front;
        made.fixedFor = fixed;
        places.change(made);
        return made;
    }
    void lay(const belt::Belt& belt, Extent extent, const std::string& at) {
        move(shop.shop, shop.piece(belt, extent), at);
    }
    std::vector<std::string> best(PieceKind kind, Extent extent) {
        std::vector<std::string> names;
        for (const PlaceAdvice& advice : advisePlaces(shop.shop, h8m, kind, extent))
            names.push_back(advice.place);
        return names;
    }
};

} // namespace

TEST_CASE("The same belt goes together, else beside it, else anywhere that is empty", "[places]") {
    Rooms rooms;
    rooms.place("B3", store::PlaceLevel::Bay);
    for (const char* bin : {"B3-1", "B3-2", "B3-3", "C1"})
        rooms.place(bin, store::PlaceLevel::Bin);
    rooms.lay(rooms.shop.h8m1200, mm(400), "B3-2");
    rooms.lay(rooms.shop.t5x500, mm(400), "B3-1");
    CHECK(rooms.best(PieceKind::Sleeve, mm(400)) == std::vector<std::string>{"B3-2", "B3-3", "C1"});
    const auto why = advisePlaces(rooms.shop.shop, rooms.h8m, PieceKind::Sleeve, mm(400));
    CHECK(why[0].why == Why::Same);
    CHECK(why[1].why == Why::Beside);
    CHECK(why[2].why == Why::Empty);
}

TEST_CASE("A place that is kept for a belt is its first choice, and nobody else's", "[places]") {
    Rooms rooms;
    const auto t5 = store::Catalogue{rooms.shop.connection}.find(rooms.shop.t5x500)->id;
    rooms.place("A1", store::PlaceLevel::Bin, false, rooms.h8m.id);
    rooms.place("A2", store::PlaceLevel::Bin, false, t5);
    rooms.lay(rooms.shop.h8m1200, mm(400), "B9");
    CHECK(rooms.best(PieceKind::Sleeve, mm(400)) == std::vector<std::string>{"A1", "B9"});
}

TEST_CASE("Narrow remnants go in front", "[places]") {
    Rooms rooms;
    rooms.place("A1", store::PlaceLevel::Bin);
    rooms.place("F1", store::PlaceLevel::Bin, true);
    const Extent quarter = Extent::of(Unit::Micrometre, rooms.h8m.newSleeve.count() / 4);
    CHECK(rooms.best(PieceKind::Remnant, quarter - um(1)) == std::vector<std::string>{"F1", "A1"});
    CHECK(rooms.best(PieceKind::Remnant, quarter) == std::vector<std::string>{"A1", "F1"});
    CHECK(advisePlaces(rooms.shop.shop, rooms.h8m, PieceKind::Remnant, mm(20)).front().why == Why::Front);
}

TEST_CASE("A bay with bins in it is no place for a piece, and a shop without places has no advice",
          "[places]") {
    Rooms rooms;
    CHECK(rooms.best(PieceKind::Sleeve, mm(400)).empty());
    rooms.place("B3", store::PlaceLevel::Bay);
    rooms.place("B3-1", store::PlaceLevel::Bin);
    CHECK(rooms.best(PieceKind::Sleeve, mm(400)) == std::vector<std::string>{"B3-1"});
}

TEST_CASE("Goods go to a place of their own where only empty ones are left", "[places]") {
    Rooms rooms;
    rooms.place("A1", store::PlaceLevel::Bin);
    rooms.place("A2", store::PlaceLevel::Bin);
    const auto placed = [&](const belt::Belt& belt, const std::vector<Delivery>& beside) {
        return placeFor(rooms.shop.shop, belt, PieceKind::Sleeve, mm(400), beside);
    };
    const belt::Belt& h8m = rooms.shop.h8m1200;
    const belt::Belt& t5 = rooms.shop.t5x500;
    const Delivery first{.belt = h8m, .extent = mm(400), .place = "A1"};
    const Delivery second{.belt = t5, .extent = mm(400), .place = "A2"};
    CHECK(placed(h8m, {}) == "A1");
    CHECK(placed(t5, {first}) == "A2");
    CHECK(placed(h8m, {first}) == "A1"); // together
    CHECK(placed(rooms.shop.pj1194, {first, second}).empty());
    rooms.lay(h8m, mm(400), "A2");
    CHECK(placed(h8m, {first}) == "A2"); // where it lies already goes first
}

TEST_CASE("A belt that is new to the shop gets an empty place, too", "[places]") {
    TestShop shop;
    store::Transaction transaction{shop.connection};
    store::Places{shop.connection}.named("A1");
    transaction.commit();
    belt::Belt fresh = shop.t5x500;
    fresh.length = Length::nanometres(fresh.length.inNanometres() * 2);
    REQUIRE_FALSE(store::Catalogue{shop.connection}.find(fresh));
    CHECK(placeFor(shop.shop, fresh, PieceKind::Sleeve, mm(400)) == "A1");
    CHECK_FALSE(store::Catalogue{shop.connection}.find(fresh)); // asking keeps nothing
}

} // namespace riband::shop
