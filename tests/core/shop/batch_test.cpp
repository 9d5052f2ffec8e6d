#include "core/shop/batch.h"

#include "core/shop/learn.h"
#include "core/shop/piece_worth.h"
#include "core/shop/preview.h"
#include "core/shop/shelf_fill.h"
#include "core/shop/suggest_together.h"
#include "core/shop/weigh.h"
#include "core/shop/whose.h"
#include "tests/core/shop/shop_fixture.h"

#include <set>

namespace riband::shop {

TEST_CASE("Orders that wait for one belt are seen together: a mounting and a trim less", "[batch]") {
    TestShop shop;
    const store::PieceId piece = shop.piece(shop.h8m1200, mm(400));
    const Ordered first = shop.order(shop.h8m1200, mm(30), 1);
    const Ordered second = shop.order(shop.h8m1200, mm(50), 2);
    shop.piece(shop.t5x500, mm(300));
    const Ordered other = shop.order(shop.t5x500, mm(16), 1);
    const std::vector<Batch> all = batches(shop.shop);
    REQUIRE(all.size() == 1); // of T5 only one mounting waits
    CHECK(all[0].orders == std::vector<store::OrderId>{first.order, second.order});
    CHECK(all[0].mountings == 2);
    CHECK(all[0].outlook.belt.designation == "H8M 1200");
    const auto found = joint(all[0]);
    REQUIRE(found);
    CHECK(found->mountings == 1);
    CHECK(found->trim == um(2'500));

    const Ordered done = together(shop.shop, all[0].orders, all[0].outlook.belt.id);
    CHECK(shop.at(*done.ticket).mountings.size() == 1);
    CHECK(shop.at(piece).reserved == um(2'500 + 30'000 + 100'000));
    CHECK(shop.at(*other.ticket).state == store::TicketState::Open);
    CHECK(batches(shop.shop).empty());
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Cut together, belts for the shelf are cut as well if somebody asks for them, and else none",
          "[batch]") {
    TestShop shop;
    const ForShelf shelf = GENERATE(ForShelf::None, ForShelf::AsSuggested);
    shop.remnant(shop.h8m1200, mm(109)); // 2.5 + 30 + 50 leave a dead 26.5: a 20 uses it up
    for (const int width : {30, 50}) {
        DraftLine line = TestShop::line(shop.h8m1200, mm(width), 1);
        line.noShelf = true;
        shop.order({line});
    }
    const auto all = batches(shop.shop);
    REQUIRE(all.size() == 1);
    const auto found = joint(all[0], {}, shelf);
    REQUIRE(found);
    const Ordered done = cutTogether(shop.shop, all[0], shelf);
    const auto rows = mountingsOf(shop.shop, *done.ticket);
    REQUIRE(rows.size() == 1);
    if (shelf == ForShelf::None) {
        CHECK(found->forShelf.empty());
        CHECK(rows.front().forShelf().empty());
    } else {
        CHECK(found->forShelf == std::map<Extent, std::int64_t>{{mm(20), 1}});
        CHECK(rows.front().forShelf() == std::vector{mm(20)});
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Of an order with two belts only the one that is cut together is planned anew", "[batch]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    shop.piece(shop.t5x500, mm(300));
    const Ordered both =
        shop.order({TestShop::line(shop.h8m1200, mm(30), 1), TestShop::line(shop.t5x500, mm(16), 1)});
    const Ordered second = shop.order(shop.h8m1200, mm(50), 1);
    const auto all = batches(shop.shop);
    REQUIRE(all.size() == 1);
    together(shop.shop, all[0].orders, all[0].outlook.belt.id);
    CHECK(shop.at(*both.ticket).state == store::TicketState::Open); // T5 stays on it
    CHECK(shop.at(*second.ticket).state == store::TicketState::Void);
    CHECK(missing(shop.shop).empty());
    CHECK(shop.disagreements().empty());
}

TEST_CASE("What is cut together names each belt's order, and what each order still misses", "[batch]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    shop.piece(shop.t5x500, mm(300));
    const auto named = [&](const std::string& who, std::vector<DraftLine> lines, std::optional<Moment> due) {
        return order(shop.shop,
                     {.lines = std::move(lines), .customer = who, .phone = "", .due = due, .note = ""});
    };
    const Moment noon = *readMoment("2026-03-02T12:00:00.000Z");
    const Ordered mill = named("Mill", {TestShop::line(shop.h8m1200, mm(30), 2)}, std::nullopt);
    const Ordered dairy = named(
        "Dairy", {TestShop::line(shop.t5x500, mm(16), 3), TestShop::line(shop.h8m1200, mm(50), 1)}, noon);
    const auto all = batches(shop.shop);
    REQUIRE(all.size() == 1);
    const Ordered done = together(shop.shop, all[0].orders, all[0].outlook.belt.id);
    const BenchMounting row = mountingsOf(shop.shop, *done.ticket).front();
    const MountingFor whose = whoseAre(shop.shop, {row}).front();
    CHECK(whose.isJoint());
    CHECK(whose.due == noon);
    REQUIRE(whose.cuts.size() == row.mounting.cuts.size());
    for (std::size_t i = 0; i < whose.cuts.size(); ++i) {
        const bool wide = row.mounting.cuts[i].extent == mm(50);
        CHECK(whose.cuts[i].order == shop.at(wide ? dairy.order : mill.order).code);
        CHECK(whose.cuts[i].customer == (wide ? "Dairy" : "Mill"));
        CHECK(whose.cuts[i].line == (wide ? 2 : 1));
    }
    const CutDone cut = recordCut(shop.shop, {row.mounting.id});
    REQUIRE(cut.orders.size() == 2);
    CHECK(cut.orders[0].order == mill.order);
    CHECK(cut.orders[0].missing == 0);
    CHECK(cut.orders[1].order == dairy.order);
    CHECK(cut.orders[1].missing == 3);
    CHECK_FALSE(cut.allReady());
}

TEST_CASE("A mounting says which other tickets wait for width of its piece", "[batch]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    const Ordered first = shop.order(shop.h8m1200, mm(30), 1);
    CHECK(whoseAre(shop.shop, bench(shop.shop)).front().others.empty());
    const Ordered second = shop.order(shop.h8m1200, mm(50), 1);
    const auto whose = whoseAre(shop.shop, bench(shop.shop));
    REQUIRE(whose.size() == 2);
    CHECK(whose[0].others == shop.at(*second.ticket).code);
    CHECK(whose[1].others == shop.at(*first.ticket).code);
}

TEST_CASE("What saves no mounting is not offered", "[batch]") {
    TestShop shop;
    shop.remnant(shop.h8m1200, mm(60));
    shop.remnant(shop.h8m1200, mm(61));
    shop.order(shop.h8m1200, mm(50), 1);
    shop.order(shop.h8m1200, mm(50), 1);
    const auto all = batches(shop.shop);
    REQUIRE(all.size() == 1);
    CHECK_FALSE(joint(all[0]));
}

namespace {

void learnH8m(TestShop& shop) {
    const auto belt = store::Catalogue{shop.connection}.find(shop.h8m1200).value().id;
    keepWorth(shop.shop, belt, *learn(lessonOf(shop.shop, belt), [](double) { return true; }));
}

/// What a plan costs by the table, with what it would cut for the shelf.
double priceOf(const Outlook& outlook, const Future& future, const cutting::Plan& plan) {
    Way way{plan, {}};
    fillShelf(outlook, future.table, way);
    return way.cost;
}

std::int64_t beltsOf(const cutting::Plan& plan) {
    auto belts = static_cast<std::int64_t>(plan.taken.size());
    for (const cutting::Mounting& mounting : plan.mountings)
        for (const cutting::Cut& cut : mounting.cuts)
            belts += cut.count;
    return belts;
}

} // namespace

TEST_CASE("A batch is met by the same futures as the exact plan, and says what it saves in all", "[batch]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    shop.remnant(shop.h8m1200, mm(101));
    shop.remnant(shop.h8m1200, mm(64));
    learnH8m(shop);
    for (const int width : {30, 50, 20, 30})
        shop.order(shop.h8m1200, mm(width), 1);
    const auto all = batches(shop.shop);
    REQUIRE(all.size() == 1);
    const Suggestion suggestion = suggestTogether(all[0].outlook);
    CHECK(suggestion.basis == store::AdviceBasis::LookAhead);
    CHECK(beltsOf(suggestion.best.plan) == 4);
    CHECK(cutting::check(all[0].outlook.problem, suggestion.best.plan).empty());
    const auto found = joint(all[0]);
    REQUIRE(found);
    REQUIRE(found->width);
    // At least the labour of a mounting, 4 mm, and the trim of each that is saved; the rests may be worth
    // less.
    CHECK(*found->width > mm(0));
    const Ordered done = together(shop.shop, all[0].orders, all[0].outlook.belt.id);
    CHECK(static_cast<std::int64_t>(shop.at(*done.ticket).mountings.size()) == found->mountings);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A batch too large to be weighed whole costs no more than exact plan and smallest that fits",
          "[batch]") {
    TestShop shop;
    const int sleeves = GENERATE(1, 2);
    for (int i = 0; i < sleeves; ++i)
        shop.piece(shop.h8m1200, mm(470));
    for (const int width : {101, 64, 88, 131, 47})
        shop.remnant(shop.h8m1200, mm(width));
    learnH8m(shop);
    const std::vector<Wish> wishes{{mm(20), 3}, {mm(30), 3}, {mm(50), 2}, {mm(25), 2}, {mm(40), 2}};
    const Outlook outlook =
        lookAt(shop.shop, shop.h8m1200, wishes); // 4 x 4 x 3 x 3 x 3 parts: 64 are weighed
    const Future future = futureOf(outlook.past).value();
    REQUIRE(future.fault == WorthFault::None);
    CHECK(weigh(outlook, future, 1).empty());
    const Suggestion suggestion = suggestTogether(outlook);
    const cutting::Plan& plan = suggestion.best.plan;
    CHECK(suggestion.basis == store::AdviceBasis::ExactPlan);
    CHECK(beltsOf(plan) == 12);
    std::set<std::size_t> mounted;
    for (const cutting::Mounting& mounting : plan.mountings)
        CHECK(mounted.insert(mounting.piece).second);
    cutting::Problem problem = outlook.problem;
    problem.worth = curveOf(future.table, problem.rules.stub);
    CHECK(suggestion.best.cost <= priceOf(outlook, future, cutting::plan(problem)));
    CHECK(suggestion.best.cost <= priceOf(outlook, future, cutting::bestFit(problem)));
    const auto groups = weighTogether(outlook, future, {});
    REQUIRE(groups); // by groups alone it is a plan, too
    CHECK(beltsOf(groups->way.plan) == 12);
    CHECK(cutting::check(outlook.problem, groups->way.plan).empty());
    CHECK(suggestion.best.cost <= groups->way.cost);
}

TEST_CASE("A piece is worth at most its width, and says what it is kept for", "[batch]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    for (int i = 0; i < 6; ++i)
        shop.cutAll(shop.order(shop.h8m1200, mm(30), 1));
    const store::StockPiece remnant = shop.at(shop.remnant(shop.h8m1200, mm(62)));
    const store::StockPiece dead = shop.at(shop.remnant(shop.h8m1200, mm(22)));
    CHECK_FALSE(PieceWorths{shop.shop}.of(remnant));
    const store::BeltId belt = remnant.belt;
    keepWorth(shop.shop, belt, *learn(lessonOf(shop.shop, belt), [](double) { return true; }));
    PieceWorths worths{shop.shop};
    const auto worth = worths.of(remnant);
    REQUIRE(worth);
    CHECK(worth->worth > mm(0));
    CHECK(worth->worth <= mm(62));
    REQUIRE(worth->keptFor);
    CHECK(worth->keptFor->percent > 0);
    CHECK(worths.of(dead)->worth.isNone());
    CHECK_FALSE(worths.of(dead)->keptFor);
    CHECK_FALSE(worths.of(shop.at(shop.ready(shop.h8m1200, mm(30)))));
}

TEST_CASE("Other settings are tried on the same orders: without finishing more is wasted", "[preview]") {
    TestShop shop;
    CHECK_FALSE(trialOf(shop.shop, store::Settings{shop.connection}.read()));
    shop.piece(shop.h8m1200, mm(400));
    for (int i = 0; i < 8; ++i)
        shop.cutAll(shop.order(shop.h8m1200, i % 4 == 0 ? mm(50) : mm(30), 1));
    store::ShopSettings proposed = store::Settings{shop.connection}.read();
    proposed.advice.shelfLimit = 0;
    const auto trial = trialOf(shop.shop, proposed);
    REQUIRE(trial);
    CHECK(trial->belt == "H8M 1200");
    const auto outcome = tryOut(*trial, [](double) { return true; });
    REQUIRE(outcome);
    CHECK(outcome->now.orders == outcome->then.orders);
    CHECK(outcome->now.ready > 0);
    CHECK(outcome->then.ready == 0);
    CHECK(outcome->now.waste < outcome->then.waste);
    CHECK(outcome->tells());
    CHECK(outcome->lessWaste < -outcome->margin);
    CHECK(outcome->now.mountingsPerOrder < outcome->then.mountingsPerOrder);
    CHECK_FALSE(tryOut(*trial, [](double share) { return share < 0.1; }));
}

TEST_CASE("The same settings tried against themselves tell nothing", "[preview]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 1));
    const auto trial = trialOf(shop.shop, store::Settings{shop.connection}.read());
    REQUIRE(trial);
    const auto outcome = tryOut(*trial, [](double) { return true; });
    REQUIRE(outcome);
    CHECK(outcome->now.waste == outcome->then.waste);
    CHECK(outcome->lessWaste == 0);
    CHECK_FALSE(outcome->tells());
}

TEST_CASE("Whether a belt is cut before it is asked for is tried before it is saved", "[preview]") {
    TestShop shop;
    store::ShopSettings settings = store::Settings{shop.connection}.read();
    settings.advice.shelfAtOnce = 3;
    store::Settings{shop.connection}.write(settings);
    store::StockedBelt belt = store::Catalogue{shop.connection}.find(shop.h8m1200).value();
    shop.piece(shop.h8m1200, mm(400));
    CHECK_FALSE(trialOf(shop.shop, belt)); // nobody has asked for it yet
    for (int i = 0; i < 8; ++i)
        shop.cutAll(shop.order(shop.h8m1200, i % 4 == 0 ? mm(50) : mm(30), 1));
    belt.preCut = store::PreCut::Always; // of itself trim is too small a share of such wide belts
    const auto trial = trialOf(shop.shop, belt);
    REQUIRE(trial);
    CHECK(trial->preCutNow == store::PreCut::WherePays);
    CHECK(trial->preCutThen == store::PreCut::Always);
    CHECK(trial->now.setting.shelf == foresight::Shelf::Stub);
    CHECK(trial->then.setting.shelf == foresight::Shelf::Listed);
    const auto outcome = tryOut(*trial, [](double) { return true; });
    REQUIRE(outcome);
    CHECK(outcome->now.orders == outcome->then.orders);
    CHECK(outcome->then.mountingsPerOrder < outcome->now.mountingsPerOrder);
}

TEST_CASE("A narrower sleeve is tried on the orders that it can give, too", "[preview]") {
    TestShop shop;
    store::StockedBelt belt = store::Catalogue{shop.connection}.find(shop.h8m1200).value();
    for (int i = 0; i < 3; ++i)
        shop.piece(shop.h8m1200, mm(400));
    for (int i = 0; i < 8; ++i)
        shop.cutAll(shop.order(shop.h8m1200, i % 4 == 0 ? mm(200) : mm(30), 1));
    belt.newSleeve = mm(150);
    const auto trial = trialOf(shop.shop, belt);
    REQUIRE(trial);
    const auto outcome = tryOut(*trial, [](double) { return true; });
    REQUIRE(outcome);
    CHECK(outcome->now.orders == outcome->then.orders);
    CHECK(outcome->then.orders > 0);
}

TEST_CASE("Every setting of the advice changes what the trial run comes to", "[preview]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400));
    for (int i = 0; i < 8; ++i)
        shop.cutAll(shop.order(shop.h8m1200, i % 4 == 0 ? mm(50) : mm(30), 1));
    const store::ShopSettings now = store::Settings{shop.connection}.read();
    store::ShopSettings then = now;
    SECTION("remnants of a belt") { then.mostRemnants = 2; }
    SECTION("ready belts of a width") { then.advice.shelfLimit = 1; }
    SECTION("ready belts from one mounting") {
        then.advice.shelfAtOnce = 3;
        store::Settings{shop.connection}.write(then);
        then.advice.shelfAtOnce = 1;
    }
    SECTION("whether dead ends are cut up, where nothing is cut before it is asked for") {
        store::StockedBelt belt = store::Catalogue{shop.connection}.find(shop.h8m1200).value();
        belt.preCut = store::PreCut::Never;
        store::Catalogue{shop.connection}.change(belt);
        then.advice.finish = false;
    }
    SECTION("interest") { then.advice.interest = Permille{400}; }
    SECTION("room of a piece") { then.advice.holding = Width::millimetres(80); }
    SECTION("labour of a mounting") { then.mountingCost = mm(40); }
    const auto trial = trialOf(shop.shop, then);
    REQUIRE(trial);
    const auto outcome = tryOut(*trial, [](double) { return true; });
    REQUIRE(outcome);
    CHECK(outcome->margin > 0);
    const auto figures = [](const TrialFigures& of) {
        return std::vector{of.waste, of.mountingsPerOrder, of.remnants, of.ready};
    };
    CHECK(outcome->now.orders == outcome->then.orders);
    CHECK(figures(outcome->now) != figures(outcome->then));
    CHECK_FALSE(tryOut(*trial, [](double share) { return share < 0.3; })); // it can be stopped
}

} // namespace riband::shop
