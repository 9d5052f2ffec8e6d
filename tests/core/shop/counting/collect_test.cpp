// The scans of a hand-held collector: several places at once, all of them or none.
#include "core/shop/counting/batch.h"
#include "core/shop/counting/findings.h"
#include "core/store/verify.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using counting::Verdict;
using store::Account;
using store::Method;
using Why = Refusal::Why;

namespace {

/// Two remnants at A1, one at B2.
struct CollectedShop : TestShop {
    CollectedShop() {
        first = at(h8m1200, mm(100), "A1");
        second = at(h8m1200, mm(60), "A1");
        other = at(h8m1200, mm(45), "B2");
    }
    store::PieceId at(const belt::Belt& of, Extent extent, const std::string& place) {
        const store::PieceId made = piece(of, extent, cutting::PieceKind::Remnant, 1'000);
        move(shop, made, place);
        return made;
    }
    using TestShop::at;
    std::vector<store::Count> counts() { return store::Counts{connection}.open(); }
    store::PieceId first{0}, second{0}, other{0};
};

CollectedScan scan(const std::string& place, store::PieceId piece, std::optional<Extent> measured) {
    return {.place = place, .piece = piece, .measured = measured};
}

} // namespace

TEST_CASE("A collector's scans are a count of each place, mixed as they came", "[count]") {
    CollectedShop shop;
    const Collected done = collect(shop.shop,
                                   {scan("A1", shop.first, mm(100)),
                                    scan("B2", shop.other, um(44'900)),
                                    scan("A1", shop.second, std::nullopt),
                                    {.place = "B2", .belt = shop.t5x500, .measured = mm(32)}},
                                   false);
    CHECK(done.counts.size() == 2);
    CHECK(done.verdicts == std::vector{Verdict::Agrees, Verdict::Within, Verdict::Agrees, Verdict::Agrees});
    CHECK(done.missing.empty());
    CHECK(shop.at(shop.other).extent == um(44'900)); // near enough: the book is corrected
    CHECK(shop.widthOn(Account::Difference) == 100);
    CHECK(shop.counts().size() == 2);
    SECTION("later scans go on with the same counts") {
        const Collected more = collect(shop.shop, {scan("A1", shop.second, mm(60))}, true);
        CHECK(more.counts == std::vector{done.counts.front()});
        CHECK(more.missing.empty());
        CHECK(shop.counts().size() == 1);
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Closed with the file, what was not seen is missing", "[count]") {
    CollectedShop shop;
    const Collected done =
        collect(shop.shop, {scan("A1", shop.first, mm(100)), scan("B2", shop.other, mm(45))}, true);
    REQUIRE(done.missing.size() == 1);
    CHECK(done.missing.front().second == shop.second);
    CHECK(shop.counts().empty());
    CHECK(store::verify(shop.connection).holes.size() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("One scan that can't be, and none of them is kept", "[count]") {
    CollectedShop shop;
    const auto refused = [&](Why why, const std::vector<CollectedScan>& scans, bool close) {
        checkRefused(shop, why, [&] { collect(shop.shop, scans, close); });
        CHECK(shop.counts().empty());
        CHECK(shop.widthOn(Account::Difference) == 0);
        CHECK(shop.at(shop.other).extent == mm(45));
    };
    const CollectedScan near = scan("B2", shop.other, um(44'900)); // of itself it corrects the book
    SECTION("a piece that waits for its second measurement keeps its place open") {
        refused(Why::MeasureAgain, {near, scan("A1", shop.first, mm(90))}, true);
    }
    SECTION("a width of ribs") { refused(Why::UnitMixed, {near, scan("A1", shop.first, ribs(6))}, false); }
    SECTION("a place that is a piece's code") {
        refused(Why::CodeTaken, {near, scan(shop.at(shop.first).code, shop.first, mm(100))}, false);
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
