#include "core/shop/finish.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

namespace {

const std::vector<Extent> listed{mm(10), mm(15), mm(20), mm(30)};

/// A belt of 30 was cut; the usual rules: a rest under 2.5 + 10 + 5 = 17.5 is of no more use.
std::vector<Extent> finish(Extent left, const std::vector<Extent>& onShelf = {}) {
    return finishOf(cutting::Rules::usual(Unit::Micrometre), listed, onShelf, mm(30), left);
}

} // namespace

TEST_CASE("A rest that is of no more use gives a belt for the shelf while the trim is paid", "[finish]") {
    CHECK(finish(um(17'400)) == std::vector<Extent>{mm(10)});
    CHECK(finish(mm(15)) == std::vector<Extent>{mm(10)}); // and just the end of 5
}

TEST_CASE("What is too narrow even now is thrown away", "[finish]") {
    CHECK(finish(um(14'900)).empty());
    CHECK(finish(mm(0)).empty());
}

TEST_CASE("A rest that is still of use is kept whole", "[finish]") { CHECK(finish(um(17'500)).empty()); }

TEST_CASE("Three alike on the shelf are enough", "[finish]") {
    CHECK(finish(mm(15), {mm(10), mm(10)}) == std::vector<Extent>{mm(10)});
    CHECK(finish(mm(15), {mm(10), mm(10), mm(10)}).empty());
}

TEST_CASE("Ribs: of four ribs that are left three make a belt and one is the end", "[finish]") {
    const cutting::Rules rules = cutting::Rules::usual(Unit::Rib);
    CHECK(finishOf(rules, {ribs(3), ribs(6)}, {}, ribs(6), ribs(4)) == std::vector<Extent>{ribs(3)});
    CHECK(finishOf(rules, {ribs(3), ribs(6)}, {}, ribs(6), ribs(5)).empty()); // 1 + 3 + 1: another time
}

TEST_CASE("The bench says what to cut for the shelf as well, unless another ticket needs the rest",
          "[finish]") {
    TestShop shop;
    // H8M is listed from 20 on: 2.5 + 30 of 59 leave 26.5, from which 20 and the end of 5 can still come.
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(59));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    const std::vector<BenchMounting> rows = bench(shop.shop);
    REQUIRE(rows.size() == 1);
    CHECK(rows.front().finish == std::vector<Extent>{mm(20)});
    SECTION("cut and booked") {
        CutRecord record{rows.front().mounting.id};
        record.forShelf = {{mm(20), 1}};
        CHECK(recordCut(shop.shop, record).shelf.size() == 1);
        CHECK(shop.at(piece).gone());
        CHECK(shop.widthOn(store::Account::End) == 5'000);
    }
    SECTION("another order has taken the rest") {
        shop.order(shop.h8m1200, mm(15), 1);
        for (const BenchMounting& row : bench(shop.shop))
            if (row.ticket == shop.at(*ordered.ticket).code) CHECK(row.finish.empty());
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
