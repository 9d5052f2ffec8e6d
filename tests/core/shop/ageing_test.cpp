#include "core/shop/ageing.h"
#include "core/shop/shelf_life.h"
#include "core/shop/shelf_ticket.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

using std::chrono::days;
using Why = Refusal::Why;

namespace {

constexpr Date on(int year, unsigned month, unsigned day) {
    return std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day};
}

store::PieceId madeOn(TestShop& shop, const belt::Belt& belt, Extent extent, Date made) {
    Delivery delivery{.belt = belt, .extent = extent, .costEach = Money::minor(1000)};
    delivery.made = made;
    return receive(shop.shop, {delivery}).front();
}

const AgeingPiece* rowOf(const std::vector<AgeingPiece>& rows, store::PieceId piece) {
    for (const AgeingPiece& row : rows)
        if (row.piece.id == piece) return &row;
    return nullptr;
}

} // namespace

TEST_CASE("A body may lie as long as ISO 2230:2002 says, and half of that again once it was inspected",
          "[ageing]") {
    TestShop shop; // 2 March 2026
    // H8M is rubber: 7 years and 3. T5 is polyurethane: 5 years and 2.
    const store::PieceId rubber = madeOn(shop, shop.h8m1200, mm(100), on(2019, 3, 1));
    const store::PieceId poly = madeOn(shop, shop.t5x500, mm(100), on(2021, 5, 20));
    const store::PieceId young = madeOn(shop, shop.h8m1200, mm(100), on(2024, 3, 1));
    const auto rows = ageing(shop.shop, days{180});
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].piece.id == rubber);
    CHECK(rows[0].useBy == on(2026, 3, 1));
    CHECK(rows[1].piece.id == poly);
    CHECK(rows[1].useBy == on(2026, 5, 20));
    CHECK_FALSE(rowOf(ageing(shop.shop, days{0}), poly));

    CHECK(inspect(shop.shop, rubber, true, "supple") == on(2029, 3, 1));
    CHECK(inspect(shop.shop, poly, true, "") == on(2028, 5, 20));
    CHECK(ageing(shop.shop, days{180}).empty());
    checkRefused(shop, Why::ExtendedAlready, [&] { inspect(shop.shop, rubber, true, ""); });
    checkRefused(shop, Why::NotAged, [&] { inspect(shop.shop, young, true, ""); });
    CHECK_FALSE(inspect(shop.shop, rubber, false, "cracks"));
    const auto after = ageing(shop.shop, days{180});
    REQUIRE(after.size() == 1);
    CHECK(after[0].refused);
}

TEST_CASE("An inspection that was a mistake is taken back, and stays to be seen", "[ageing]") {
    TestShop shop;
    const store::PieceId rubber = madeOn(shop, shop.h8m1200, mm(100), on(2019, 3, 1));
    checkRefused(shop, Why::ActStays, [&] { undoInspection(shop.shop, rubber); });
    inspect(shop.shop, rubber, true, "wrong key");
    undoInspection(shop.shop, rubber);
    const auto rows = ageing(shop.shop, days{180});
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].useBy == on(2026, 3, 1));
    CHECK_FALSE(rows[0].extended);
    CHECK(inspect(shop.shop, rubber, true, "") == on(2029, 3, 1)); // once, since the first does not count
    const auto seen = store::Upkeep{shop.connection}.inspectionsOf(rubber);
    REQUIRE(seen.size() == 2);
    CHECK(seen[0].takenBack);
    CHECK_FALSE(seen[1].takenBack);
}

