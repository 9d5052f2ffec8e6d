// What the counter is advised, on what it rests, and what is kept of it.
#include "core/cutting/plan.h"
#include "core/shop/batch.h"
#include "core/shop/learn.h"
#include "core/shop/shelf_ticket.h"
#include "core/shop/suggest_together.h"
#include "tests/core/shop/shop_fixture.h"

#include <cmath>
#include <set>

namespace riband::shop {

using Kind = Reason::Kind;
using store::AdviceBasis;

namespace {

bool always(double) { return true; }

/// H8M is listed from 20 on. Twelve orders are cut from a sleeve that is used up by them.
void sellSome(TestShop& shop) {
    shop.piece(shop.h8m1200, mm(400));
    for (int i = 0; i < 8; ++i)
        shop.cutAll(shop.order(shop.h8m1200, i % 4 == 0 ? mm(50) : mm(30), 1));
}

store::BeltId idOf(TestShop& shop, const belt::Belt& belt) {
    return store::Catalogue{shop.connection}.find(belt)->id;
}

int learnNow(TestShop& shop, const belt::Belt& belt) {
    const store::BeltId id = idOf(shop, belt);
    const auto table = learn(lessonOf(shop.shop, id), always);
    REQUIRE(table);
    return keepWorth(shop.shop, id, *table);
}

store::Advice adviceOf(TestShop& shop, const Ordered& ordered) {
    const auto advices = store::Advices{shop.connection}.ofOrder(ordered.order);
    REQUIRE(advices.size() == 1);
    return advices.front();
}

} // namespace

TEST_CASE("Before a table is made the exact plan answers, and says why", "[advice]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(120));
    const Suggestion suggestion = shop.suggestFor(shop.h8m1200, mm(30), 1);
    CHECK(suggestion.basis == AdviceBasis::ExactPlan);
    CHECK(suggestion.fault == WorthFault::Missing);
    CHECK(suggestion.worthVersion == 0);
}

TEST_CASE("With a table the future is weighed, and the plan keeps every rule", "[advice]") {
    TestShop shop;
    sellSome(shop);
    for (const int width : {41, 62, 88, 105, 131})
        shop.remnant(shop.h8m1200, mm(width));
    CHECK(learnNow(shop, shop.h8m1200) == 1);
    for (const std::vector<Wish>& wishes : std::vector<std::vector<Wish>>{{{mm(30), 1}},
                                                                          {{mm(30), 3}},
                                                                          {{mm(30), 2}, {mm(50), 1}},
                                                                          {{um(27'300), 2}},
                                                                          {{mm(30), 1}, {mm(30), 2}}}) {
        const Outlook outlook = lookAt(shop.shop, shop.h8m1200, wishes);
        const Suggestion suggestion = suggest(outlook);
        CHECK(suggestion.basis == AdviceBasis::LookAhead);
        CHECK(suggestion.worthVersion == 1);
        CHECK(suggestion.fault == WorthFault::None);
        CHECK(cutting::check(outlook.problem, suggestion.best.plan) == std::vector<std::string>{});
        for (const Way& other : suggestion.others) {
            CHECK(cutting::check(outlook.problem, other.plan) == std::vector<std::string>{});
            CHECK(other.extra >= 0);
        }
    }
}

TEST_CASE("No two ways that are told come to the same", "[advice]") {
    TestShop shop;
    sellSome(shop);
    for (const int width : {101, 122, 46, 131})
        shop.remnant(shop.h8m1200, mm(width));
    learnNow(shop, shop.h8m1200);
    std::size_t several = 0;
    for (int belts = 2; belts <= 6; ++belts) {
        const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), belts}});
        const Suggestion suggestion = suggest(outlook);
        std::vector<Way> ways = suggestion.others;
        ways.push_back(suggestion.best);
        std::vector<std::string> told;
        for (const Way& way : ways) {
            std::multiset<std::string> said;
            for (std::size_t i = 0; i < way.plan.mountings.size(); ++i) {
                said.insert(outlook.problem.pieces[way.plan.mountings[i].piece].code + " leaves " +
                            std::to_string(way.left(i, outlook.problem.rules).count()));
                for (const Extent belt : way.forShelf[i])
                    said.insert("shelf " + std::to_string(belt.count()));
            }
            std::string words;
            for (const std::string& each : said)
                words += each + "; ";
            told.push_back(words);
            several += way.plan.mountings.size() > 1 ? 1 : 0;
        }
        CAPTURE(belts, told);
        CHECK(std::set<std::string>(told.begin(), told.end()).size() == told.size());
    }
    CHECK(several > 3);
}

