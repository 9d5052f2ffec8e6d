// What becomes of a rest is one truth: in the reason, on the card's drawing, at the Bench, on the ticket.
#include "core/shop/reason.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using Kind = Reason::Kind;

namespace {

/// The Bench's rows of an order.
BenchMounting rowOf(TestShop& shop, const Ordered& ordered) {
    const auto rows = mountingsOf(shop.shop, *ordered.ticket);
    REQUIRE(rows.size() == 1);
    return rows.front();
}

Ordered orderWithoutShelf(TestShop& shop, Extent extent) {
    DraftLine line = TestShop::line(shop.h8m1200, extent, 1);
    line.noShelf = true;
    return shop.order({line});
}

} // namespace

TEST_CASE("A rest goes back to the rack or is scrap, and reason and Bench say the same of it", "[rest]") {
    // 2.5 of trim, 30 of the belt; a listed 20 needs 27.5, and 15 can just be held.
    const int width = GENERATE(38, 47, 48, 50, 59, 60, 61, 75);
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(width));
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), 1}});
    Way way = suggest(outlook).best;
    declineShelf(outlook, way);
    const Extent left = way.left(0, outlook.problem.rules);
    const bool stays = goesBack(outlook.problem, left);
    CHECK(stays == (width >= 60));
    CHECK((reasonOf(outlook.problem, way.plan).kind == Kind::Finishes) == !stays);
    const BenchMounting row = rowOf(shop, orderWithoutShelf(shop, mm(30)));
    CHECK(row.mounting.left == left);
    CHECK(row.mounting.restKept == stays);
}

TEST_CASE("A rest of which nothing listed can be cut stays when another customer is promised it", "[rest]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(59));
    const Ordered first = orderWithoutShelf(shop, mm(30));
    CHECK_FALSE(rowOf(shop, first).mounting.restKept);
    const Ordered second = orderWithoutShelf(shop, mm(15)); // an odd width, out of what was to be scrap
    REQUIRE(shop.mountingOf(second).piece == piece);
    CHECK(rowOf(shop, first).mounting.restKept);
    CHECK(rowOf(shop, second).mounting.restKept); // whichever is cut first
    shop.cutAll(first);
    CHECK_FALSE(rowOf(shop, second).mounting.restKept);
}

} // namespace riband::shop
