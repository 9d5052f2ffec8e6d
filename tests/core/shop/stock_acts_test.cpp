#include "core/store/upkeep.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using store::Account;
using Why = Refusal::Why;

namespace {

store::MovementId lastOf(TestShop& shop, store::PieceId piece) {
    return store::Ledger{shop.connection}.historyOf(piece).back().id;
}

} // namespace

TEST_CASE("Many pieces are moved at once, or none", "[stock]") {
    TestShop shop;
    const std::string a = shop.at(shop.piece(shop.h8m1200, mm(400))).code;
    const std::string b = shop.at(shop.piece(shop.pj1194, ribs(60))).code;
    moveAll(shop.shop, {{a, "B3-2"}, {b, "B3-3"}, {a, "C1-1"}});
    CHECK(store::Pieces{shop.connection}.byCode(a)->place == "C1-1");
    CHECK(store::Pieces{shop.connection}.byCode(b)->place == "B3-3");
    checkRefused(shop, Why::NoSuchPiece, [&] { moveAll(shop.shop, {{b, "D1"}, {"000-0", "D1"}}); });
    CHECK(store::Upkeep{shop.connection}.relocationsOf(store::Pieces{shop.connection}.byCode(a)->id).size() ==
          2);
}

TEST_CASE("A move is undone by going back", "[stock]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400));
    checkRefused(shop, Why::ActStays, [&] { undoMove(shop.shop, piece); });
    move(shop.shop, piece, "B3-2");
    move(shop.shop, piece, "C1-1");
    undoMove(shop.shop, piece);
    CHECK(shop.at(piece).place == "B3-2");
}

TEST_CASE("A sleeve is divided in two, with the cost, and is whole again when that is undone", "[stock]") {
    TestShop shop;
    const store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    const store::PieceId part = split(shop.shop, sleeve, mm(150), "B3-2");
    CHECK(shop.at(part).extent == mm(150));
    CHECK(shop.at(part).cost == Money::minor(3000));
    CHECK(shop.at(part).parent == sleeve);
    CHECK(shop.at(part).place == "B3-2");
    CHECK(shop.at(part).born() == shop.at(sleeve).born());
    CHECK(shop.at(sleeve).extent == mm(250));
    CHECK(shop.at(sleeve).kind == cutting::PieceKind::Remnant);
    CHECK(shop.widthOn(Account::Trim) == 0);
    undo(shop.shop, lastOf(shop, part));
    CHECK(shop.at(sleeve).extent == mm(400));
    CHECK(shop.at(sleeve).kind == cutting::PieceKind::Sleeve);
    CHECK(shop.at(part).gone());
    CHECK(shop.disagreements().empty());
}

TEST_CASE("What can't be divided", "[stock]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(100));
    const store::PieceId ready = shop.ready(shop.t5x500, mm(30));
    const auto refused = [&](Why why, store::PieceId id, Extent apart) {
        checkRefused(shop, why, [&shop, id, apart] { split(shop.shop, id, apart, ""); });
    };
    refused(Why::BadWidth, piece, mm(100)); // nothing would stay
    refused(Why::BadWidth, piece, mm(0));
    refused(Why::MoreThanThere, piece, mm(101));
    refused(Why::UnitMixed, piece, ribs(3));
    refused(Why::BadWidth, ready, mm(10));
    shop.order(shop.h8m1200, mm(60), 1);
    refused(Why::PieceReserved, piece, mm(50));
}

TEST_CASE("Scrap is weighed, and taken back", "[stock]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    const store::MovementId thrown =
        scrap(shop.shop, piece, mm(100), store::ScrapReason::Damaged, "torn", 340);
    CHECK(store::Upkeep{shop.connection}.gramsOf(thrown) == 340);
    checkRefused(shop, Why::BadQuantity,
                 [&] { scrap(shop.shop, piece, mm(100), store::ScrapReason::Damaged, "", 0); });
    const store::MovementId undone = undo(shop.shop, thrown);
    CHECK(store::Ledger{shop.connection}.at(undone).movement.about().undoes == thrown);
    CHECK(shop.at(piece).extent == mm(400));
    CHECK(shop.at(piece).cost == Money::minor(8000));
    CHECK(shop.at(piece).kind == cutting::PieceKind::Sleeve);
    checkRefused(shop, Why::UndoneAlready, [&] { undo(shop.shop, thrown); });
    checkRefused(shop, Why::ActStays, [&] { undo(shop.shop, undone); });
}

TEST_CASE("An act is undone only while nothing else was done with its pieces", "[stock]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400));
    const store::MovementId came = lastOf(shop, piece);
    CHECK_FALSE(whyNotUndone(shop.shop, came));
    SECTION("cut since: the cut first, then the goods in") {
        const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
        REQUIRE(whyNotUndone(shop.shop, came));
        CHECK(whyNotUndone(shop.shop, came)->why() == Why::PieceReserved);
        shop.cutAll(ordered);
        checkRefused(shop, Why::AlreadyDone, [&] { undo(shop.shop, came); });
        undo(shop.shop, lastOf(shop, piece)); // by its mounting
        CHECK(shop.lineOf(ordered.order).cut == 0);
        cancel(shop.shop, ordered.order);
        CHECK(shop.at(piece).kind == cutting::PieceKind::Sleeve);
        undo(shop.shop, came); // what was undone stands in nobody's way
        CHECK(shop.at(piece).gone());
    }
    SECTION("untouched") {
        undo(shop.shop, came);
        CHECK(shop.at(piece).gone());
        CHECK(shop.widthOn(Account::Bought) == 0);
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
