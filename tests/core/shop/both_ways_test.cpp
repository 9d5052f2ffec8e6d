// What overrides cost or saved, on histories where the truth is known because the test made them.
#include "core/shop/learn.h"
#include "core/shop/reports/both_ways.h"
#include "tests/core/shop/shop_fixture.h"

#include <cmath>

namespace riband::shop {

namespace {

const Period allTime{Moment{Date{std::chrono::year{2000} / 1 / 1}},
                     Moment{Date{std::chrono::year{2100} / 1 / 1}}};

/// Sells H8M 1200 in 30 mm from sleeves of 400, cuts nothing for the shelf and has no worth table: a sleeve
/// gives twelve belts (12 x 32.5 + 5 end = 395), so one of 30 mm is worth 400 / 12 = 33.333 mm to who knows
/// that, and a remnant as many times that as it gives.
struct PlainShop : TestShop {
    PlainShop() {
        store::Settings settings{connection};
        store::ShopSettings plain = settings.read();
        plain.advice.shelfLimit = 0;
        settings.write(plain);
        piece(h8m1200, mm(400));
        store::Catalogue catalogue{connection};
        store::StockedBelt belt = *catalogue.find(h8m1200);
        belt.newSleeve = mm(400);
        belt.sleeveCost = Money::minor(24'000); // 0.60 a mm
        belt.listed = {mm(30)};
        catalogue.change(belt);
    }

    /// Orders and takes the piece, whatever is suggested.
    Ordered orderFrom(store::PieceId wanted, std::int64_t quantity,
                      std::optional<store::OverrideKey> key = std::nullopt) {
        const Outlook outlook = lookAt(shop, h8m1200, {{mm(30), quantity}});
        DraftLine line = TestShop::line(h8m1200, mm(30), quantity);
        Suggestion suggestion = suggest(outlook);
        suggestion.others.push_back(suggestion.best);
        for (const Way& way : suggestion.others)
            if (way.plan.mountings.size() == 1 && outlook.pieces[way.plan.mountings[0].piece].id == wanted)
                line.way = way.plan;
        REQUIRE(line.way);
        for (const cutting::Piece& piece : outlook.problem.pieces)
            line.wayPieces.push_back(piece.code);
        line.overrideKey = key;
        return TestShop::order({line});
    }

    BothWays both(const Period& period = allTime) { return bothWays(shop, period); }
};

constexpr double ofOneBelt = 400.0 / 12;

} // namespace

TEST_CASE("An override that leaves a dead rest is charged the belt that it spoilt", "[reports][both]") {
    PlainShop shop;
    // Of 52 and of 67.5 the plan of the day thinks alike and takes the older; 67.5 gives two belts in one
    // mounting, or one and a dead 35.
    shop.remnant(shop.h8m1200, mm(52), 100);
    const store::PieceId two = shop.remnant(shop.h8m1200, um(67'500), 50);
    shop.cutAll(shop.orderFrom(two, 1, store::OverrideKey::NearerToHand));
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 2)); // now needs the sleeve
    const BothWays both = shop.both();
    CHECK(both.left == 0);
    CHECK(both.all.departures == 1);
    CHECK(both.all.width == Approx(ofOneBelt).margin(0.01));
    CHECK(both.all.money == Approx(2000).margin(1));
    CHECK(both.asDone - both.asSuggested == Approx(both.all.width));
    REQUIRE(both.reasons.size() == 1);
    CHECK(both.reasons[0].name == "nearer to hand");
    REQUIRE(both.belts.size() == 1);
    CHECK(both.belts[0].name == "H8M 1200");
    CHECK_FALSE(both.all.told()); // one alone proves nothing
}

TEST_CASE("An override that was cleverer than the suggestion is said to have saved", "[reports][both]") {
    PlainShop shop;
    // The plan of the day likes the 35 that would be left of 67.5 better than using up 37.5; nothing can ever
    // be cut from 35.
    const store::PieceId one = shop.remnant(shop.h8m1200, um(37'500), 50);
    const store::PieceId two = shop.remnant(shop.h8m1200, um(67'500), 50);
    store::Catalogue catalogue{shop.connection};
    store::StockedBelt belt = *catalogue.find(shop.h8m1200);
    belt.listed = {mm(25), mm(30)}; // as if 35 were good for something
    catalogue.change(belt);
    const Ordered ordered = shop.orderFrom(one, 1);
    const auto advice = store::Advices{shop.connection}.ofOrder(ordered.order);
    REQUIRE(advice.front().suggested.pieces.front().piece == two);
    shop.cutAll(ordered);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 2));
    const BothWays both = shop.both();
    REQUIRE(both.all.departures == 1);
    CHECK(both.all.width == Approx(-ofOneBelt).margin(0.01));
    CHECK(both.all.money == Approx(-2000).margin(1));
    CHECK(both.asDone - both.asSuggested == Approx(both.all.width));
}

TEST_CASE("What was followed costs nothing either way, and no period knows of another's overrides",
          "[reports][both]") {
    PlainShop shop;
    shop.remnant(shop.h8m1200, mm(52), 100);
    const store::PieceId two = shop.remnant(shop.h8m1200, um(67'500), 50);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 1));
    CHECK(shop.both().all.departures == 0);
    CHECK(shop.both().asDone == 0);
    const Moment between = shop.time;
    shop.time += std::chrono::hours{1};
    shop.cutAll(shop.orderFrom(two, 1));
    CHECK(shop.both({allTime.from, between}).all.departures == 0);
    CHECK(shop.both({between, allTime.until}).all.departures == 1);
}

TEST_CASE("What each override came to adds up to all done as it was less all as suggested",
          "[reports][both]") {
    PlainShop shop;
    for (int width = 40; width < 140; width += 9)
        shop.remnant(shop.h8m1200, mm(width), width);
    for (int i = 0; i < 3; ++i)
        shop.piece(shop.h8m1200, mm(400));
    if (GENERATE(false, true)) {
        for (int i = 0; i < 6; ++i)
            shop.cutAll(shop.order(shop.h8m1200, mm(30), 1 + i % 2));
        const auto lesson = lessonOf(shop.shop, store::Catalogue{shop.connection}.find(shop.h8m1200)->id);
        keepWorth(shop.shop, lesson.belt, *learn(lesson, [](double) { return true; }));
    }
    int overridden = 0;
    for (int i = 0; i < 12; ++i) {
        const std::int64_t quantity = 1 + i % 3;
        const Suggestion suggestion = shop.suggestFor(shop.h8m1200, mm(30), quantity);
        const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), quantity}});
        const Way* other = nullptr;
        for (const Way& way : suggestion.others)
            if (way.plan.mountings.size() == 1) other = &way;
        if (i % 2 == 0 || !other) {
            shop.cutAll(shop.order(shop.h8m1200, mm(30), quantity));
            continue;
        }
        const store::PieceId piece = outlook.pieces[other->plan.mountings[0].piece].id;
        shop.cutAll(shop.orderFrom(piece, quantity, store::OverrideKey::OlderFirst));
        ++overridden;
    }
    REQUIRE(overridden > 2);
    const BothWays both = shop.both();
    CHECK(both.all.departures + both.left == overridden);
    CHECK(both.left == 0);
    CHECK(both.asDone - both.asSuggested == Approx(both.all.width).margin(1e-6));
    CHECK(both.all.widthDoubt > 0);
    CHECK(shop.both().all.width == both.all.width); // the same history, the same answer
}

TEST_CASE("Refused belts for the shelf are replayed, too: who refuses cuts them in a mounting of their own",
          "[reports][both]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(59)); // 2.5 + 30 + 20 leave a dead 6.5
    DraftLine line = TestShop::line(shop.h8m1200, mm(30), 1);
    line.noShelf = true;
    shop.cutAll(shop.order({line}));
    shop.piece(shop.h8m1200, mm(400));
    shop.time += std::chrono::hours{1};
    shop.cutAll(shop.order(shop.h8m1200, mm(20), 1)); // from the sleeve; as suggested, from the shelf
    const BothWays both = bothWays(shop.shop, allTime);
    CHECK(both.left == 0);
    REQUIRE(both.all.departures == 1);
    CHECK(both.reasons.front().name == "shelf not wanted");
    CHECK(both.asDone - both.asSuggested == Approx(both.all.width));
    CHECK(both.all.width > 0);
}

TEST_CASE("Cancelled orders are no demand, and replaying can be stopped", "[reports][both]") {
    PlainShop shop;
    shop.remnant(shop.h8m1200, mm(52), 100);
    const store::PieceId two = shop.remnant(shop.h8m1200, um(67'500), 50);
    const Ordered ordered = shop.orderFrom(two, 1);
    CHECK_THROWS_AS(bothWays(shop.shop, allTime, {nullptr, [] { return true; }}), foresight::Stopped);
    const store::OrderLine line = shop.lineOf(ordered.order);
    change(shop.shop, line.id, line.extent, 0);
    CHECK(shop.both().all.departures == 0);
}

TEST_CASE("The table says what was replayed beside what was expected", "[reports][both]") {
    PlainShop shop;
    shop.remnant(shop.h8m1200, mm(52), 100);
    const store::PieceId two = shop.remnant(shop.h8m1200, um(67'500), 50);
    shop.cutAll(shop.orderFrom(two, 1, store::OverrideKey::OlderFirst));
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 2));
    const auto expected = overrides(shop.shop, allTime);
    const Currency currency{"EUR", 2};
    const ReportTable all = tableOf(expected, shop.both(), currency, Sees::Cost);
    REQUIRE(all.rows.size() == 4); // all, a person, a reason, a belt
    for (const auto& row : all.rows) {
        REQUIRE(row.size() == all.columns.size());
        CHECK(row[8] == "1");
        CHECK(row[11] == "20.00");
    }
    CHECK(all.rows[3][0] == "belt");
    for (const std::string& column : tableOf(expected, shop.both(), currency, Sees::WidthOnly).columns)
        CHECK(column.find("cost") == std::string::npos);
}

} // namespace riband::shop
