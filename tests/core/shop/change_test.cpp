#include "core/shop/change.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using store::Account;
using store::OrderState;
using Why = Refusal::Why;

namespace {

/// Three belts of 30 mm from a sleeve of 400, and another line of 50 mm.
struct TwoLines {
    TestShop shop;
    store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    Ordered ordered =
        shop.order({TestShop::line(shop.h8m1200, mm(30), 3), TestShop::line(shop.h8m1200, mm(50), 1)});
    store::OrderLine line(std::size_t i) { return shop.at(ordered.order).lines[i]; }
};

} // namespace

TEST_CASE("Changed mind before the cut: two instead of three, and 25 instead of 30", "[change]") {
    TwoLines t;
    const Ordered changed = change(t.shop.shop, t.line(0).id, mm(25), 2);
    CHECK(t.line(0).extent == mm(25));
    CHECK(t.line(0).quantity == 2);
    // 2 x 25 mm x 0.51 = 25.50 and twice 2.50.
    CHECK(t.line(0).price.total == Money::minor(3050));
    CHECK(t.shop.at(*t.ordered.ticket).state == store::TicketState::Void);
    CHECK(t.shop.mountingOf(changed).cuts.size() == 2); // the other line is on the new ticket, too
    CHECK(t.shop.at(t.sleeve).reserved == um(2'500 + 50'000 + 50'000));
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("A change of what is cut together opens no sleeve that nobody was to cut", "[change]") {
    TestShop shop;
    const store::PieceId begun = shop.remnant(shop.h8m1200, mm(141));
    const Ordered first = shop.order(shop.h8m1200, mm(30), 3);
    const Ordered other = shop.order(shop.h8m1200, mm(20), 1);
    const store::PieceId whole = shop.piece(shop.h8m1200, mm(470));
    const Ordered joint = together(shop.shop, {first.order, other.order});
    REQUIRE(shop.mountingOf(joint).piece == begun);
    const store::LineId line = shop.lineOf(first.order).id;
    // 2.5 + 2 x 54 + 20 leave 10.5 of it, a dead end: by its worth alone the sleeve were the better piece.
    const ChangePlan plan = planChange(shop.shop, line, mm(54), 2);
    CHECK(plan.opened.empty());
    const Ordered changed = change(shop.shop, line, mm(54), 2);
    CHECK(shop.mountingOf(changed).piece == begun);
    CHECK(shop.at(whole).reserved.isNone());
    SECTION("where what is begun does not give it, the sleeve is opened") {
        CHECK(planChange(shop.shop, line, mm(60), 3).opened.size() == 1);
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Changed mind after a part was cut: what was cut stays if the width is the same", "[change]") {
    TwoLines t;
    recordMiscut(t.shop.shop, {t.shop.mountingOf(t.ordered).id, {1, 0}, mm(29), um(338'500), ""});
    CHECK(t.line(0).cut == 1);
    SECTION("two instead of three: one more is to be cut") {
        const Ordered changed = change(t.shop.shop, t.line(0).id, mm(30), 2);
        CHECK(t.line(0).cut == 1);
        CHECK(t.shop.mountingOf(changed).cuts.front().count == 1);
        CHECK(t.shop.widthOn(Account::Ready) == 0);
    }
    SECTION("25 instead of 30: the belt of 30 becomes a ready belt") {
        change(t.shop.shop, t.line(0).id, mm(25), 2);
        CHECK(t.line(0).cut == 0);
        CHECK(t.shop.widthOn(Account::Ready) == 30'000);
        CHECK(t.shop.widthOn(Account::Sold) == 0);
        CHECK(t.shop.costOn(Account::Ready) == 600);
    }
    SECTION("none at all: the other line still stands") {
        change(t.shop.shop, t.line(0).id, mm(30), 0);
        CHECK(t.line(0).cancelled == 3);
        CHECK(t.line(0).price.total == Money::minor(0));
        CHECK(t.shop.widthOn(Account::Ready) == 30'000);
        CHECK(t.shop.at(t.ordered.order).state == OrderState::Open);
    }
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("Fewer than were cut: the surplus goes to the shelf and the order is ready", "[change]") {
    TestShop shop;
    const store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
    shop.cutAll(ordered);
    const Ordered changed = change(shop.shop, shop.lineOf(ordered.order).id, mm(30), 2);
    CHECK_FALSE(changed.ticket);
    REQUIRE(changed.shelf.size() == 1); // to be labelled
    CHECK(shop.at(changed.shelf.front()).extent == mm(30));
    CHECK(shop.at(ordered.order).state == OrderState::Ready);
    CHECK(shop.widthOn(Account::Ready) == 30'000);
    CHECK(shop.widthOn(Account::Sold) == 60'000);
    SECTION("and the surplus is what the next customer gets first") {
        CHECK_FALSE(shop.order(shop.h8m1200, mm(30), 1).ticket);
    }
    SECTION("more than before: the order is open again, the shelf belt comes back to it") {
        const Ordered more = change(shop.shop, shop.lineOf(ordered.order).id, mm(30), 4);
        CHECK(shop.mountingOf(more).cuts.front().count == 1);
        CHECK(shop.at(ordered.order).state == OrderState::Open);
        CHECK(shop.mountingOf(more).piece == sleeve);
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A change that can't be served changes nothing: the old ticket stands", "[change]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(100));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 2);
    const store::LineId line = shop.lineOf(ordered.order).id;
    checkRefused(shop, Why::WidthTaken, [&] { change(shop.shop, line, mm(50), 2); });
    checkRefused(shop, Why::BadQuantity, [&] { change(shop.shop, line, mm(30), -1); });
    checkRefused(shop, Why::BadWidth, [&] { change(shop.shop, line, mm(0), 1); });
    checkRefused(shop, Why::UnitMixed, [&] { change(shop.shop, line, ribs(3), 1); });
    CHECK(shop.at(*ordered.ticket).state == store::TicketState::Open);
}

TEST_CASE("A change that changes nothing leaves the ticket and the rack as they are", "[change]") {
    TwoLines t;
    const std::string before = t.shop.everything();
    CHECK(change(t.shop.shop, t.line(0).id, mm(30), 3).ticket == t.ordered.ticket);
    CHECK(t.shop.everything() == before);
}

TEST_CASE("No belt is wider than the widest sleeve that is made or lies here", "[change]") {
    TwoLines t;
    const Extent made = t.shop.shop.tables->widestSleeve("H8M");
    CHECK(widestBelt(t.shop.shop, t.line(0).belt) == made);
    checkRefused(t.shop, Why::BadWidth, [&] { change(t.shop.shop, t.line(0).id, mm(5000), 2); });
    t.shop.piece(t.shop.h8m1200, made + mm(100));
    CHECK(widestBelt(t.shop.shop, t.line(0).belt) == made + mm(100));
    change(t.shop.shop, t.line(0).id, made + mm(50), 1);
    CHECK(t.line(0).extent == made + mm(50));
}

TEST_CASE("A changed line is planned without belts for the shelf: nobody was asked", "[change]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(59));
    const Ordered ordered = shop.order(shop.h8m1200, mm(25), 1);
    const auto plan = planChange(shop.shop, shop.lineOf(ordered.order).id, mm(30), 1);
    CHECK(shop.suggestFor(shop.h8m1200, mm(30), 1).best.plan.mountings.empty()); // it is promised
    const Ordered changed = change(shop.shop, shop.lineOf(ordered.order).id, mm(30), 1);
    const store::TicketMounting mounting = shop.mountingOf(changed);
    REQUIRE(mounting.cuts.size() == 1); // as it was ordered, 20 for the shelf would fill it up
    CHECK(mounting.cuts.front().line);
    REQUIRE(plan.mountings.size() == 1);
    CHECK(plan.mountings.front().stops == std::vector<Extent>{mm(30)});
    CHECK(shop.disagreements().empty());
}

TEST_CASE("What a change would open is known before it is done", "[change]") {
    TestShop shop;
    const store::PieceId remnant = shop.remnant(shop.h8m1200, mm(60));
    const store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    REQUIRE(shop.mountingOf(ordered).piece == remnant);
    const store::LineId line = shop.lineOf(ordered.order).id;
    const std::string before = shop.everything();
    const ChangePlan wider = planChange(shop.shop, line, mm(100), 1);
    CHECK(shop.everything() == before);
    REQUIRE(wider.opened.size() == 1);
    CHECK(wider.opened.front().id == sleeve);
    CHECK(planChange(shop.shop, line, mm(29), 1).opened.empty()); // the remnant gives that
    CHECK(planChange(shop.shop, line, mm(30), 0).mountings.empty());
    checkRefused(shop, Why::WidthTaken, [&] { planChange(shop.shop, line, mm(300), 2); });
    change(shop.shop, line, mm(100), 1);
    CHECK(planChange(shop.shop, line, mm(110), 1).opened.empty()); // it is on the ticket already
}

TEST_CASE("What is free again by the change itself can be used for it", "[change]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(100)); // 2.5 + 30 now; 2.5 + 90 and the end of 5 fit only without it
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    change(shop.shop, shop.lineOf(ordered.order).id, mm(45), 2);
    CHECK(shop.lineOf(ordered.order).quantity == 2);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A cancelled order frees its width", "[change]") {
    TwoLines t;
    CHECK(cancel(t.shop.shop, t.ordered.order).empty());
    CHECK(t.shop.at(t.ordered.order).state == OrderState::Cancelled);
    CHECK(t.shop.at(*t.ordered.ticket).state == store::TicketState::Void);
    CHECK(t.shop.at(t.sleeve).reserved.isNone());
    CHECK(t.shop.at(t.sleeve).extent == mm(400));
    checkRefused(t.shop, Why::AlreadyDone, [&] { cancel(t.shop.shop, t.ordered.order); });
    checkRefused(t.shop, Why::AlreadyDone, [&] { change(t.shop.shop, t.line(0).id, mm(30), 1); });
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("Belts already cut of a cancelled order become ready belts with their cost", "[change]") {
    TwoLines t;
    recordCut(t.shop.shop, {t.shop.mountingOf(t.ordered).id, {}, {}, ""});
    const std::vector<store::PieceId> shelf = cancel(t.shop.shop, t.ordered.order);
    REQUIRE(shelf.size() == 4);
    for (const store::PieceId id : shelf) {
        CHECK(t.shop.at(id).kind == cutting::PieceKind::Ready);
        CHECK(t.shop.at(id).parent == t.sleeve);
    }
    CHECK(t.shop.at(shelf[0]).extent == mm(30));
    CHECK(t.shop.at(shelf[3]).extent == mm(50));
    // 0.20 a millimetre.
    CHECK(t.shop.at(shelf[0]).cost == Money::minor(600));
    CHECK(t.shop.at(shelf[3]).cost == Money::minor(1000));
    CHECK(t.shop.widthOn(Account::Sold) == 0);
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("A belt from the shelf goes back under its own code when its order is cancelled", "[change]") {
    TestShop shop;
    const store::PieceId belt = shop.piece(shop.h8m1200, mm(30), cutting::PieceKind::Ready, 555);
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    CHECK(shop.at(belt).gone());
    CHECK(cancel(shop.shop, ordered.order) == std::vector<store::PieceId>{belt});
    CHECK(shop.at(belt).extent == mm(30));
    CHECK(shop.at(belt).cost == Money::minor(555));
    SECTION("and can be sold and come back again") {
        const Ordered next = shop.order(shop.h8m1200, mm(30), 1);
        CHECK(cancel(shop.shop, next.order) == std::vector<store::PieceId>{belt});
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A parked order is cancelled or changed without touching the rack", "[change]") {
    TestShop shop;
    const Draft draft{{TestShop::line(shop.h8m1200, mm(30), 2)}, "", "", std::nullopt, ""};
    const store::OrderId parked = park(shop.shop, draft);
    change(shop.shop, shop.lineOf(parked).id, mm(20), 5);
    CHECK(shop.lineOf(parked).quantity == 5);
    CHECK(cancel(shop.shop, parked).empty());
    CHECK(shop.at(parked).state == OrderState::Cancelled);
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