TEST_CASE("How long a body may lie is the shop's own, and a belt's own body goes before the usual one",
          "[ageing]") {
    TestShop shop;
    store::People people{shop.connection};
    store::Person owner = people.at(shop.shop.person);
    owner.role = store::Role::Clerk;
    people.change(owner);
    checkRefused(shop, Why::NotTheirs, [&] { setShelfLives(shop.shop, {{"rubber", {6, 2}}}); });
    owner.role = store::Role::Owner;
    people.change(owner);
    checkRefused(shop, Why::BadQuantity, [&] { setShelfLives(shop.shop, {{"rubber", {0, 2}}}); });
    checkRefused(shop, Why::BadQuantity, [&] { setShelfLives(shop.shop, {{"cheese", {1, 2}}}); });

    const store::PieceId rubber = madeOn(shop, shop.h8m1200, mm(100), on(2020, 3, 10));
    CHECK(ageing(shop.shop, days{180}).empty()); // 7 years
    setShelfLives(shop.shop, {{"rubber", {6, 1}}});
    REQUIRE(ageing(shop.shop, days{180}).size() == 1);
    CHECK(ageing(shop.shop, days{180}).front().useBy == on(2026, 3, 10));
    CHECK(inspect(shop.shop, rubber, true, "") == on(2027, 3, 10));

    store::StockedBelt belt = store::Catalogue{shop.connection}.at(shop.at(rubber).belt);
    belt.body = "EPDM";
    store::Catalogue{shop.connection}.change(belt);
    CHECK(ShelfLife{shop.shop}.of(belt) == store::ShelfYears{10, 5});
}

TEST_CASE("A leap day ends on the 28th", "[ageing]") {
    TestShop shop;
    const store::StockPiece piece = shop.at(madeOn(shop, shop.h8m1200, mm(100), on(2020, 2, 29)));
    CHECK(useBy(piece, {7, 3}, std::nullopt) == on(2027, 2, 28));
    CHECK(useBy(piece, {8, 3}, std::nullopt) == on(2028, 2, 29));
}

TEST_CASE("What still sells goes to the piece that is due first", "[ageing]") {
    TestShop shop;
    const store::PieceId first = madeOn(shop, shop.h8m1200, mm(60), on(2019, 3, 12));   // ten days left
    const store::PieceId second = madeOn(shop, shop.h8m1200, mm(400), on(2019, 4, 11)); // forty
    // 365 mm sold in the last year: a millimetre a day.
    shop.remnant(shop.h8m1200, mm(400), 1);
    for (int i = 0; i < 3; ++i) {
        const Ordered ordered = shop.order(shop.h8m1200, i < 2 ? mm(120) : mm(125), 1);
        shop.cutAll(ordered);
    }
    const auto rows = ageing(shop.shop, days{90});
    std::int64_t sells = 0;
    for (const AgeingPiece& row : rows)
        sells += row.sells.count();
    CHECK(sells <= 40'000);
    if (const AgeingPiece* row = rowOf(rows, first)) CHECK(row->sells == mm(10));
    if (const AgeingPiece* row = rowOf(rows, second)) CHECK(row->sells >= mm(30));
}

TEST_CASE("A remnant that nothing can be cut from is to go; one that is asked for now and then is offered",
          "[ageing]") {
    TestShop shop;
    store::StockedBelt belt = *store::Catalogue{shop.connection}.find(shop.h8m1200);
    belt.listed = {mm(20), mm(30)};
    store::Catalogue{shop.connection}.change(belt);
    const store::PieceId useless = shop.remnant(shop.h8m1200, mm(18)); // 2.5 and 20 and 5 are more
    const store::PieceId useful = shop.remnant(shop.h8m1200, mm(120));
    auto rows = burdens(shop.shop);
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].piece.id == useless);
    CHECK(rows[0].advice == Burden::Advice::Scrap);

    // Odd belts of 9 mm are asked for: 18 - 2.5 - 6 gives one of them (15 mm must be held to cut it).
    shop.order(shop.h8m1200, mm(9), 5);
    rows = burdens(shop.shop);
    for (const Burden& row : rows)
        if (row.piece.id == useless) {
            CHECK(row.advice == Burden::Advice::Offer);
            CHECK(row.width == mm(9));
            CHECK(row.belts == 1);
        }
    CHECK(std::none_of(rows.begin(), rows.end(), [&](const Burden& row) { return row.piece.id == useful; }));
}

