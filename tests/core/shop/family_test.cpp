#include "core/shop/family.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using store::Account;

TEST_CASE("All that became of a sleeve is told, and what came in is what went out and is there", "[family]") {
    TestShop shop;
    const store::PieceId sleeve = shop.piece(shop.h8m1200, mm(470), cutting::PieceKind::Sleeve, 9400);
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
    const CutDone done =
        recordCut(shop.shop, {shop.mountingOf(ordered).id, mm(356), std::nullopt, "", {{mm(20), 1}}});
    const store::PieceId part = split(shop.shop, sleeve, mm(100), "");
    scrap(shop.shop, part, mm(10), store::ScrapReason::Damaged, "torn");

    const Family family = familyOf(shop.shop, part); // whoever is asked
    REQUIRE(family.pieces.size() == 3);
    CHECK(family.belt == "H8M 1200");
    CHECK(family.pieces[0].piece.id == sleeve);
    CHECK(family.pieces[0].depth == 0);
    CHECK(family.pieces[1].piece.id == done.shelf.front());
    CHECK(family.pieces[2].piece.id == part);
    CHECK(family.pieces[2].depth == 1);

    // Came in, the cut, the split.
    REQUIRE(family.pieces[0].acts.size() == 3);
    const FamilyAct& cut = family.pieces[0].acts[1];
    CHECK(cut.before == mm(470));
    CHECK(cut.after == mm(356));
    std::int64_t parts = cut.after.count();
    for (const FamilyAct::Part& each : cut.parts)
        parts += each.extent.count();
    CHECK(parts == cut.before.count());
    CHECK(std::any_of(cut.parts.begin(), cut.parts.end(), [&](const FamilyAct::Part& each) {
        return each.account == Account::Sold && each.extent == mm(90) && each.belts == 3 &&
               each.order == shop.at(ordered.order).code;
    }));

    CHECK(family.cameIn == 470'000);
    CHECK(family.out.at(Account::Sold) == 90'000);
    CHECK(family.out.at(Account::Trim) == 2'500);
    CHECK(family.out.at(Account::Scrap) == 10'000);
    CHECK(family.out.at(Account::Difference) == 1'500); // 357.5 by the figures, 356 measured
    CHECK(family.here == 366'000);
    CHECK(family.equal());
}

TEST_CASE("Sleeves of one delivery are families of their own, and what was undone shows as that",
          "[family]") {
    TestShop shop;
    const auto sleeves = receive(shop.shop, {{.belt = shop.h8m1200, .sleeves = 2, .extent = mm(400)}});
    const store::MovementId thrown = scrap(shop.shop, sleeves[0], mm(100), store::ScrapReason::Damaged, "");
    undo(shop.shop, thrown);
    const Family family = familyOf(shop.shop, sleeves[0]);
    REQUIRE(family.pieces.size() == 1);
    CHECK(family.cameIn == 400'000);
    CHECK(family.here == 400'000);
    CHECK(family.equal());
    REQUIRE(family.pieces[0].acts.size() == 3);
    CHECK(family.pieces[0].acts[1].undoneBy);
    CHECK(family.pieces[0].acts[2].undoes == thrown);
}

} // namespace riband::shop
