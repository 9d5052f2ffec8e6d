#include "core/shop/cuttable.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

TEST_CASE("What a shop could give of a profile: the widest belt of one piece, after trim and end",
          "[shop][drive]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    shop.remnant(shop.h8m1200, mm(120));
    const auto stock = cuttable(shop.shop, "H8M");
    REQUIRE(stock.size() == 1);
    CHECK(stock[0].belt == shop.h8m1200);
    CHECK(stock[0].widest == um(392'500)); // 400 - 2.5 trim - 5 end
    // The plan agrees: that belt can be cut, one micrometre more can't.
    CHECK(shop.suggestFor(shop.h8m1200, um(392'500), 1).best.plan.unserved.empty());
    CHECK_FALSE(shop.suggestFor(shop.h8m1200, um(392'501), 1).best.plan.unserved.empty());
    CHECK(cuttable(shop.shop, "T5").empty());
    CHECK(cuttable(shop.shop, "nothing").empty());
}

TEST_CASE("A piece that can't be held gives no belt", "[shop][drive]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, um(17'499)); // 17.5 is trim and stub
    CHECK(cuttable(shop.shop, "H8M").empty());
    shop.remnant(shop.h8m1200, um(17'500));
    REQUIRE(cuttable(shop.shop, "H8M").size() == 1);
    CHECK(cuttable(shop.shop, "H8M")[0].widest == mm(10));
    CHECK(shop.suggestFor(shop.h8m1200, mm(10), 1).best.plan.unserved.empty());
}

TEST_CASE("Promised width is not given twice, and ready belts serve only while nobody waits for them",
          "[shop][drive]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    shop.order(shop.h8m1200, mm(100), 2); // 2.5 + 200 promised: 197.5 free
    const auto stock = cuttable(shop.shop, "H8M");
    REQUIRE(stock.size() == 1);
    CHECK(stock[0].widest == mm(190)); // its own trim and end
    shop.ready(shop.t5x500, mm(10));
    shop.ready(shop.t5x500, mm(16));
    CHECK(cuttable(shop.shop, "T5").at(0).ready.size() == 2);
    CHECK(cuttable(shop.shop, "T5").at(0).widest.isNone());
    shop.order(shop.t5x500, mm(10), 1);
    CHECK(cuttable(shop.shop, "T5").at(0).ready == std::vector<Extent>{mm(16)});
}

TEST_CASE("Ribbed pieces give whole ribs", "[shop][drive]") {
    TestShop shop;
    shop.piece(shop.pj1194, ribs(20));
    CHECK(cuttable(shop.shop, "PJ").at(0).widest == ribs(18)); // one of trim, one of end
}

} // namespace riband::shop
