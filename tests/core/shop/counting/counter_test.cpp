// What was settled is taken back, once or twice, and the book never holds a width that nobody measured.
#include "tests/core/shop/counting/settle_shop.h"

namespace riband::shop {

using store::Account;
using store::Explanation;
using Why = Refusal::Why;

namespace {

/// Two counts of one piece of 100: first 90 was measured and booked, then 95.
struct CountedTwice : SettleShop {
    store::PieceId piece = at(mm(100));
    Settled first = countedAs(um(91'117)), second = countedAs(um(95'523));

    Settled countedAs(Extent extent) {
        const store::CountId count = beginCount(shop, "A1");
        measure(count, piece, extent);
        const Settled settled = acceptFirst(only());
        closeCount(shop, count);
        return settled;
    }
};

} // namespace

TEST_CASE("A cut and a trim of another time were not booked: the cut is recorded, and the rest is as counted",
          "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(100));
    const Ordered sold = shop.order(shop.h8m1200, mm(30), 1);
    shop.measure(beginCount(shop.shop, "A1"), piece, um(64'900)); // 100 - 2.5 - 30 - 2.5 - 0.1
    const Finding found = shop.only();
    REQUIRE(found.proposals.front().what == Explanation::CutNotRecorded);
    CHECK(found.proposals.front().unexplained == -2'600);
    const Settled settled = shop.acceptFirst(found);
    CHECK(shop.at(piece).extent == um(64'900));
    CHECK(shop.widthOn(Account::Difference) == 2'600);
    CHECK(shop.at(sold.order).state == store::OrderState::Ready);
    CHECK(findings(shop.shop).empty());
    CHECK(shop.disagreements().empty());

    checkRefused(shop, Why::SettledByCut, [&] { counterSettlement(shop.shop, settled.settlements.front()); });
    undo(shop.shop, *settled.movement);
    CHECK(shop.at(piece).extent == mm(100));
    CHECK(shop.at(sold.order).state == store::OrderState::Open);
    CHECK(shop.only().difference.gap == -35'100);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A settlement stays while a later count stands on it, and says which piece", "[count]") {
    CountedTwice shop;
    REQUIRE(shop.at(shop.piece).extent == um(95'523));
    const store::SettlementId older = shop.first.settlements.front();
    checkRefused(shop, Why::ActStays, [&] { counterSettlement(shop.shop, older); });
    CHECK(whyNotCountered(shop.shop, older)->detail() == shop.at(shop.piece).code);
    CHECK(shop.at(shop.piece).extent == um(95'523));
}

TEST_CASE("A count that agreed stands on what was settled before it as well", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(100));
    shop.measure(beginCount(shop.shop, "A1"), piece, um(91'117));
    const Settled settled = shop.acceptFirst(shop.only());
    closeCount(shop.shop, store::Counts{shop.connection}.openAt("A1")->id);
    note(shop.shop, beginCount(shop.shop, "A1"), piece, um(91'117), store::Method::Calliper);
    checkRefused(shop, Why::ActStays, [&] { counterSettlement(shop.shop, settled.settlements.front()); });
}

TEST_CASE("Both settlements of one piece are taken back, the later first, and settled once more", "[count]") {
    CountedTwice shop;
    counterSettlement(shop.shop, shop.second.settlements.front());
    CHECK(shop.at(shop.piece).extent == um(91'117));
    CHECK(shop.only().difference.gap == 4'406);
    counterSettlement(shop.shop, shop.first.settlements.front());
    CHECK(shop.at(shop.piece).extent == mm(100));

    // Of the last measurement, against the book as it is again: not against what never was.
    const Finding open = shop.only();
    CHECK(open.difference.book == 100'000);
    CHECK(open.difference.measured == 95'523);
    CHECK(open.difference.gap == -4'477);
    shop.acceptFirst(open);
    CHECK(shop.at(shop.piece).extent == um(95'523));
    CHECK(findings(shop.shop).empty());
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A cut that was no cut is undone after the count: nothing is left of the difference", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(100));
    const Ordered sold = shop.order(shop.h8m1200, mm(30), 1);
    const CutDone cut = shop.cutAll(sold);
    shop.measure(beginCount(shop.shop, "A1"), piece, mm(100)); // it lies there whole
    CHECK(shop.only().difference.gap == 32'500);
    undo(shop.shop, cut.movement);
    REQUIRE(shop.at(piece).extent == mm(100));
    const Finding found = shop.only();
    REQUIRE(found.proposals.size() == 1);
    CHECK(found.proposals.front().what == Explanation::BookedLate);
    shop.acceptFirst(found);
    CHECK(shop.at(piece).extent == mm(100));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A ticket that a settlement made void stays void when it is taken back, and is named", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(100));
    const Ordered sold = shop.order(shop.h8m1200, mm(60), 1);
    const std::string ticket = shop.at(*sold.ticket).code;
    shop.measure(beginCount(shop.shop, "A1"), piece, um(51'117));
    const Settled settled = shop.acceptFirst(shop.only());
    REQUIRE(settled.voided.size() == 1);
    SECTION("as long as its belts are on no ticket") {
        const Countered back = counterSettlement(shop.shop, settled.settlements.front());
        CHECK(back.stayVoid == std::vector<std::string>{ticket});
        CHECK(back.voided.empty());
        CHECK(shop.at(*sold.ticket).state == store::TicketState::Void);
    }
    SECTION("not once they are") {
        shop.piece(shop.h8m1200, mm(300));
        planMissing(shop.shop, sold.order);
        CHECK(counterSettlement(shop.shop, settled.settlements.front()).stayVoid.empty());
    }
    CHECK(shop.at(piece).extent == mm(100));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("What a found width was promised for is void when the find is taken back, and is told", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(60));
    shop.measure(beginCount(shop.shop, "A1"), piece, um(95'117));
    const Settled settled = shop.acceptFirst(shop.only());
    const Ordered sold = shop.order(shop.h8m1200, mm(70), 1);
    const Countered back = counterSettlement(shop.shop, settled.settlements.front());
    REQUIRE(back.voided.size() == 1);
    CHECK(back.voided.front().orders == std::vector<store::OrderId>{sold.order});
    CHECK(shop.at(piece).extent == mm(60));
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