TEST_CASE("The same shop is advised the same", "[advice]") {
    TestShop shop;
    sellSome(shop);
    shop.remnant(shop.h8m1200, mm(105));
    learnNow(shop, shop.h8m1200);
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), 2}});
    const Suggestion one = suggest(outlook), again = suggest(outlook);
    CHECK(one.best.plan.mountings == again.best.plan.mountings);
    CHECK(one.best.cost == again.best.cost);
    REQUIRE(one.others.size() == again.others.size());
    for (std::size_t i = 0; i < one.others.size(); ++i)
        CHECK(one.others[i].extra == again.others[i].extra);
}

TEST_CASE("A table for other widths or rules is not gone by", "[advice]") {
    TestShop shop;
    sellSome(shop);
    learnNow(shop, shop.h8m1200);
    store::StockedBelt belt = *store::Catalogue{shop.connection}.find(shop.h8m1200);
    belt.listed = {mm(30), mm(50)};
    store::Catalogue{shop.connection}.change(belt);
    CHECK(shop.suggestFor(shop.h8m1200, mm(30), 1).fault == WorthFault::OutOfDate);
    CHECK(isDue(lessonOf(shop.shop, belt.id)));
    CHECK(learnNow(shop, shop.h8m1200) == 2);
    CHECK(shop.suggestFor(shop.h8m1200, mm(30), 1).worthVersion == 2);
}

TEST_CASE("A table is due after five more orders, and learning can be stopped", "[advice]") {
    TestShop shop;
    sellSome(shop);
    CHECK(dueBelts(shop.shop) == std::vector<store::BeltId>{idOf(shop, shop.h8m1200)});
    learnNow(shop, shop.h8m1200);
    CHECK(dueBelts(shop.shop).empty());
    shop.piece(shop.h8m1200, mm(400));
    for (int i = 0; i < 5; ++i)
        shop.order(shop.h8m1200, mm(30), 1);
    CHECK(dueBelts(shop.shop).size() == 1);
    CHECK_FALSE(learn(lessonOf(shop.shop, idOf(shop, shop.h8m1200)), [](double) { return false; }));
}

TEST_CASE("What is ordered most is learned first, and no more than is asked for", "[advice]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    shop.piece(shop.t5x500, mm(400));
    shop.order(shop.h8m1200, mm(30), 1);
    for (int i = 0; i < 3; ++i)
        shop.order(shop.t5x500, mm(16), 1);
    CHECK(dueBelts(shop.shop) ==
          std::vector<store::BeltId>{idOf(shop, shop.t5x500), idOf(shop, shop.h8m1200)});
    CHECK(dueBelts(shop.shop, 1) == std::vector<store::BeltId>{idOf(shop, shop.t5x500)});
    learnNow(shop, shop.t5x500);
    CHECK(dueBelts(shop.shop, 1).empty());
    CHECK(dueBelts(shop.shop, 2) == std::vector<store::BeltId>{idOf(shop, shop.h8m1200)});
}

