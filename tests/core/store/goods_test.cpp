#include "core/store/goods.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

TEST_CASE("A supplier's code means what it was tied to last", "[store][goods]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Goods goods{connection};
    CHECK_FALSE(goods.meaning("4006381333931"));
    goods.learn({"4006381333931", shop.toothed, mm(100)}, shop.clerk, shop.now);
    CHECK(goods.meaning("4006381333931")->belt == shop.toothed);
    CHECK(goods.meaning("4006381333931")->extent == mm(100));
    goods.learn({"4006381333931", shop.ribbed, {}}, shop.clerk, shop.now);
    CHECK(goods.meaning("4006381333931")->belt == shop.ribbed);
    CHECK_FALSE(goods.meaning("4006381333931")->extent);
}

TEST_CASE("An expected delivery closes when all of it has come, and opens again", "[store][goods]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Goods goods{connection};
    const ExpectedDelivery asked{ExpectedId{0},
                                 "Mill Supply",
                                 "P-17",
                                 day(2026, 3, 9),
                                 false,
                                 {{1, shop.toothed, mm(100), 2, Money::minor(8000)},
                                  {2, shop.ribbed, Ribs{60}, 1, Money::minor(4500)}}};
    const ExpectedId id = goods.expect(asked, shop.clerk, shop.now);
    const ExpectedDelivery read = goods.expected(id);
    CHECK(read.due == day(2026, 3, 9));
    REQUIRE(read.lines.size() == 2);
    CHECK(read.lines[1].extent == Extent{Ribs{60}});
    goods.arrive(id, 1, 2);
    CHECK(goods.expected().size() == 1);
    goods.arrive(id, 2, 1);
    CHECK(goods.expected().empty());
    goods.arrive(id, 2, -1);
    CHECK(goods.expected().front().lines[1].arrived == 0);
    goods.close(id, true);
    CHECK(goods.expected().empty());
    CHECK_THROWS_AS(goods.expected(ExpectedId{99}), StoreError);
}

TEST_CASE("A delivery keeps its pieces, their freight, and what the labels claimed", "[store][goods]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Goods goods{connection};
    const PieceId first = shop.receive(shop.toothed, mm(98), Money::minor(8100));
    const PieceId second = shop.receive(shop.ribbed, Ribs{60}, Money::minor(4600));
    const DeliveryId id = goods.add(
        {DeliveryId{0}, "Mill Supply", "DN 7", shop.now, shop.clerk, Money::minor(200), std::nullopt});
    goods.add(id, {first, Money::minor(100), mm(100)});
    goods.add(id, {second, Money::minor(100), std::nullopt});
    CHECK(goods.deliveries(9).front().freight == Money::minor(200));
    const auto pieces = goods.piecesOf(id);
    REQUIRE(pieces.size() == 2);
    CHECK(pieces[0].labelled == mm(100));
    CHECK_FALSE(pieces[1].labelled);
    CHECK(goods.deliveryOf(second) == id);
    CHECK_THROWS_AS(goods.add(id, {first, Money::minor(0), std::nullopt}), StoreError); // came once
}
