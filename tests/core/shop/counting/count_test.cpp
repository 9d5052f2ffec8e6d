// Counting a place while the counter goes on selling.
#include "core/shop/counting/count.h"
#include "core/shop/counting/findings.h"
#include "core/store/upkeep.h"
#include "core/store/verify.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using counting::Verdict;
using store::Account;
using store::Method;
using Why = Refusal::Why;

namespace {

/// Two remnants and a ready belt at A1, one remnant at B2.
struct CountShop : TestShop {
    CountShop() {
        first = at(h8m1200, mm(100), "A1");
        second = at(h8m1200, mm(60), "A1");
        belt = ready(h8m1200, mm(30));
        move(shop, belt, "A1");
        elsewhere = at(h8m1200, mm(45), "B2");
    }
    store::PieceId at(const belt::Belt& of, Extent extent, const std::string& place) {
        const store::PieceId made = piece(of, extent, cutting::PieceKind::Remnant, 1'000);
        move(shop, made, place);
        return made;
    }
    Verdict measure(store::CountId count, store::PieceId id, Extent extent,
                    Method method = Method::Calliper) {
        return note(shop, count, id, extent, method).verdict;
    }
    using TestShop::at;
    store::PieceId first{0}, second{0}, belt{0}, elsewhere{0};
};

} // namespace

TEST_CASE("A place is counted: what agrees is left, what is near is corrected, what differs asks again",
          "[count]") {
    CountShop shop;
    const store::CountId count = beginCount(shop.shop, "A1");
    CHECK(shop.measure(count, shop.first, mm(100)) == Verdict::Agrees);
    CHECK(shop.measure(count, shop.second, um(59'800)) == Verdict::Within);
    CHECK(shop.at(shop.second).extent == um(59'800));
    CHECK(shop.widthOn(Account::Difference) == 200);
    CHECK(shop.measure(count, shop.second, mm(58)) == Verdict::Again); // 1.8 from the corrected book
    CHECK(toMeasureAgain(shop.shop, count).size() == 1);
    checkRefused(shop, Why::MeasureAgain, [&] { closeCount(shop.shop, count); });
    CHECK(shop.measure(count, shop.second, um(58'100)) == Verdict::Differs);
    CHECK(shop.at(shop.second).extent == um(59'800)); // until it is settled
    CHECK(toMeasureAgain(shop.shop, count).empty());
    REQUIRE(notSeen(shop.shop, count).size() == 1);
    CHECK(notSeen(shop.shop, count).front().id == shop.belt);
    CHECK(closeCount(shop.shop, count) == std::vector<store::PieceId>{shop.belt});
    checkRefused(shop, Why::CountClosed, [&] { shop.measure(count, shop.first, mm(100)); });
    CHECK(shop.disagreements().empty());
    CHECK(store::verify(shop.connection).holes.size() == 2);
    CHECK(findings(shop.shop).size() == 2);
}

TEST_CASE("By eye a piece is there or not; the book is not corrected by it", "[count]") {
    CountShop shop;
    const store::CountId count = beginCount(shop.shop, "A1");
    CHECK(shop.measure(count, shop.first, mm(97), Method::Eye) == Verdict::Within);
    CHECK(shop.at(shop.first).extent == mm(100));
    CHECK(note(shop.shop, count, shop.belt, std::nullopt, Method::Calliper).verdict == Verdict::Agrees);
    CHECK(shop.measure(count, shop.belt, um(29'900)) == Verdict::Within);
    CHECK(shop.at(shop.belt).extent == mm(30)); // a ready belt is what its label says
    CHECK(findings(shop.shop).empty());
    checkRefused(shop, Why::UnitMixed, [&] { shop.measure(count, shop.first, ribs(10)); });
}

TEST_CASE("A piece of which the book has nothing is measured, twice, however narrow it is", "[count]") {
    CountShop shop;
    scrap(shop.shop, shop.second, mm(60), store::ScrapReason::Damaged, "");
    const store::CountId count = beginCount(shop.shop, "A1");
    checkRefused(shop, Why::PieceGone, [&] { note(shop.shop, count, shop.second, {}, Method::Calliper); });
    CHECK(store::Counts{shop.connection}.scansOf(count).empty());
    CHECK(shop.measure(count, shop.second, mm(4), Method::Eye) == Verdict::Again); // by eye 5 are near enough
    CHECK(toMeasureAgain(shop.shop, count).size() == 1);
    CHECK(shop.measure(count, shop.second, mm(4), Method::Eye) == Verdict::Differs);
    REQUIRE(findings(shop.shop).size() == 1);
    CHECK(findings(shop.shop).front().proposals.front().what == store::Explanation::Found);
}

TEST_CASE("A count is left and taken up again, also by another person", "[count]") {
    CountShop shop;
    const store::CountId count = beginCount(shop.shop, "A1");
    shop.measure(count, shop.first, mm(100));
    Shop other = shop.shop;
    other.person = store::People{shop.connection}.add("CD", "C. Dyer", store::Role::StockManager);
    CHECK(beginCount(other, "A1") == count);
    CHECK(beginCount(other, "B2") != count); // two places at once
    note(other, count, shop.second, mm(60), Method::Calliper);
    note(other, count, shop.belt, std::nullopt, Method::Eye);
    CHECK(closeCount(other, count).empty());
    CHECK(store::Counts{shop.connection}.scansOf(count).back().person == other.person);
    CHECK(beginCount(shop.shop, "A1") != count); // the next one
}

TEST_CASE("A piece that lies elsewhere than the book says is at home where it was seen", "[count]") {
    CountShop shop;
    const store::CountId count = beginCount(shop.shop, "A1");
    const Noted noted = note(shop.shop, count, shop.elsewhere, mm(45), Method::Calliper);
    CHECK(noted.placeWas == "B2");
    CHECK(shop.at(shop.elsewhere).place == "A1");
    const store::CountId there = beginCount(shop.shop, "B2");
    CHECK(notSeen(shop.shop, there).empty());
}

TEST_CASE("What a count moves leaves a record like any other move, and is undone like it", "[count]") {
    CountShop shop;
    const store::CountId count = beginCount(shop.shop, "A1");
    const auto moves = [&] { return store::Upkeep{shop.connection}.relocationsOf(shop.elsewhere); };
    const std::size_t before = moves().size();
    shop.measure(count, shop.elsewhere, mm(45));
    REQUIRE(moves().size() == before + 1);
    CHECK(moves().back().from == "B2");
    CHECK(moves().back().to == "A1");
    CHECK(moves().back().person == shop.shop.person);
    shop.measure(count, shop.elsewhere, mm(45)); // it lies there already
    CHECK(moves().size() == before + 1);
    undoMove(shop.shop, shop.elsewhere);
    CHECK(shop.at(shop.elsewhere).place == "B2");
}

TEST_CASE("Sales while a place is counted change nothing of what was found", "[count]") {
    CountShop shop;
    const store::CountId count = beginCount(shop.shop, "A1");
    // The book has 100, there are 90.
    CHECK(shop.measure(count, shop.first, mm(90)) == Verdict::Again);
    const Ordered sold = shop.order(shop.h8m1200, mm(50), 1);
    REQUIRE(shop.mountingOf(sold).piece == shop.first);
    SECTION("cut by the figures: the gap stays 10") {
        shop.cutAll(sold); // 2.5 and 50: the book says 47.5, there are 37.5
        CHECK(shop.measure(count, shop.first, um(37'500)) == Verdict::Differs);
        REQUIRE(findings(shop.shop).size() == 1);
        CHECK(findings(shop.shop).front().difference.gap == -10'000);
    }
    SECTION("cut, and its rest measured: nothing is left of the gap") {
        CHECK(shop.measure(count, shop.first, um(90'100)) == Verdict::Differs);
        recordCut(shop.shop, {shop.mountingOf(sold).id, um(37'500), {}, ""});
        REQUIRE(findings(shop.shop).size() == 1);
        const Finding found = findings(shop.shop).front();
        CHECK(found.difference.measuredSince);
        CHECK(found.proposals.front().what == store::Explanation::BookedLate);
    }
    SECTION("what was cut is not missing, though nobody scanned it") {
        const store::CountId again = beginCount(shop.shop, "A1");
        const Ordered more = shop.order(shop.h8m1200, mm(20), 1);
        shop.cutAll(more);
        const store::PieceId cut = shop.mountingOf(more).piece;
        for (const store::StockPiece& piece : notSeen(shop.shop, again))
            CHECK(piece.id != cut);
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
