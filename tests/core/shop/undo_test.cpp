#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using store::Account;
using store::OrderState;
using Why = Refusal::Why;

namespace {

/// Three belts of 30 mm and one of 20 for the shelf, cut from a sleeve of 400 that cost 80.00.
struct JustCut {
    TestShop shop;
    store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
    store::MountingId mounting = shop.mountingOf(ordered).id;
    CutDone done = recordCut(shop.shop, {mounting, mm(280), std::nullopt, "", {{mm(20), 1}}});

    std::function<void()> undo() {
        return [this] { undoCut(shop.shop, mounting); };
    }
};

} // namespace

TEST_CASE("A cut that was entered wrongly is taken back and entered anew", "[undo]") {
    JustCut t;
    undoCut(t.shop.shop, t.mounting);
    CHECK(t.shop.at(t.sleeve).extent == mm(400));
    CHECK(t.shop.at(t.sleeve).cost == Money::minor(8000));
    CHECK(t.shop.at(t.done.shelf.front()).gone());
    CHECK(t.shop.widthOn(Account::Sold) == 0);
    CHECK(t.shop.widthOn(Account::Difference) == 0);
    CHECK(t.shop.lineOf(t.ordered.order).cut == 0);
    CHECK(t.shop.at(t.ordered.order).state == OrderState::Open);
    CHECK(t.shop.at(*t.ordered.ticket).state == store::TicketState::Open);
    CHECK(t.shop.at(t.sleeve).reserved == um(92'500));
    CHECK(t.shop.disagreements().empty());
    checkRefused(t.shop, Why::NothingToCut, t.undo());
    CHECK(recordCut(t.shop.shop, {t.mounting}).allReady());
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("What something was done with since can't be taken back", "[undo]") {
    JustCut t;
    SECTION("the rest was cut again") {
        t.shop.cutAll(t.shop.order(t.shop.h8m1200, mm(50), 1));
        checkRefused(t.shop, Why::AlreadyDone, t.undo());
    }
    SECTION("the belt for the shelf was sold") {
        t.shop.order(t.shop.h8m1200, mm(20), 1);
        checkRefused(t.shop, Why::AlreadyDone, t.undo());
    }
    SECTION("the order was handed over") {
        handOver(t.shop.shop, t.ordered.order);
        checkRefused(t.shop, Why::AlreadyDone, t.undo());
    }
    SECTION("the order was cancelled, its belts are on the shelf") {
        cancel(t.shop.shop, t.ordered.order);
        checkRefused(t.shop, Why::AlreadyDone, t.undo());
    }
}

TEST_CASE("A miscut stays booked: what was spoiled is spoiled", "[undo]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    const store::MountingId mounting = shop.mountingOf(shop.order(shop.h8m1200, mm(30), 3)).id;
    recordMiscut(shop.shop, {mounting, {1}, mm(28), mm(339), ""});
    checkRefused(shop, Why::NothingToCut, [&] { undoCut(shop.shop, mounting); });
}

TEST_CASE("Taken back even where more was left than the figures said, if the promises hold", "[undo]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(100));
    const Ordered first = shop.order(shop.h8m1200, mm(30), 1);
    const store::MountingId mounting = shop.mountingOf(first).id;
    recordCut(shop.shop, {mounting, mm(80)}); // 67.5 by the figures
    SECTION("nobody uses what was found") {
        undoCut(shop.shop, mounting);
        CHECK(shop.at(piece).extent == mm(100));
        CHECK(shop.disagreements().empty());
    }
    SECTION("an order counts on it: 32.5 and 72.5 are more than 100") {
        shop.order(shop.h8m1200, mm(70), 1);
        checkRefused(shop, Why::PieceReserved, [&] { undoCut(shop.shop, mounting); });
    }
}

} // namespace riband::shop
