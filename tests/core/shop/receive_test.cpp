#include "core/shop/limits.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using store::Account;
using Why = Refusal::Why;

TEST_CASE("Goods in: every sleeve is a piece with its own code, width and cost", "[receive]") {
    TestShop shop;
    const std::vector<store::PieceId> pieces =
        receive(shop.shop, {{.belt = shop.h8m1200,
                             .sleeves = 2,
                             .extent = mm(400),
                             .costEach = Money::minor(8000),
                             .batch = "M-77",
                             .made = dayOf(shop.time) - std::chrono::days{100},
                             .place = "B3-2"},
                            {.belt = shop.pj1194, .extent = ribs(60), .costEach = Money::minor(4500)}});
    REQUIRE(pieces.size() == 3);
    const store::StockPiece first = shop.at(pieces[0]);
    CHECK(first.extent == mm(400));
    CHECK(first.cost == Money::minor(8000));
    CHECK(first.place == "B3-2");
    CHECK(first.batch == "M-77");
    CHECK(first.kind == cutting::PieceKind::Sleeve);
    CHECK(first.code != shop.at(pieces[1]).code);
    CHECK(shop.at(pieces[2]).extent == ribs(60));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Goods in are bought and a stock that is taken over was found, whatever the pieces are",
          "[receive]") {
    TestShop shop;
    const std::vector<Delivery> goods{
        {.belt = shop.h8m1200, .extent = mm(400), .costEach = Money::minor(8000)},
        {.belt = shop.h8m1200,
         .extent = mm(200),
         .costEach = Money::minor(2000),
         .kind = cutting::PieceKind::Remnant}, // a sleeve that is narrower than usual
        {.belt = shop.h8m1200, .extent = mm(30), .kind = cutting::PieceKind::Ready}};
    SECTION("goods in") {
        receive(shop.shop, goods);
        CHECK(shop.widthOn(Account::Bought) == -630'000);
        CHECK(shop.costOn(Account::Bought) == -10'000);
        CHECK(shop.widthOn(Account::Found) == 0);
    }
    SECTION("goods in with a delivery note") {
        receiveGoods(shop.shop, {.reference = "L 17", .lines = goods});
        CHECK(shop.widthOn(Account::Bought) == -630'000);
        CHECK(shop.widthOn(Account::Found) == 0);
    }
    SECTION("a stock") {
        takeOver(shop.shop, goods);
        CHECK(shop.widthOn(Account::Found) == -630'000);
        CHECK(shop.costOn(Account::Found) == -10'000);
        CHECK(shop.widthOn(Account::Bought) == 0);
    }
    CHECK(shop.widthOn(Account::Rack) == 600'000);
    CHECK(shop.widthOn(Account::Ready) == 30'000);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Batch, supplier and delivery note are one line each, whatever a file has in them", "[receive]") {
    TestShop shop;
    const Received received = receiveGoods(
        shop.shop, {.supplier = "Mill\r\nSupply ",
                    .reference = "L\t17\x01",
                    .lines = {{.belt = shop.h8m1200, .extent = mm(400), .batch = "\nM 77\n B"}}});
    CHECK(shop.at(received.pieces.front()).batch == "M 77 B");
    const auto booked = store::Goods{shop.connection}.at(received.delivery);
    CHECK(booked.supplier == "Mill Supply");
    CHECK(booked.reference == "L 17");
    CHECK(inOneLine(" \x7f ").empty());
    CHECK(inOneLine("L\xc3\xbc 1") == "L\xc3\xbc 1");
}

TEST_CASE("What names a piece without its dash finds it, unless a place is called so", "[receive]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400));
    std::string bare = shop.at(piece).code;
    bare.erase(bare.find('-'), 1);
    CHECK(scan(shop.shop, bare + " ").piece->id == piece);
    CHECK_FALSE(canBePlace(shop.shop, bare));
    checkRefused(shop, Why::CodeTaken, [&] { move(shop.shop, piece, bare); });
    CHECK_FALSE(scan(shop.shop, "").any());
    CHECK_FALSE(scan(shop.shop, bare.substr(0, 3)).any());

    TestShop other; // its first piece lies at a place that is called like the code that the second will have
    const store::PieceId first = other.piece(other.h8m1200, mm(400));
    const std::string next = shop.at(shop.piece(shop.h8m1200, mm(400))).code;
    std::string place = next;
    place.erase(place.find('-'), 1);
    move(other.shop, first, place);
    const store::PieceId second = other.piece(other.h8m1200, mm(400));
    REQUIRE(other.at(second).code == next);
    CHECK_FALSE(scan(other.shop, place).any());
    CHECK(canBePlace(other.shop, place));
    CHECK(scan(other.shop, next).piece->id == second);
}

TEST_CASE("A belt new to the shop is kept with the usual sleeve and the standard widths", "[receive]") {
    TestShop shop;
    const belt::Belt l322{"L", Teeth{86}, Length::micrometres(819'150), ""};
    shop.piece(l322, mm(400), cutting::PieceKind::Sleeve, 9000);
    const auto kept = store::Catalogue{shop.connection}.find(l322);
    REQUIRE(kept);
    CHECK(kept->designation == "L 322");
    CHECK(kept->sleeveCost == Money::minor(9000));
    shop.piece(l322, mm(400)); // nobody said what it cost: the last known cost stands
    CHECK(store::Catalogue{shop.connection}.find(l322)->sleeveCost == Money::minor(9000));
    // ISO 5296: L is sold in 1/2, 3/4 and 1 in.
    const std::vector<Extent>& listed = kept->listed;
    CHECK(std::find(listed.begin(), listed.end(), um(19'050)) != listed.end());
    CHECK(std::find(listed.begin(), listed.end(), um(25'400)) != listed.end());
}

TEST_CASE("A delivery with one bad line is refused as a whole", "[receive]") {
    TestShop shop;
    const Delivery good{.belt = shop.h8m1200, .extent = mm(400)};
    const auto with = [&](Delivery bad) { return [&shop, good, bad] { receive(shop.shop, {good, bad}); }; };
    checkRefused(shop, Why::UnitMixed, with({.belt = shop.pj1194, .extent = mm(400)}));
    checkRefused(shop, Why::BadWidth, with({.belt = shop.h8m1200, .extent = mm(0)}));
    checkRefused(shop, Why::BadQuantity, with({.belt = shop.h8m1200, .sleeves = 0, .extent = mm(400)}));
    checkRefused(shop, Why::BadQuantity,
                 with({.belt = shop.h8m1200, .extent = mm(400), .costEach = Money::minor(-1)}));
    checkRefused(
        shop, Why::BadQuantity,
        with({.belt = shop.h8m1200, .extent = mm(400), .made = lastMade(shop.shop) + std::chrono::days{1}}));
    checkRefused(shop, Why::BadWidth, with({.belt = shop.h8m1200, .extent = mm(5'001)}));
    checkRefused(shop, Why::BadWidth, with({.belt = shop.h8m1200, .extent = mm(400), .labelled = mm(5'001)}));
    checkRefused(shop, Why::NoSuchBelt,
                 with({.belt = {"ZZ9", Teeth{10}, Length::millimetres(100), ""}, .extent = mm(400)}));
}

TEST_CASE("Width thrown away takes its share of the cost along", "[receive]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    scrap(shop.shop, piece, mm(100), store::ScrapReason::Damaged, "torn edge");
    CHECK(shop.at(piece).extent == mm(300));
    CHECK(shop.at(piece).cost == Money::minor(6000));
    CHECK(shop.at(piece).kind == cutting::PieceKind::Remnant);
    CHECK(shop.widthOn(Account::Scrap) == 100'000);
    CHECK(shop.costOn(Account::Scrap) == 2000);
    scrap(shop.shop, piece, mm(300), store::ScrapReason::Aged, "");
    CHECK(shop.at(piece).gone());
    CHECK(shop.at(piece).cost == Money::minor(0));
    CHECK(shop.disagreements().empty());
    checkRefused(shop, Why::PieceGone, [&] { scrap(shop.shop, piece, mm(1), store::ScrapReason::Aged, ""); });
    checkRefused(shop, Why::PieceGone, [&] { move(shop.shop, piece, "B1-1"); });
}

TEST_CASE("What is promised to a ticket can't be thrown away", "[receive]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(100));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 2); // 62.5 and 5 must be left: 32.5 are free
    const auto throwAway = [&](Extent extent) {
        return [&shop, piece, extent] { scrap(shop.shop, piece, extent, store::ScrapReason::Damaged, ""); };
    };
    checkRefused(shop, Why::PieceReserved, throwAway(um(32'501)));
    try {
        throwAway(mm(100))();
        FAIL("was not refused");
    } catch (const Refusal& refusal) {
        CHECK(refusal.detail() == shop.at(*ordered.ticket).code);
    }
    checkRefused(shop, Why::MoreThanThere, throwAway(mm(101)));
    checkRefused(shop, Why::UnitMixed, throwAway(ribs(1)));
    throwAway(um(32'500))();
    CHECK(shop.at(piece).extent == um(67'500));
}

TEST_CASE("A piece is put at another place and keeps all else", "[receive]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400));
    move(shop.shop, piece, "C1-4");
    CHECK(shop.at(piece).place == "C1-4");
    CHECK(shop.at(piece).extent == mm(400));
}

} // namespace riband::shop
