#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using store::Account;
using store::OrderState;
using Why = Refusal::Why;

namespace {

/// A sleeve of 400 mm that cost 80.00 and an order of three belts of 30 mm from it.
struct ThreeFromASleeve {
    TestShop shop;
    store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
    store::MountingId mounting = shop.mountingOf(ordered).id;

    CutRecord record(std::optional<Extent> left = {}) { return {mounting, left, {}, ""}; }
    void checkCosts(std::int64_t rack, std::int64_t sold, std::int64_t trim, std::int64_t difference) {
        CHECK(shop.costOn(Account::Rack) == rack);
        CHECK(shop.costOn(Account::Sold) == sold);
        CHECK(shop.costOn(Account::Trim) == trim);
        CHECK(shop.costOn(Account::Difference) == difference);
    }
};

} // namespace

TEST_CASE("A cut books trim, belts and rest; the cost goes with the width", "[cut]") {
    ThreeFromASleeve t;
    const CutDone done = recordCut(t.shop.shop, t.record());
    CHECK(t.shop.at(t.sleeve).extent == um(307'500));
    CHECK(t.shop.widthOn(Account::Sold) == 90'000);
    CHECK(t.shop.widthOn(Account::Trim) == 2'500);
    CHECK(done.difference == 0);
    CHECK(done.allReady());
    // 80.00 / 400 mm is 0.20 a millimetre.
    t.checkCosts(6150, 1800, 50, 0);
    CHECK(t.shop.lineOf(t.ordered.order).cut == 3);
    CHECK(t.shop.at(t.ordered.order).state == OrderState::Ready);
    CHECK(t.shop.at(*t.ordered.ticket).state == store::TicketState::Cut);
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("A sleeve that was cut is a remnant under its own code, at the place said", "[cut]") {
    ThreeFromASleeve t;
    const std::string code = t.shop.at(t.sleeve).code;
    CutRecord record = t.record();
    record.place = "R2-1";
    const CutDone done = recordCut(t.shop.shop, record);
    CHECK(done.remnant == t.sleeve);
    CHECK(t.shop.at(t.sleeve).code == code);
    CHECK(t.shop.at(t.sleeve).kind == cutting::PieceKind::Remnant);
    CHECK(t.shop.at(t.sleeve).place == "R2-1");
}

TEST_CASE("What was really left is booked; what is missing is a difference with its cost", "[cut]") {
    ThreeFromASleeve t;
    const CutDone done = recordCut(t.shop.shop, t.record(mm(306)));
    CHECK(done.difference == -1'500);
    CHECK(t.shop.at(t.sleeve).extent == mm(306));
    CHECK(t.shop.widthOn(Account::Difference) == 1'500);
    t.checkCosts(6120, 1800, 50, 30);
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("More left than the figures say is width that was in no book: it has no cost of its own", "[cut]") {
    ThreeFromASleeve t;
    const CutDone done = recordCut(t.shop.shop, t.record(mm(309)));
    CHECK(done.difference == 1'500);
    CHECK(t.shop.widthOn(Account::Difference) == -1'500);
    // 80.00 over 401.5 mm: 309 mm 61.569, with 90 mm more 79.502, all 80.00.
    t.checkCosts(6157, 1793, 50, 0);
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("A cut is refused where the figures can't be, and nothing is booked", "[cut]") {
    ThreeFromASleeve t;
    const auto left = [&](Extent extent) {
        return [&t, extent] { recordCut(t.shop.shop, t.record(extent)); };
    };
    checkRefused(t.shop, Why::MoreThanThere, left(mm(400)));
    checkRefused(t.shop, Why::MoreThanThere, left(mm(500)));
    checkRefused(t.shop, Why::UnitMixed, left(ribs(20)));
    recordCut(t.shop.shop, t.record());
    checkRefused(t.shop, Why::AlreadyCut, left(mm(200)));
}

TEST_CASE("A rest too narrow to be held is thrown away: the end allowance, and more as a stub", "[cut]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(105));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
    const CutDone done = recordCut(shop.shop, {shop.mountingOf(ordered).id, {}, true, ""});
    CHECK_FALSE(done.remnant);
    CHECK(shop.at(piece).gone());
    CHECK(shop.widthOn(Account::End) == 5'000);
    CHECK(shop.widthOn(Account::Scrap) == 7'500);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A rest can be thrown away by will, unless other tickets need it", "[cut]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(200));
    const Ordered first = shop.order(shop.h8m1200, mm(30), 1);
    const CutRecord throwAway{shop.mountingOf(first).id, {}, false, ""};
    SECTION("nobody needs it") {
        recordCut(shop.shop, throwAway);
        CHECK(shop.at(piece).gone());
        CHECK(shop.widthOn(Account::End) == 5'000);
        CHECK(shop.widthOn(Account::Scrap) == 200'000 - 2'500 - 30'000 - 5'000);
    }
    SECTION("another ticket does") {
        shop.order(shop.h8m1200, mm(50), 1);
        checkRefused(shop, Why::PieceReserved, [&] { recordCut(shop.shop, throwAway); });
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Ribs are cut and booked as whole ribs", "[cut]") {
    TestShop shop;
    const store::PieceId sleeve = shop.piece(shop.pj1194, ribs(60), cutting::PieceKind::Sleeve, 6000);
    const Ordered ordered = shop.order(shop.pj1194, ribs(6), 2);
    shop.cutAll(ordered);
    CHECK(shop.at(sleeve).extent == ribs(47)); // 60 - 1 - 12
    CHECK(shop.widthOn(Account::Trim) == 1);
    CHECK(shop.widthOn(Account::Sold) == 12);
    CHECK(shop.costOn(Account::Rack) == 4700);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Every belt of a blade that turns width to nothing pays its kerf", "[cut]") {
    TestShop shop;
    store::ShopSettings settings = store::Settings{shop.connection}.read();
    settings.toothed.kerf = um(500);
    {
        store::Transaction transaction{shop.connection};
        store::Settings{shop.connection}.write(settings);
        transaction.commit();
    }
    const store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400));
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 3));
    CHECK(shop.at(sleeve).extent == um(400'000 - 2'500 - 90'000 - 1'500));
    CHECK(shop.widthOn(Account::Kerf) == 1'500);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Belts cut for the shelf in the same mounting pay no second trim", "[cut]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, um(62'500));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    CutRecord record{shop.mountingOf(ordered).id, {}, {}, ""};
    record.forShelf = {{mm(20), 1}};
    const CutDone done = recordCut(shop.shop, record); // 62.5 - 2.5 - 30 - 20 leaves 10
    REQUIRE(done.shelf.size() == 1);
    const store::StockPiece belt = shop.at(done.shelf.front());
    CHECK(belt.kind == cutting::PieceKind::Ready);
    CHECK(belt.extent == mm(20));
    CHECK(belt.parent == piece);
    CHECK(shop.at(piece).gone());
    CHECK(shop.widthOn(Account::End) == 5'000);
    CHECK(shop.disagreements().empty());
    CHECK(shop.suggestFor(shop.h8m1200, mm(20), 1).best.reason.kind == Reason::Kind::FromShelf);
}

TEST_CASE("A measured rest that can't give another ticket's belts makes that mounting void", "[cut]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(100));
    const Ordered first = shop.order(shop.h8m1200, mm(30), 1);  // 32.5
    const Ordered second = shop.order(shop.h8m1200, mm(50), 1); // 52.5, leaving 15
    const auto cutFirst = [&](Extent left) {
        return recordCut(shop.shop, {shop.mountingOf(first).id, left, {}, ""});
    };
    SECTION("57.5 is just enough: 52.5 and the end of 5") {
        CHECK(cutFirst(um(57'500)).voided.empty());
        CHECK(missing(shop.shop).empty());
    }
    SECTION("57.4 is not") {
        const CutDone done = cutFirst(um(57'400));
        REQUIRE(done.voided.size() == 1);
        CHECK(done.voided.front().mounting == shop.mountingOf(second).id);
        CHECK(done.voided.front().orders == std::vector<store::OrderId>{second.order});
        CHECK(shop.at(*second.ticket).state == store::TicketState::Void);
        CHECK(shop.at(second.order).state == OrderState::Open);
        const std::vector<Missing> rows = missing(shop.shop);
        REQUIRE(rows.size() == 1);
        CHECK(rows.front().order == second.order);
        CHECK(rows.front().belts == 1);
        SECTION("with a new sleeve it is planned again") {
            const store::PieceId sleeve = shop.piece(shop.h8m1200, mm(400));
            const Planned planned = planMissing(shop.shop, second.order);
            REQUIRE(planned.ticket);
            CHECK(planned.unserved.empty());
            CHECK(shop.at(*planned.ticket).mountings.front().piece == sleeve);
            checkRefused(shop, Why::NothingToCut, [&] { planMissing(shop.shop, second.order); });
        }
        SECTION("without one it still misses its belt") {
            const Planned planned = planMissing(shop.shop, second.order);
            CHECK_FALSE(planned.ticket);
            CHECK(planned.unserved == std::vector<store::LineId>{shop.lineOf(second.order).id});
        }
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A void mounting can't be cut", "[cut]") {
    ThreeFromASleeve t;
    cancel(t.shop.shop, t.ordered.order);
    checkRefused(t.shop, Why::AlreadyDone, [&] { recordCut(t.shop.shop, t.record()); });
}

TEST_CASE("By the book too narrow for its ticket: a cut without a measured rest is refused", "[cut]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400));
    const Ordered ordered = shop.order({TestShop::line(shop.h8m1200, mm(30), 1)});
    CutRecord record{shop.mountingOf(ordered).id, {}, {}, ""};
    record.forShelf = {{mm(50), 8}};
    checkRefused(shop, Why::TooNarrow, [&] { recordCut(shop.shop, record); });
    CHECK(shop.at(piece).extent == mm(400));
}

TEST_CASE("A miscut: what was cut well counts, the spoiled belt is scrap, the missing are planned again",
          "[cut]") {
    ThreeFromASleeve t;
    // The second belt came out 28.6; 400 - 2.5 - 30 - 28.6 = 338.9 are left.
    const Replanned replanned =
        recordMiscut(t.shop.shop, {t.mounting, {1}, um(28'600), um(338'900), "the blade drifted"});
    CHECK(t.shop.widthOn(Account::Sold) == 30'000);
    CHECK(t.shop.widthOn(Account::Scrap) == 28'600);
    CHECK(t.shop.widthOn(Account::Difference) == 0);
    CHECK(t.shop.at(t.sleeve).extent == um(338'900));
    CHECK(replanned.unserved.empty());
    REQUIRE(replanned.ticket);
    const store::Ticket again = t.shop.at(*replanned.ticket);
    REQUIRE(again.mountings.size() == 1);
    CHECK(again.mountings.front().piece == t.sleeve);
    CHECK(again.mountings.front().cuts.front().count == 2);
    CHECK(t.shop.at(t.ordered.order).state == OrderState::Open);
    CHECK(t.shop.lineOf(t.ordered.order).cut == 1);
    CHECK(t.shop.disagreements().empty());
    recordCut(t.shop.shop, {again.mountings.front().id, {}, {}, ""});
    CHECK(t.shop.at(t.ordered.order).state == OrderState::Ready);
    CHECK(t.shop.disagreements().empty());
}

TEST_CASE("After a miscut that leaves too little the order stands and misses belts", "[cut]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(105));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
    // Two good, one spoiled: 12.5 are left, which no belt can come from.
    const Replanned replanned =
        recordMiscut(shop.shop, {shop.mountingOf(ordered).id, {2}, mm(30), um(12'500), ""});
    CHECK_FALSE(replanned.ticket);
    CHECK_FALSE(replanned.remnant);
    CHECK(replanned.unserved == std::vector<store::LineId>{shop.lineOf(ordered.order).id});
    CHECK(shop.at(ordered.order).state == OrderState::Open);
    CHECK(missing(shop.shop).size() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("After a miscut nothing is planned for the shelf beside: nobody was asked", "[cut]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(64));
    const store::TicketMounting before = shop.mountingOf(shop.order(shop.h8m1200, mm(30), 1));
    const std::vector<std::int64_t> good(before.cuts.size(), 0);
    const Replanned replanned = recordMiscut(shop.shop, {before.id, good, mm(2), mm(59), ""});
    REQUIRE(replanned.ticket);
    const store::TicketMounting again = shop.at(*replanned.ticket).mountings.front();
    REQUIRE(again.cuts.size() == 1); // as it was ordered, 20 for the shelf would fill it up
    CHECK(again.cuts.front().line);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A miscut names belts of its mounting, and at least one that was not well cut", "[cut]") {
    ThreeFromASleeve t;
    const auto miscut = [&](std::vector<std::int64_t> good, Extent spoiled, Extent left) {
        return [&t, good, spoiled, left] {
            recordMiscut(t.shop.shop, {t.mounting, good, spoiled, left, ""});
        };
    };
    checkRefused(t.shop, Why::BadQuantity, miscut({3}, mm(28), mm(300)));
    checkRefused(t.shop, Why::BadQuantity, miscut({4}, mm(28), mm(300)));
    checkRefused(t.shop, Why::BadQuantity, miscut({-1}, mm(28), mm(300)));
    checkRefused(t.shop, Why::BadQuantity, miscut({1, 1}, mm(28), mm(300)));
    checkRefused(t.shop, Why::BadWidth, miscut({1}, mm(0), mm(300)));
    checkRefused(t.shop, Why::UnitMixed, miscut({1}, ribs(3), mm(300)));
    checkRefused(t.shop, Why::MoreThanThere, miscut({1}, mm(28), mm(400)));
}

} // namespace riband::shop