TEST_CASE("A dead end is finished in the same mounting: on the ticket, booked, and on the shelf",
          "[advice]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(59)); // 2.5 + 30 leave a dead 26.5
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), 1}});
    const Suggestion suggestion = suggest(outlook);
    REQUIRE(suggestion.best.fillsShelf());
    CHECK(suggestion.best.forShelf.front() == std::vector<Extent>{mm(20)});
    CHECK(suggestion.best.left(0, outlook.problem.rules) == um(6'500));
    CHECK(suggestion.best.reason.kind == Kind::FinishesForShelf);
    CHECK(suggestion.best.reason.figure == um(6'500));
    CHECK(suggestion.best.reason.count == 1);

    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    const store::TicketMounting mounting = shop.mountingOf(ordered);
    REQUIRE(mounting.cuts.size() == 2);
    CHECK_FALSE(mounting.cuts[0].line); // narrow first
    CHECK(mounting.cuts[0].extent == mm(20));
    CHECK(mounting.left == um(6'500));
    SECTION("cut as suggested") {
        const CutDone done = recordCut(shop.shop, {mounting.id});
        CHECK(done.shelf.size() == 1);
        CHECK(done.allReady());
        CHECK(shop.at(piece).gone());
        CHECK(shop.widthOn(store::Account::Ready) == 20'000);
        undoCut(shop.shop, mounting.id);
        CHECK(shop.widthOn(store::Account::Ready) == 0);
    }
    SECTION("left out before it is cut: the ticket stands, the width is free again") {
        giveUpForShelf(shop.shop, mounting.id);
        REQUIRE(shop.mountingOf(ordered).cuts.size() == 1);
        CHECK(shop.mountingOf(ordered).cuts.front().extent == mm(30));
        CHECK(shop.mountingOf(ordered).left == um(26'500));
        CHECK_FALSE(shop.mountingOf(ordered).restKept); // a 20 needs 27.5: trim 2.5, end 5
        CHECK(shop.at(piece).reserved < um(59'000));
        checkRefused(shop, Refusal::Why::NothingToCut, [&] { giveUpForShelf(shop.shop, mounting.id); });
        CHECK(shop.cutAll(ordered).shelf.empty());
    }
    SECTION("more for the shelf than the ticket has is refused") {
        CutRecord record{mounting.id};
        record.ofShelf = std::vector<std::int64_t>{2};
        checkRefused(shop, Refusal::Why::BadQuantity, [&] { recordCut(shop.shop, record); });
    }
    SECTION("declined at the cutter") {
        CutRecord record{mounting.id};
        record.ofShelf = std::vector<std::int64_t>{0};
        CHECK(recordCut(shop.shop, record).shelf.empty());
        CHECK(shop.at(piece).extent == um(26'500));
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A shelf belt that was declined at the counter is on no ticket, and that is kept", "[advice]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(59));
    DraftLine line = TestShop::line(shop.h8m1200, mm(30), 1);
    line.noShelf = true;
    const Ordered ordered = shop.order({line});
    CHECK(shop.mountingOf(ordered).cuts.size() == 1);
    const store::Advice advice = adviceOf(shop, ordered);
    CHECK(advice.shelfDeclined);
    CHECK_FALSE(advice.overridden);
    CHECK(advice.suggested.forShelf.size() == 1);
    CHECK(advice.taken.forShelf.empty());
    CHECK(advice.taken.cost > advice.suggested.cost); // the dead end is thrown away then
}

TEST_CASE("Three of a width on the shelf are enough for a shop that has learned nothing", "[advice]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(59));
    for (int i = 0; i < 3; ++i)
        shop.ready(shop.h8m1200, mm(20));
    CHECK_FALSE(shop.suggestFor(shop.h8m1200, mm(30), 1).best.fillsShelf());
}

TEST_CASE("No belt is cut for the shelf where the owner wants none", "[advice]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(59));
    store::Settings settings{shop.connection};
    store::ShopSettings set = settings.read();
    SECTION("no finishing") { set.advice.finish = false; }
    SECTION("no shelf") { set.advice.shelfLimit = 0; }
    settings.write(set);
    CHECK_FALSE(shop.suggestFor(shop.h8m1200, mm(30), 1).best.fillsShelf());
}

TEST_CASE("No more belts are cut for the shelf in a mounting than the owner wants", "[advice]") {
    const int most = GENERATE(0, 1, 2); // 0: any number
    TestShop shop;
    store::Settings settings{shop.connection};
    store::ShopSettings set = settings.read();
    set.advice.shelfAtOnce = most;
    settings.write(set);
    sellSome(shop);
    store::StockedBelt belt = *store::Catalogue{shop.connection}.find(shop.h8m1200);
    belt.preCut = store::PreCut::Always;
    store::Catalogue{shop.connection}.change(belt);
    shop.piece(shop.h8m1200, mm(400));
    learnNow(shop, shop.h8m1200);
    std::size_t seen = 0;
    const auto look = [&](const Way& way) {
        for (const auto& belts : way.forShelf)
            seen = std::max(seen, belts.size());
    };
    SECTION("for one order") {
        for (const std::vector<Wish>& wishes :
             std::vector<std::vector<Wish>>{{{mm(30), 1}}, {{mm(30), 2}, {mm(50), 1}}}) {
            const Suggestion suggestion = suggest(lookAt(shop.shop, shop.h8m1200, wishes));
            look(suggestion.best);
            for (const Way& other : suggestion.others)
                look(other);
        }
    }
    SECTION("for several that are cut together") {
        for (const int width : {30, 50})
            shop.order(shop.h8m1200, mm(width), 1);
        const auto all = batches(shop.shop);
        REQUIRE(all.size() == 1);
        look(suggestTogether(all[0].outlook).best);
    }
    if (most == 0)
        CHECK(seen > 2);
    else
        CHECK(seen == static_cast<std::size_t>(most));
}

TEST_CASE("What was followed is kept as it was suggested", "[advice]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(120));
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 2);
    const store::Advice advice = adviceOf(shop, ordered);
    CHECK(advice.belt == idOf(shop, shop.h8m1200));
    CHECK(advice.basis == AdviceBasis::ExactPlan);
    CHECK(advice.suggested == advice.taken);
    REQUIRE(advice.taken.pieces.size() == 1);
    CHECK(advice.taken.pieces[0].piece == piece);
    CHECK(advice.taken.cost > 0);
    CHECK_FALSE(advice.overridden);
}

TEST_CASE("Another way than suggested is kept with its cost, its reason and the clerk's own words",
          "[advice]") {
    TestShop shop;
    sellSome(shop);
    shop.remnant(shop.h8m1200, mm(59));
    shop.remnant(shop.h8m1200, mm(140));
    learnNow(shop, shop.h8m1200);
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), 1}});
    const Suggestion suggestion = suggest(outlook);
    REQUIRE_FALSE(suggestion.others.empty());
    const Way& other = suggestion.others.back();
    DraftLine line = TestShop::line(shop.h8m1200, mm(30), 1);
    line.way = other.plan;
    line.forShelf = other.forShelf;
    for (const cutting::Piece& piece : outlook.problem.pieces)
        line.wayPieces.push_back(piece.code);
    line.overrideKey = store::OverrideKey::NearerToHand;
    line.overrideWords = "the other lies under the bench";
    const Ordered ordered = shop.order({line});
    const store::Advice advice = adviceOf(shop, ordered);
    CHECK(advice.overridden);
    CHECK(advice.overrideKey == store::OverrideKey::NearerToHand);
    CHECK(advice.overrideWords == "the other lies under the bench");
    CHECK(advice.basis == AdviceBasis::LookAhead);
    CHECK(advice.suggested.pieces != advice.taken.pieces);
    CHECK(std::llround(advice.taken.cost - advice.suggested.cost) == other.extra);
}

TEST_CASE("A reason that was given and then not needed is not kept", "[advice]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(120));
    DraftLine line = TestShop::line(shop.h8m1200, mm(30), 1);
    line.overrideKey = store::OverrideKey::Other;
    const store::Advice advice = adviceOf(shop, shop.order({line}));
    CHECK_FALSE(advice.overridden);
    CHECK_FALSE(advice.overrideKey);
}

TEST_CASE("Ribbed belts are weighed in ribs", "[advice]") {
    TestShop shop;
    store::StockedBelt belt = *store::Catalogue{shop.connection}.find(shop.pj1194);
    belt.listed = {ribs(4), ribs(6), ribs(8)};
    store::Catalogue{shop.connection}.change(belt);
    shop.piece(shop.pj1194, ribs(110));
    for (int i = 0; i < 6; ++i)
        shop.cutAll(shop.order(shop.pj1194, ribs(6), 1));
    learnNow(shop, shop.pj1194);
    const Outlook outlook = lookAt(shop.shop, shop.pj1194, {{ribs(6), 2}});
    const Suggestion suggestion = suggest(outlook);
    CHECK(suggestion.basis == AdviceBasis::LookAhead);
    CHECK(cutting::check(outlook.problem, suggestion.best.plan) == std::vector<std::string>{});
    shop.cutAll(shop.order(shop.pj1194, ribs(6), 2));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Width becomes money at the price of the belt's sleeve", "[advice]") {
    TestShop shop;
    store::StockedBelt belt = *store::Catalogue{shop.connection}.find(shop.h8m1200);
    belt.newSleeve = mm(400);
    belt.sleeveCost = Money::minor(20'000);
    CHECK(asMoney(belt, 6'200) == Money::minor(310));
    CHECK(asMoney(belt, -6'200) == Money::minor(-310));
}

TEST_CASE("Belts for the shelf that are only planned give way to a customer", "[advice]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(59));
    const Ordered first = shop.order(shop.h8m1200, mm(30), 1); // and 20 for the shelf
    REQUIRE(shop.mountingOf(first).cuts.size() == 2);
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(15), 1}});
    CHECK(outlook.shelfGivesWay);
    CHECK(suggest(outlook).best.plan.unserved.empty()); // the counter says so before, not only the order
    CHECK_FALSE(lookAt(shop.shop, shop.h8m1200, {{mm(50), 1}}).shelfGivesWay); // it would not help
    const Ordered second = shop.order(shop.h8m1200, mm(15), 1);
    CHECK(first.gaveWay.empty());
    CHECK(second.gaveWay == std::vector{*first.ticket});
    CHECK(shop.mountingOf(first).cuts.size() == 1);
    CHECK(shop.mountingOf(second).piece == piece);
    CHECK(shop.at(piece).reserved == um(2'500 + 30'000 + 2'500 + 15'000));
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
