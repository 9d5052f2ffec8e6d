#include "core/store/places.h"
#include "core/store/upkeep.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

namespace {

struct Rooms {
    Connection connection = Connection::inMemory();
    SmallShop shop{connection};
    Places places{connection};

    Place make(const std::string& name, PlaceLevel level, std::optional<PlaceId> parent = {}) {
        Transaction transaction{connection};
        places.named(name);
        Place place = *places.byName(name);
        place.level = level;
        if (parent) place.parent = parent;
        places.change(place);
        transaction.commit();
        return *places.byName(name);
    }
};

} // namespace

TEST_CASE("A place that is named first while moving stands where its name says", "[store][places]") {
    Rooms rooms;
    const Place room = rooms.make("Back", PlaceLevel::Room);
    const Place bay = rooms.make("B3", PlaceLevel::Bay, room.id);
    const Place bin = rooms.make("B3-2", PlaceLevel::Bin);
    CHECK(bin.parent == bay.id);
    CHECK_FALSE(bin.fixedFor);
    CHECK_FALSE(rooms.make("B33-1", PlaceLevel::Bin).parent); // B3 is no beginning of it
    CHECK(rooms.places.all().size() == 4);
    CHECK_FALSE(rooms.places.named(""));
}

TEST_CASE("No place stands in itself or in a smaller one", "[store][places]") {
    Rooms rooms;
    const Place bay = rooms.make("B3", PlaceLevel::Bay);
    Place shelf = rooms.make("B3-S", PlaceLevel::Shelf, bay.id);
    const auto refused = [&](Place wrong) {
        Transaction transaction{rooms.connection};
        CHECK_THROWS_AS(rooms.places.change(wrong), StoreError);
    };
    Place wrong = bay;
    wrong.parent = bay.id;
    refused(wrong);
    wrong.parent = shelf.id;
    refused(wrong);
    wrong = bay;
    wrong.level = PlaceLevel::Bin; // holds a shelf
    refused(wrong);
    wrong = shelf;
    wrong.name = "B3"; // taken
    refused(wrong);
    CHECK(rooms.places.byName("B3-S")->parent == bay.id);
}

TEST_CASE("A place may be kept for one belt, and tells how many pieces lie there", "[store][places]") {
    Rooms rooms;
    rooms.shop.receive(rooms.shop.toothed, mm(100), Money::minor(1), cutting::PieceKind::Sleeve, "B3-2");
    Place place = *rooms.places.byName("B3-2");
    CHECK(place.pieces == 1);
    place.fixedFor = rooms.shop.toothed;
    place.front = true;
    rooms.places.change(place);
    CHECK(rooms.places.byName("B3-2")->fixedFor == rooms.shop.toothed);
    CHECK(rooms.places.byName("B3-2")->front);
    CHECK_THROWS_AS(rooms.places.remove(place.id), StoreError); // something lies there
}

TEST_CASE("Where a piece has been is kept, and what was seen of it", "[store][places]") {
    Rooms rooms;
    const PieceId piece = rooms.shop.receive(rooms.shop.toothed, mm(100), Money::minor(1));
    Upkeep upkeep{rooms.connection};
    upkeep.relocate(piece, "C1-1", rooms.shop.clerk, rooms.shop.now);
    upkeep.relocate(piece, "", rooms.shop.clerk, rooms.shop.now);
    CHECK(Pieces{rooms.connection}.at(piece).place.empty());
    const auto moves = upkeep.relocationsOf(piece);
    REQUIRE(moves.size() == 2);
    CHECK(moves[0].from == "A1-1");
    CHECK(moves[0].to == "C1-1");
    CHECK(moves[1].from == "C1-1");
    CHECK(moves[1].to.empty());

    upkeep.record({piece, rooms.shop.now, rooms.shop.clerk, day(2028, 3, 2), "supple"});
    upkeep.record({piece, rooms.shop.now, rooms.shop.clerk, std::nullopt, "cracks"});
    CHECK(upkeep.inspectionsOf(piece).size() == 2);
    CHECK_FALSE(upkeep.lastInspections().at(piece).until);
}