TEST_CASE("A remnant becomes ready belts by a ticket for the shelf, and is itself again when that is undone",
          "[ageing]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(60));
    const store::TicketId ticket = cutForShelf(shop.shop, piece, mm(20), 2);
    CHECK_FALSE(shop.at(ticket).order);
    const auto rows = bench(shop.shop);
    REQUIRE(rows.size() == 1);
    CHECK(rows.front().order.empty());
    CHECK(rows.front().forShelf() == std::vector<Extent>{mm(20), mm(20)});
    CHECK(shop.at(piece).reserved == um(42'500)); // the trim and two belts
    const store::MountingId mounting = rows.front().mounting.id;

    SECTION("cut: the belts lie on the shelf, 17.5 mm of the remnant are left; undone: nothing was cut") {
        const std::int64_t width = shop.widthOn(store::Account::Rack);
        const CutDone done = recordCut(shop.shop, {mounting});
        CHECK_FALSE(done.allReady());
        REQUIRE(done.shelf.size() == 2);
        CHECK(shop.at(done.shelf.front()).extent == mm(20));
        CHECK(shop.widthOn(store::Account::Ready) == 40'000);
        CHECK(shop.at(piece).extent == um(17'500));
        CHECK(shop.at(ticket).state == store::TicketState::Cut);
        checkRefused(shop, Why::AlreadyCut, [&] { giveUpForShelf(shop.shop, mounting); });
        undo(shop.shop, done.movement);
        CHECK(shop.at(piece).extent == mm(60));
        CHECK(shop.widthOn(store::Account::Ready) == 0);
        CHECK(shop.widthOn(store::Account::Rack) == width);
        CHECK(shop.at(ticket).state == store::TicketState::Open);
        giveUpForShelf(shop.shop, mounting);
        CHECK(bench(shop.shop).empty());
    }
    SECTION("given up: the remnant is free, and once only") {
        giveUpForShelf(shop.shop, mounting);
        CHECK(shop.at(piece).reserved.isNone());
        CHECK(shop.at(ticket).state == store::TicketState::Void);
        checkRefused(shop, Why::AlreadyDone, [&] { giveUpForShelf(shop.shop, mounting); });
    }
    SECTION("a spoiled belt plans nothing again: nobody waits for it") {
        const Replanned again = recordMiscut(shop.shop, {mounting, {1}, mm(20), um(17'500), "slipped"});
        CHECK_FALSE(again.ticket);
        CHECK(shop.widthOn(store::Account::Ready) == 20'000);
    }
    SECTION("a customer goes before the shelf") {
        const Ordered ordered = shop.order(shop.h8m1200, mm(40), 1);
        REQUIRE(ordered.ticket);
        CHECK(shop.mountingOf(ordered).piece == piece);
        CHECK(shop.at(ticket).state == store::TicketState::Void);
        checkRefused(shop, Why::NothingToCut,
                     [&] { giveUpForShelf(shop.shop, shop.mountingOf(ordered).id); });
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("No ticket for the shelf is made of what can't give it", "[ageing]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(60));
    const auto refused = [&](Why why, Extent width, std::int64_t belts) {
        checkRefused(shop, why, [&] { cutForShelf(shop.shop, piece, width, belts); });
    };
    refused(Why::TooNarrow, mm(20), 3);
    refused(Why::UnitMixed, ribs(2), 1);
    refused(Why::BadQuantity, mm(20), 0);
    const store::PieceId belt = shop.ready(shop.h8m1200, mm(30));
    checkRefused(shop, Why::NothingToCut, [&] { cutForShelf(shop.shop, belt, mm(10), 1); });
    shop.order(shop.h8m1200, mm(40), 1);
    refused(Why::PieceReserved, mm(10), 1);
    scrap(shop.shop, belt, mm(30), store::ScrapReason::Damaged, "");
    checkRefused(shop, Why::PieceGone, [&] { cutForShelf(shop.shop, belt, mm(10), 1); });
}

} // namespace riband::shop
