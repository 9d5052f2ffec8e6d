// What people come with at the counter, and what must happen.
#include "tests/core/shop/shop_fixture.h"

#include <algorithm>

namespace riband::shop {

using store::Account;
using store::OrderState;
using Kind = Reason::Kind;
using Why = Refusal::Why;

namespace {

std::string chosenCode(const Outlook& outlook, const Suggestion& suggestion) {
    REQUIRE(suggestion.best.plan.mountings.size() == 1);
    return outlook.problem.pieces[suggestion.best.plan.mountings.front().piece].code;
}

belt::Belt toothed(const char* profile, int teeth, Length length) {
    return {profile, Teeth{teeth}, length, ""};
}

} // namespace

TEST_CASE("The plain one: three of 30, from the piece that leaves nothing dead, finished for the shelf",
          "[days]") {
    TestShop shop;
    // 2.5 + 90 are needed. 101 would leave a dead 8.5; 120 leaves 27.5, of which 20 go on the shelf.
    const store::PieceId dead = shop.remnant(shop.h8m1200, mm(101));
    const store::PieceId better = shop.remnant(shop.h8m1200, mm(120));
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), 3}});
    const Suggestion suggestion = suggest(outlook);
    CHECK(chosenCode(outlook, suggestion) == shop.at(better).code);
    CHECK(suggestion.best.reason.kind == Kind::AvoidsDead);
    CHECK(suggestion.best.reason.figure == um(8'500));
    CHECK(suggestion.best.reason.other == shop.at(dead).code);

    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
    const CutDone done = recordCut(shop.shop, {shop.mountingOf(ordered).id}); // the 20 stand on the ticket
    CHECK(done.allReady());
    CHECK(done.shelf.size() == 1);
    handOver(shop.shop, ordered.order);
    // 120 = 2.5 trim + 90 sold + 20 on the shelf + 5 end + 2.5 stub
    CHECK(shop.widthOn(Account::Rack) == 101'000);
    CHECK(shop.widthOn(Account::Ready) == 20'000);
    CHECK(shop.widthOn(Account::Scrap) == 2'500);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("The number from an old invoice: in stock as a sleeve only", "[days]") {
    TestShop shop;
    const belt::Belt l322 = toothed("L", 86, Length::micrometres(819'150));
    const store::PieceId sleeve = shop.piece(l322, um(406'400));
    const Suggestion suggestion = shop.suggestFor(l322, um(19'050), 1);
    CHECK(suggestion.best.reason.kind == Kind::NewSleeve);
    CHECK(suggestion.best.reason.figure == um(406'400 - 2'500 - 19'050));
    shop.cutAll(shop.order(l322, um(19'050), 1));
    CHECK(shop.at(sleeve).extent == um(384'850));
}

TEST_CASE("The look-alike: the belt that fits the pulley is there, too", "[days]") {
    TestShop shop;
    const belt::Belt h960 = toothed("H8M", 120, Length::millimetres(960));
    const belt::Belt s960 = toothed("S8M", 120, Length::millimetres(960));
    shop.piece(h960, mm(400));
    shop.piece(s960, mm(400));
    const auto alike = shop.shop.tables->lookAlikes("H8M");
    CHECK(
        std::any_of(alike.begin(), alike.end(), [](const auto* profile) { return profile->name == "S8M"; }));
    CHECK(shop.suggestFor(s960, mm(50), 1).best.plan.unserved.empty());
}

TEST_CASE("Odd width: 27 mm are cut and priced by the millimetre", "[days]") {
    TestShop shop;
    const belt::Belt t10 = toothed("T10", 125, Length::millimetres(1250));
    store::StockedBelt kept = keep(shop.shop, t10);
    kept.price = WidthPrice::thousandths(40'000);
    store::Catalogue{shop.connection}.change(kept);
    const store::PieceId sleeve = shop.piece(t10, mm(200));
    const Ordered ordered = shop.order(t10, mm(27), 1);
    CHECK(shop.lineOf(ordered.order).price.width == Money::minor(1080)); // 27 x 0.40
    const BenchMounting row = mountingsOf(shop.shop, *ordered.ticket).front();
    CHECK_FALSE(row.tolerances.empty());
    shop.cutAll(ordered);
    CHECK(shop.at(sleeve).extent == um(170'500));
}

TEST_CASE("Ribbed, six ribs: a belt lies on the shelf, nothing is cut", "[days]") {
    TestShop shop;
    shop.piece(shop.pj1194, ribs(60));
    shop.ready(shop.pj1194, ribs(6));
    CHECK(shop.suggestFor(shop.pj1194, ribs(6), 1).best.reason.kind == Kind::FromShelf);
    const Ordered ordered = shop.order(shop.pj1194, ribs(6), 1);
    CHECK_FALSE(ordered.ticket);
    handOver(shop.shop, ordered.order);
    CHECK(shop.widthOn(Account::Rack) == 60);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Seven lines by phone, cut together with two waiting orders: one mounting saved a piece",
          "[days]") {
    TestShop shop;
    const belt::Belt t10 = toothed("T10", 125, Length::millimetres(1250));
    const belt::Belt xl = toothed("XL", 100, Length::micrometres(508'000));
    shop.piece(shop.h8m1200, mm(400));
    shop.piece(shop.t5x500, mm(200));
    shop.piece(t10, mm(200));
    shop.piece(xl, mm(200));
    const Ordered waitingH8m = shop.order(shop.h8m1200, mm(30), 2);
    const Ordered waitingT5 = shop.order(shop.t5x500, mm(16), 1);
    const Ordered plant =
        shop.order({TestShop::line(shop.h8m1200, mm(20), 1), TestShop::line(shop.h8m1200, mm(30), 1),
                    TestShop::line(shop.h8m1200, mm(50), 1), TestShop::line(shop.h8m1200, mm(20), 1),
                    TestShop::line(shop.t5x500, mm(10), 1), TestShop::line(t10, mm(25), 1),
                    TestShop::line(xl, um(9'500), 1)});
    CHECK(bench(shop.shop).size() == 6); // 1 + 1 waiting, 4 belts of the plant
    const Ordered joint = together(shop.shop, {plant.order, waitingH8m.order, waitingT5.order});
    const std::vector<BenchMounting> rows = bench(shop.shop);
    CHECK(rows.size() == 4);
    for (const BenchMounting& row : rows)
        recordCut(shop.shop, {row.mounting.id});
    for (const store::OrderId order : {plant.order, waitingH8m.order, waitingT5.order})
        CHECK(shop.at(order).state == OrderState::Ready);
    CHECK(shop.at(*joint.ticket).state == store::TicketState::Cut);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Nothing here: it is quoted, not ordered, and ordered when the sleeve has come", "[days]") {
    TestShop shop;
    const belt::Belt xl = toothed("XL", 212, Length::micrometres(1'076'960));
    CHECK(shop.suggestFor(xl, um(9'500), 1).best.reason.kind == Kind::Unserved);
    const Draft draft{{TestShop::line(xl, um(9'500), 1)}};
    checkRefused(shop, Why::WidthTaken, [&] { order(shop.shop, draft); });
    const store::OrderId quoted = quote(shop.shop, draft);
    CHECK(shop.at(quoted).state == OrderState::Quoted);
    shop.piece(xl, mm(200));
    const Ordered ordered = order(shop.shop, resume(shop.shop, quoted), quoted);
    CHECK(ordered.ticket);
    CHECK(ordered.order == quoted); // the customer's paper bears its number
    CHECK(shop.at(quoted).state == OrderState::Open);
}

TEST_CASE("Interrupted: one is parked, another served, the first goes on", "[days]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(100));
    shop.ready(shop.pj1194, ribs(6));
    const Draft plant{{TestShop::line(shop.h8m1200, mm(30), 2)}, "Packaging plant"};
    const store::OrderId parked = park(shop.shop, plant);
    const Ordered counter = shop.order(shop.pj1194, ribs(6), 1);
    handOver(shop.shop, counter.order);
    const Ordered ordered = order(shop.shop, resume(shop.shop, parked), parked);
    CHECK(shop.at(ordered.order).customerName == "Packaging plant");
    CHECK(shop.cutAll(ordered).allReady());
    CHECK(shop.disagreements().empty());
}

} // namespace riband::shop
