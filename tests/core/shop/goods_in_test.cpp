#include "core/shop/expected.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using Why = Refusal::Why;

namespace {

Money cents(std::int64_t count) { return Money::minor(count); }

std::vector<std::int64_t> costsOf(TestShop& shop, const std::vector<store::PieceId>& pieces) {
    std::vector<std::int64_t> costs;
    for (const store::PieceId piece : pieces)
        costs.push_back(shop.at(piece).cost.inMinor());
    return costs;
}

} // namespace

TEST_CASE("Freight is borne by the sleeves in proportion to their cost, to the cent", "[goods]") {
    TestShop shop;
    // 10.00 over 80.00, 80.00 and 45.00: 205.00 in all. Running sums: 3.9024, 7.8049, 10
    // -> 3.90, 7.80, 10.00.
    const Received received = receiveGoods(
        shop.shop, {"Mill Supply",
                    "DN 7",
                    cents(1000),
                    {},
                    {{.belt = shop.h8m1200, .sleeves = 2, .extent = mm(400), .costEach = cents(8000)},
                     {.belt = shop.pj1194, .extent = ribs(60), .costEach = cents(4500)}}});
    CHECK(costsOf(shop, received.pieces) == std::vector<std::int64_t>{8390, 8390, 4720});
    CHECK(shop.costOn(store::Account::Bought) == -21'500); // the invoice and the freight
    CHECK(store::Catalogue{shop.connection}.find(shop.h8m1200)->sleeveCost == cents(8000)); // without freight
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Freight of goods that cost nothing is borne evenly", "[goods]") {
    const TestShop shop;
    const std::vector<Delivery> lines{{.belt = shop.h8m1200, .sleeves = 2, .extent = mm(400)},
                                      {.belt = shop.pj1194, .extent = ribs(60)}};
    std::int64_t sum = 0;
    for (const auto& line : freightShares(cents(100), lines))
        for (const Money share : line) {
            CHECK(share >= cents(33));
            CHECK(share <= cents(34));
            sum += share.inMinor();
        }
    CHECK(sum == 100);
}

TEST_CASE("One label says 470, the tape says 463: what is there is booked, the buyer can tell", "[goods]") {
    TestShop shop;
    const Received received = receiveGoods(
        shop.shop,
        {"Mill Supply",
         "DN 8",
         cents(500),
         {},
         {{.belt = shop.h8m1200, .sleeves = 4, .extent = mm(470), .costEach = cents(9400)},
          {.belt = shop.h8m1200, .extent = mm(463), .costEach = cents(9400), .labelled = mm(470)}}});
    REQUIRE(received.pieces.size() == 5);
    CHECK(shop.at(received.pieces[4]).extent == mm(463));
    const std::vector<Mislabelled> wrong = mislabelled(shop.shop, received.delivery);
    REQUIRE(wrong.size() == 1);
    CHECK(wrong[0].piece.id == received.pieces[4]);
    CHECK(wrong[0].came == mm(463));
    CHECK(wrong[0].labelled == mm(470));
    CHECK(wrong[0].missing == cents(140)); // 7 of 470 mm at 94.00
    // It is told long after something was cut from it, too.
    shop.cutAll(shop.order(shop.h8m1200, mm(460), 1));
    CHECK(mislabelled(shop.shop, received.delivery)[0].came == mm(463));
}

TEST_CASE("A supplier's code that was tied to a belt is known at the next scan", "[goods]") {
    TestShop shop;
    CHECK_FALSE(knownCode(shop.shop, "4006381333931"));
    receiveGoods(shop.shop, {.lines = {{.belt = shop.h8m1200,
                                        .extent = mm(463),
                                        .labelled = mm(470),
                                        .supplierCode = "4006381333931"}}});
    const auto known = knownCode(shop.shop, "4006381333931");
    REQUIRE(known);
    CHECK(known->belt.designation == "H8M 1200");
    CHECK(known->extent == mm(470)); // such sleeves should be so wide
}

TEST_CASE("What was expected comes in parts, and is expected again when it is undone", "[goods]") {
    TestShop shop;
    const store::ExpectedId id =
        expect(shop.shop, {"Mill Supply",
                           "P-17",
                           dayOf(shop.time) + std::chrono::days{7},
                           {{.belt = shop.h8m1200, .sleeves = 3, .extent = mm(470), .costEach = cents(9400)},
                            {.belt = shop.pj1194, .extent = ribs(60)}}});
    const auto arrived = [&](std::size_t line) {
        return store::Goods{shop.connection}.expected(id).lines[line].arrived;
    };
    const auto come = [&](Delivery line) {
        return receiveGoods(shop.shop, {"Mill Supply", "", cents(0), id, {std::move(line)}});
    };
    come({.belt = shop.h8m1200, .sleeves = 2, .extent = mm(470)});
    const Received third = come({.belt = shop.h8m1200, .extent = mm(463), .labelled = mm(470)});
    CHECK(arrived(0) == 3);
    CHECK(store::Goods{shop.connection}.expected().size() == 1);
    come({.belt = shop.pj1194, .extent = ribs(60)});
    CHECK(store::Goods{shop.connection}.expected().empty());
    checkRefused(shop, Why::AlreadyDone, [&] { come({.belt = shop.pj1194, .extent = ribs(60)}); });

    undo(shop.shop, store::Ledger{shop.connection}.historyOf(third.pieces[0]).front().id);
    CHECK(arrived(0) == 2);
    CHECK(store::Goods{shop.connection}.expected().size() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("What is expected can be changed and dropped, but not what has come of it", "[goods]") {
    TestShop shop;
    const store::ExpectedId id = expect(shop.shop, {"Mill Supply",
                                                    "P-17",
                                                    {},
                                                    {{.belt = shop.h8m1200, .sleeves = 3, .extent = mm(470)},
                                                     {.belt = shop.pj1194, .extent = ribs(60)}}});
    const auto now = [&] { return store::Goods{shop.connection}.expected(id); };
    receiveGoods(
        shop.shop,
        {"Mill Supply", "", cents(0), id, {{.belt = shop.h8m1200, .sleeves = 2, .extent = mm(470)}}});
    Expectation changed = expectationOf(shop.shop, now());

    SECTION("another supplier, day, number of sleeves, and a line more and one less") {
        changed.supplier = "River Supply";
        changed.due = dayOf(shop.time);
        changed.lines[0].sleeves = 4;
        changed.lines[1] = {.belt = shop.pj1194, .sleeves = 2, .extent = ribs(50)};
        changeExpected(shop.shop, id, changed);
        CHECK(now().supplier == "River Supply");
        CHECK(now().due == dayOf(shop.time));
        REQUIRE(now().lines.size() == 2);
        CHECK(now().lines[0].arrived == 2);
        CHECK(now().lines[0].sleeves == 4);
        CHECK(now().lines[1].extent == ribs(50));
        CHECK(now().lines[1].arrived == 0);
    }
    SECTION("what came stays: no other width, no fewer sleeves, and the line itself") {
        SECTION("width") { changed.lines[0].extent = mm(450); }
        SECTION("sleeves") { changed.lines[0].sleeves = 1; }
        SECTION("line") { changed.lines.erase(changed.lines.begin()); }
        checkRefused(shop, Why::HasArrived, [&] { changeExpected(shop.shop, id, changed); });
    }
    SECTION("as many as came, and no other line: all of it has come") {
        changed.lines[0].sleeves = 2;
        changed.lines.pop_back();
        changeExpected(shop.shop, id, changed);
        CHECK(now().closed);
        checkRefused(shop, Why::AlreadyDone, [&] { changeExpected(shop.shop, id, changed); });
    }
    SECTION("nothing more comes") {
        dropExpected(shop.shop, id);
        CHECK(store::Goods{shop.connection}.expected().empty());
        CHECK(now().lines[0].arrived == 2);
        checkRefused(shop, Why::AlreadyDone, [&] { dropExpected(shop.shop, id); });
    }
    SECTION("nothing at all can't be expected, nor what can't be booked") {
        changed.lines.clear();
        checkRefused(shop, Why::BadQuantity, [&] { expect(shop.shop, changed); });
        changed.lines.push_back({.belt = shop.pj1194, .extent = mm(30)});
        checkRefused(shop, Why::UnitMixed, [&] { expect(shop.shop, changed); });
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Goods in with one bad line are refused as a whole", "[goods]") {
    TestShop shop;
    const Delivery good{.belt = shop.h8m1200, .extent = mm(400)};
    const auto with = [&](Money freight, std::vector<Delivery> lines) {
        return [&shop, freight, lines] { receiveGoods(shop.shop, {"", "", freight, {}, lines}); };
    };
    checkRefused(shop, Why::BadQuantity, with(cents(0), {}));
    checkRefused(shop, Why::BadQuantity, with(cents(-1), {good}));
    checkRefused(shop, Why::BadQuantity,
                 with(cents(0), {{.belt = shop.h8m1200, .extent = mm(3), .costEach = cents(-3000)}}));
    checkRefused(shop, Why::UnitMixed, with(cents(0), {good, {.belt = shop.pj1194, .extent = mm(3)}}));
    checkRefused(shop, Why::UnitMixed,
                 with(cents(0), {good, {.belt = shop.h8m1200, .extent = mm(3), .labelled = ribs(3)}}));
    checkRefused(shop, Why::BadQuantity,
                 with(cents(9), {good, {.belt = shop.h8m1200, .sleeves = 0, .extent = mm(3)}}));
}

TEST_CASE("A long take-over tells how far it is and stops without a trace", "[goods]") {
    TestShop shop;
    const std::string before = shop.everything();
    const std::vector<Delivery> many(
        200, {.belt = shop.h8m1200, .extent = mm(40), .kind = cutting::PieceKind::Remnant});
    std::vector<double> told;
    CHECK(receive(shop.shop, many, [&](double share) {
              told.push_back(share);
              return share < 0.5;
          }).empty());
    CHECK(told.size() == 3);
    CHECK(shop.everything() == before);
    CHECK(receive(shop.shop, many, [](double) { return true; }).size() == 200);
}

} // namespace riband::shop
