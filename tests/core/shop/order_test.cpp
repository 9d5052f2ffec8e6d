#include "core/shop/delivery_time.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using store::Account;
using store::OrderState;
using Why = Refusal::Why;

TEST_CASE("An order reserves trim and belts; what it promised is not offered again", "[order]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(100));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 2);
    CHECK(shop.at(ordered.order).state == OrderState::Open);
    CHECK(shop.at(piece).reserved == um(62'500));
    CHECK(shop.at(piece).extent == mm(100)); // nothing is cut yet
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), 1}});
    REQUIRE(outlook.problem.pieces.size() == 1);
    CHECK(outlook.problem.pieces.front().extent == um(37'500));
    // 37.5 - 2.5 - 30 leaves the 5 mm end: it just goes, and a second does not.
    CHECK(suggest(outlook).best.plan.unserved.empty());
    shop.order(shop.h8m1200, mm(30), 1);
    checkRefused(shop, Why::WidthTaken, [&] { shop.order(shop.h8m1200, mm(20), 1); });
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Two orders share a sleeve but never take the same width", "[order]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400));
    const Ordered first = shop.order(shop.h8m1200, mm(50), 1);
    const Ordered second = shop.order(shop.h8m1200, mm(85), 1);
    CHECK(shop.mountingOf(first).piece == piece);
    CHECK(shop.mountingOf(second).piece == piece);
    CHECK(shop.at(piece).reserved == um(52'500 + 87'500));
    SECTION("cut in the order of the tickets") {
        shop.cutAll(first);
        CHECK(shop.mountingOf(second).state == store::MountingState::Planned);
        shop.cutAll(second);
    }
    SECTION("or the other way round") {
        shop.cutAll(second);
        shop.cutAll(first);
    }
    CHECK(shop.at(piece).extent == um(400'000 - 52'500 - 87'500));
    CHECK(shop.at(first.order).state == OrderState::Ready);
    CHECK(shop.at(second.order).state == OrderState::Ready);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A narrow belt promised first keeps what must stay on the shaft for it", "[order]") {
    TestShop shop;
    // A belt of 6 needs 9 beyond it (the stub of 15 less 6), one of 20 only the end of 5.
    shop.piece(shop.h8m1200, um(8'500 + 22'500 + 9'000));
    const Ordered narrow = shop.order(shop.h8m1200, mm(6), 1);
    SECTION("9 mm are left: both can be cut, the wide one first") {
        const Ordered wide = shop.order(shop.h8m1200, mm(20), 1);
        shop.cutAll(wide);
        CHECK(shop.mountingOf(narrow).state == store::MountingState::Planned);
        CHECK(shop.cutAll(narrow).allReady());
    }
    SECTION("half a millimetre wider, and only 8.5 would be left: refused") {
        checkRefused(shop, Why::WidthTaken, [&] { shop.order(shop.h8m1200, um(20'500), 1); });
    }
}

TEST_CASE("Lines of the same belt are cut in one mounting, the narrow first", "[order]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    const Ordered ordered =
        shop.order({TestShop::line(shop.h8m1200, mm(50), 1), TestShop::line(shop.h8m1200, mm(20), 2),
                    TestShop::line(shop.h8m1200, mm(30), 1)});
    const store::TicketMounting mounting = shop.mountingOf(ordered);
    REQUIRE(mounting.cuts.size() == 3);
    CHECK(mounting.cuts[0].extent == mm(20));
    CHECK(mounting.cuts[0].count == 2);
    CHECK(mounting.cuts[1].extent == mm(30));
    CHECK(mounting.cuts[2].extent == mm(50));
    CHECK(mounting.trim == um(2'500));
    CHECK(mounting.left == um(400'000 - 2'500 - 120'000));
}

TEST_CASE("Lines of several belts are several mountings on one ticket", "[order]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    shop.piece(shop.t5x500, mm(200));
    shop.piece(shop.pj1194, ribs(60));
    const Ordered ordered =
        shop.order({TestShop::line(shop.h8m1200, mm(50), 1), TestShop::line(shop.t5x500, mm(10), 2),
                    TestShop::line(shop.pj1194, ribs(6), 1)});
    REQUIRE(ordered.ticket);
    CHECK(shop.at(*ordered.ticket).mountings.size() == 3);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Not all can be served: nothing is ordered, nothing reserved", "[order]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(100));
    checkRefused(shop, Why::WidthTaken, [&] {
        shop.order({TestShop::line(shop.h8m1200, mm(50), 1), TestShop::line(shop.t5x500, mm(10), 1)});
    });
    checkRefused(shop, Why::WidthTaken, [&] { shop.order(shop.h8m1200, mm(50), 2); });
}

TEST_CASE("What can't be a belt can't be ordered", "[order]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(100));
    checkRefused(shop, Why::BadQuantity, [&] { shop.order(std::vector<DraftLine>{}); });
    checkRefused(shop, Why::BadQuantity, [&] { shop.order(shop.h8m1200, mm(30), 0); });
    checkRefused(shop, Why::BadQuantity, [&] { shop.order(shop.h8m1200, mm(30), -3); });
    checkRefused(shop, Why::BadWidth, [&] { shop.order(shop.h8m1200, mm(0), 1); });
    checkRefused(shop, Why::UnitMixed, [&] { shop.order(shop.h8m1200, ribs(6), 1); });
    checkRefused(shop, Why::BadWidth, [&] { shop.order(shop.h8m1200, mm(100'001), 1); });
    checkRefused(shop, Why::BadQuantity, [&] { shop.order(shop.h8m1200, mm(30), 10'001); });
    checkRefused(shop, Why::BadQuantity, [&] { shop.order(shop.h8m1200, mm(50'000), 201); }); // over 10 km
    CHECK_THROWS_AS(lookAt(shop.shop, shop.pj1194, {{mm(30), 1}}), Refusal);
}

TEST_CASE("Ready belts are taken first and booked at once", "[order]") {
    TestShop shop;
    const store::PieceId belt = shop.ready(shop.h8m1200, mm(30));
    shop.piece(shop.h8m1200, mm(400));
    SECTION("an order that the shelf serves has no ticket and is ready") {
        const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
        CHECK_FALSE(ordered.ticket);
        CHECK(shop.at(ordered.order).state == OrderState::Ready);
        CHECK(shop.at(belt).gone());
        CHECK(shop.widthOn(Account::Sold) == 30'000);
    }
    SECTION("one that wants more is cut for the rest, and the ticket names the shelf belt") {
        const Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
        CHECK(shop.mountingOf(ordered).cuts.front().count == 2);
        const store::Ticket ticket = shop.at(*ordered.ticket);
        REQUIRE(ticket.taken.size() == 1);
        CHECK(ticket.taken.front().first == belt);
        CHECK(shop.lineOf(ordered.order).cut == 1);
        CHECK(shop.at(ordered.order).state == OrderState::Open);
        CHECK(shop.cutAll(ordered).allReady());
    }
    SECTION("a ready belt of another width is no help") {
        const Ordered ordered = shop.order(shop.h8m1200, mm(20), 1);
        CHECK(ordered.ticket);
        CHECK_FALSE(shop.at(belt).gone());
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("The way that the clerk chose is taken while it can be done", "[order]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(80));
    const store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400));
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), 1}});
    const Suggestion suggestion = suggest(outlook);
    REQUIRE(suggestion.others.size() == 1);
    DraftLine line = TestShop::line(shop.h8m1200, mm(30), 1);
    line.way = suggestion.others.front().plan;
    for (const cutting::Piece& piece : outlook.problem.pieces)
        line.wayPieces.push_back(piece.code);
    SECTION("it stands") {
        const Ordered ordered = shop.order({line});
        CHECK(shop.mountingOf(ordered).piece == sleeve);
        CHECK_FALSE(ordered.otherWay);
    }
    SECTION("the sleeve is gone in between: planned anew, and said so") {
        scrap(shop.shop, sleeve, mm(400), store::ScrapReason::Damaged, "");
        const Ordered ordered = shop.order({line});
        CHECK(shop.mountingOf(ordered).piece != sleeve);
        CHECK(ordered.otherWay);
    }
    SECTION("the quantity was changed after choosing: planned anew") {
        line.quantity = 2;
        CHECK(shop.order({line}).otherWay);
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A quoted or parked draft reserves nothing and comes back as it was", "[order]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(100));
    Draft draft{
        {TestShop::line(shop.h8m1200, mm(30), 2)}, "Packaging plant", "0123", std::nullopt, "by four"};
    const store::OrderId parked = park(shop.shop, draft);
    const store::OrderId quoted = quote(shop.shop, draft);
    CHECK(shop.at(parked).state == OrderState::Parked);
    CHECK(shop.at(quoted).state == OrderState::Quoted);
    CHECK(shop.at(piece).reserved.isNone());
    // 2 x 30 mm x 0.51 = 30.60 and twice 2.50 for cutting.
    CHECK(shop.lineOf(quoted).price.total == Money::minor(3560));
    const Draft again = resume(shop.shop, parked);
    CHECK(again.customer == "Packaging plant");
    CHECK(again.phone == "0123");
    CHECK(again.note == "by four");
    REQUIRE(again.lines.size() == 1);
    CHECK(again.lines.front().belt == shop.h8m1200);
    CHECK(again.lines.front().extent == mm(30));
    CHECK(again.lines.front().quantity == 2);
    SECTION("booked it is the same order, as it is now") {
        Draft more = again;
        more.lines.front().quantity = 1;
        more.lines.push_back(TestShop::line(shop.h8m1200, mm(20), 1));
        more.note = "at once";
        const Ordered ordered = order(shop.shop, more, parked);
        CHECK(ordered.order == parked);
        const store::Order now = shop.at(parked);
        CHECK(now.state == OrderState::Open);
        CHECK(now.note == "at once");
        REQUIRE(now.lines.size() == 2);
        CHECK(now.lines[0].quantity == 1);
        CHECK(now.lines[1].extent == mm(20));
        checkRefused(shop, Why::AlreadyDone, [&] { order(shop.shop, again, parked); });
        checkRefused(shop, Why::AlreadyDone, [&] { resume(shop.shop, parked); });
    }
    SECTION("parked again it keeps its number") {
        CHECK(park(shop.shop, again, parked) == parked);
        CHECK(shop.at(parked).state == OrderState::Parked);
        CHECK(quote(shop.shop, again, parked) == parked);
        CHECK(shop.at(parked).state == OrderState::Quoted);
    }
    SECTION("a parked order that can't be served stays parked") {
        scrap(shop.shop, piece, mm(100), store::ScrapReason::Damaged, "");
        checkRefused(shop, Why::WidthTaken, [&] { order(shop.shop, again, parked); });
        CHECK(shop.at(parked).state == OrderState::Parked);
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A quote knows which of its lines are here, and how long the others take to come", "[order]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    const auto daysOf = [&](std::int64_t belts) {
        const store::OrderId id = quote(shop.shop, {.lines = {TestShop::line(shop.h8m1200, mm(30), belts),
                                                              TestShop::line(shop.t5x500, mm(25), 1)}});
        return deliveryDays(shop.shop, shop.at(id));
    };
    const int usual = store::Settings{shop.connection}.read().buying.deliveryDays;
    CHECK(daysOf(3) == std::vector{0, usual});
    store::StockedBelt t5 = store::Catalogue{shop.connection}.find(shop.t5x500).value();
    t5.deliveryDays = 12;
    store::Catalogue{shop.connection}.change(t5);
    CHECK(daysOf(20) == std::vector{usual, 12}); // 600 mm
    CHECK(store::Tickets{shop.connection}.inState(store::TicketState::Open).empty());
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Only a finished order is handed over, and only once", "[order]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(100));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    checkRefused(shop, Why::NotAllCut, [&] { handOver(shop.shop, ordered.order); });
    shop.cutAll(ordered);
    handOver(shop.shop, ordered.order);
    CHECK(shop.at(ordered.order).state == OrderState::HandedOver);
    checkRefused(shop, Why::AlreadyDone, [&] { handOver(shop.shop, ordered.order); });
    checkRefused(shop, Why::AlreadyDone, [&] { cancel(shop.shop, ordered.order); });
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Waiting orders are cut together: one mounting and one trim for all", "[order]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400));
    const Ordered first = shop.order(shop.h8m1200, mm(30), 1);
    const Ordered second = shop.order(shop.h8m1200, mm(50), 2);
    CHECK(shop.at(piece).reserved == um(32'500 + 102'500));
    const Ordered joint = together(shop.shop, {first.order, second.order});
    const store::TicketMounting mounting = shop.mountingOf(joint);
    CHECK(shop.at(piece).reserved == um(132'500));
    CHECK(shop.at(*first.ticket).state == store::TicketState::Void);
    CHECK(shop.at(*second.ticket).state == store::TicketState::Void);
    SECTION("the cut makes both ready") {
        recordCut(shop.shop, {mounting.id, {}, {}, ""});
        CHECK(shop.at(first.order).state == OrderState::Ready);
        CHECK(shop.at(second.order).state == OrderState::Ready);
    }
    SECTION("one is cancelled: the other is planned again without it") {
        cancel(shop.shop, first.order);
        CHECK(shop.at(piece).reserved == um(102'500));
        CHECK(shop.at(second.order).state == OrderState::Open);
        CHECK(missing(shop.shop).empty());
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
