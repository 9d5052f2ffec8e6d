// Each difference is settled by one act, and can be countered.
#include "core/shop/counting/settled.h"
#include "core/store/upkeep.h"
#include "tests/core/shop/counting/settle_shop.h"

namespace riband::shop {

using store::Account;
using store::Explanation;
using store::Method;
using Why = Refusal::Why;

TEST_CASE("30 are missing, and a mounting for 30 was never recorded: accepting records it", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(100));
    const Ordered sold = shop.order(shop.h8m1200, mm(30), 1);
    const store::CountId count = beginCount(shop.shop, "A1");
    shop.measure(count, piece, um(67'400)); // 100 - 2.5 - 30 - 0.1
    const Finding found = shop.only();
    CHECK(found.proposals.front().what == Explanation::CutNotRecorded);
    shop.acceptFirst(found);
    CHECK(findings(shop.shop).empty());
    CHECK(shop.at(piece).extent == um(67'400));
    CHECK(shop.lineOf(sold.order).cut == 1);
    CHECK(shop.at(sold.order).state == store::OrderState::Ready);
    CHECK(shop.widthOn(Account::Sold) == 30'000);
    CHECK(shop.widthOn(Account::Trim) == 2'500);
    CHECK(shop.widthOn(Account::Difference) == 100);
    CHECK(shop.disagreements().empty());

    SECTION("undoing the cut opens the difference again") {
        undoCut(shop.shop, shop.mountingOf(sold).id);
        CHECK(shop.only().difference.gap == -32'600);
        CHECK(shop.disagreements().empty());
    }
}

TEST_CASE("The worker took another piece than the ticket says and wrote nothing down", "[count]") {
    SettleShop shop;
    store::ShopSettings plain = store::Settings{shop.connection}.read();
    plain.advice.shelfLimit = 0; // one belt a mounting
    store::Settings{shop.connection}.write(plain);
    shop.at(mm(60), "B2");
    const store::PieceId wide = shop.at(mm(100));
    const Ordered sold = shop.order(shop.h8m1200, mm(30), 1);
    REQUIRE(shop.mountingOf(sold).piece != wide);
    const store::CountId count = beginCount(shop.shop, "A1");
    shop.measure(count, wide, um(67'500));
    const Finding found = shop.only();
    CHECK(found.proposals.front().what == Explanation::CutFromOther);
    shop.acceptFirst(found);
    CHECK(shop.at(sold.order).state == store::OrderState::Ready);
    CHECK(shop.at(wide).extent == um(67'500));
    CHECK(shop.at(shop.mountingOf(sold).piece).extent == mm(60));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("The cut was booked of one piece and made of another: the width changes places", "[count]") {
    SettleShop shop;
    const store::PieceId a = shop.at(mm(100)), b = shop.at(mm(80));
    const store::CountId count = beginCount(shop.shop, "A1");
    shop.measure(count, a, um(67'400));
    shop.measure(count, b, um(112'500));
    CHECK(findings(shop.shop).size() == 2);
    const Finding found = findings(shop.shop).front();
    CHECK(found.proposals.front().what == Explanation::Swapped);
    const Settled settled = shop.acceptFirst(found);
    CHECK(settled.settlements.size() == 2);
    CHECK(findings(shop.shop).empty());
    CHECK(shop.at(a).extent == um(67'400));
    CHECK(shop.at(b).extent == um(112'500));
    CHECK(shop.widthOn(Account::Difference) == 100);
    CHECK(shop.costOn(Account::Difference) == 0);
    CHECK(shop.disagreements().empty());

    SECTION("and back: both are open again") {
        counterSettlement(shop.shop, settled.settlements.back());
        CHECK(shop.at(a).extent == mm(100));
        CHECK(shop.at(b).extent == mm(80));
        CHECK(findings(shop.shop).size() == 2);
        checkRefused(shop, Why::AlreadyDone,
                     [&] { counterSettlement(shop.shop, settled.settlements.front()); });
        CHECK(shop.disagreements().empty());
    }
}

TEST_CASE("A piece lost its label: the find of its width is it", "[count]") {
    SettleShop shop;
    const store::PieceId lost = shop.at(mm(62));
    shop.at(mm(90), "B2");
    const store::CountId here = beginCount(shop.shop, "A1");
    CHECK(closeCount(shop.shop, here).size() == 1);
    const store::CountId there = beginCount(shop.shop, "B2");
    noteFind(shop.shop, there, shop.h8m1200, um(61'900), Method::Calliper);
    const std::vector<Finding> all = findings(shop.shop);
    REQUIRE(all.size() == 2);
    CHECK(all[0].proposals.front().what == Explanation::LostLabel);
    CHECK(all[1].proposals.front().what == Explanation::LostLabel);
    const Settled settled = shop.acceptFirst(all[0]);
    CHECK(settled.label == lost);
    CHECK(findings(shop.shop).empty());
    CHECK(shop.at(lost).place == "B2");
    CHECK(store::Upkeep{shop.connection}.relocationsOf(lost).back().from == "A1");
    CHECK(shop.at(lost).extent == um(61'900));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A find that nobody misses comes into the book as found", "[count]") {
    SettleShop shop;
    const store::CountId count = beginCount(shop.shop, "A1");
    noteFind(shop.shop, count, shop.pj1194, ribs(7), Method::Calliper, "behind the rack");
    const Settled settled = shop.acceptFirst(shop.only());
    REQUIRE(settled.label);
    CHECK(shop.at(*settled.label).extent == ribs(7));
    CHECK(shop.at(*settled.label).place == "A1");
    CHECK(shop.widthOn(Account::Found) == -7);
    CHECK(shop.disagreements().empty());
    counterSettlement(shop.shop, settled.settlements.front());
    CHECK(shop.at(*settled.label).gone());
    CHECK(findings(shop.shop).size() == 1);
}

TEST_CASE("Missing is booked with its cost, and comes back with it when it turns up", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(62));
    closeCount(shop.shop, beginCount(shop.shop, "A1"));
    CHECK(shop.only().proposals.front().what == Explanation::Unexplained);
    shop.acceptFirst(shop.only());
    CHECK(shop.at(piece).gone());
    CHECK(shop.costOn(Account::Difference) == 1'000);
    CHECK(findings(shop.shop).empty());

    const store::CountId again = beginCount(shop.shop, "C3");
    shop.measure(again, piece, um(61'900));
    CHECK(shop.only().proposals.front().what == Explanation::Found);
    shop.acceptFirst(shop.only());
    CHECK(shop.at(piece).extent == um(61'900));
    CHECK(shop.at(piece).place == "C3");
    CHECK(shop.costOn(Account::Rack) >= 998);
    CHECK(findings(shop.shop).empty());
    CHECK(shop.disagreements().empty());

    // The loss is countered for good: countering the return, too, would leave width that no difference tells.
    const SettledCases cases{shop.shop};
    REQUIRE(cases.size() == 2);
    CHECK(cases.at(0).settlement.explanation == Explanation::Found);
    CHECK(cases.at(0).change == 61'900);
    CHECK(cases.at(1).counteredBy);
    checkRefused(shop, Why::ActStays, [&] { counterSettlement(shop.shop, cases.id(0)); });
    CHECK(whyNotCountered(shop.shop, cases.id(0))->why() == Why::ActStays);
    CHECK(whyNotCountered(shop.shop, cases.id(1))->why() == Why::AlreadyDone);
}

TEST_CASE("A piece that was thrown away by the book and is here comes back under its own code", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(62));
    scrap(shop.shop, piece, mm(62), store::ScrapReason::Aged, "");
    shop.measure(beginCount(shop.shop, "C3"), piece, um(61'900));
    CHECK(shop.only().proposals.front().what == Explanation::Found);
    const Settled settled = shop.acceptFirst(shop.only());
    CHECK(shop.at(piece).extent == um(61'900));
    CHECK(shop.at(piece).place == "C3");
    CHECK_FALSE(settled.label); // it has one
    CHECK(shop.widthOn(Account::Found) == -61'900);
    CHECK(shop.costOn(Account::Found) == 0);
    CHECK(findings(shop.shop).empty());
    counterSettlement(shop.shop, settled.settlements.front());
    CHECK(shop.at(piece).gone());
    CHECK(shop.only().difference.piece == piece);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("What was settled is listed, the newest first, with what it did and who took it back", "[count]") {
    SettleShop shop;
    const store::PieceId first = shop.at(mm(100)), second = shop.at(mm(64), "B2");
    shop.measure(beginCount(shop.shop, "A1"), first, um(91'117));
    const Settled older = shop.acceptFirst(shop.only());
    shop.measure(beginCount(shop.shop, "B2"), second, um(61'500));
    shop.acceptFirst(shop.only());
    counterSettlement(shop.shop, older.settlements.front());
    const SettledCases cases{shop.shop};
    REQUIRE(cases.size() == 2);
    const SettledCase newest = cases.at(0), oldest = cases.at(1);
    CHECK(newest.piece->id == second);
    CHECK(newest.place == "B2");
    CHECK(newest.belt == "H8M 1200");
    CHECK(newest.settlement.explanation == Explanation::TrimForgotten);
    CHECK(newest.change == -2'500);
    CHECK_FALSE(newest.counteredBy);
    CHECK(cases.id(1) == older.settlements.front());
    CHECK(oldest.change == -8'883);
    REQUIRE(oldest.counteredBy);
    CHECK(oldest.counteredBy->person == shop.shop.person);
    CHECK_FALSE(whyNotCountered(shop.shop, cases.id(0)));
    CHECK(whyNotCountered(shop.shop, cases.id(1)));
}

TEST_CASE("Nothing is cut from a ready belt, so none of what cuts explain is proposed of it", "[count]") {
    SettleShop shop;
    const store::PieceId belt = shop.ready(shop.h8m1200, mm(50));
    shop.measure(beginCount(shop.shop, "A1"), belt, um(27'500)); // of a remnant: a trim and a listed 20
    for (const Finding& finding : findings(shop.shop)) {
        REQUIRE(finding.proposals.size() == 1);
        CHECK(finding.proposals.front().what == Explanation::Unexplained);
        settle(shop.shop, finding.difference, finding.proposals.front());
    }
    CHECK(shop.at(belt).kind == cutting::PieceKind::Ready);
    CHECK(shop.widthOn(Account::Ready) == 27'500);
}

TEST_CASE("Waste goes to its own account", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(64));
    const store::CountId count = beginCount(shop.shop, "A1");
    SECTION("a trim that was not booked") {
        shop.measure(count, piece, um(61'400));
        shop.acceptFirst(shop.only());
        CHECK(shop.widthOn(Account::Trim) == 2'500);
        CHECK(shop.widthOn(Account::Difference) == 100);
    }
    SECTION("an edge that was cut off") {
        shop.measure(count, piece, um(59'600));
        shop.acceptFirst(shop.only());
        CHECK(shop.widthOn(Account::End) == 4'400);
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Above the limit the owner must approve", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(100), "A1", 20'000);
    const store::CountId count = beginCount(shop.shop, "A1");
    shop.measure(count, piece, um(51'117)); // 97.77 worth
    const Finding found = shop.only();
    CHECK(found.value == Money::minor(9'777));
    CHECK(needsApproval(found, found.proposals.front()));
    checkRefused(shop, Why::NeedsApproval, [&] { shop.acceptFirst(found); });
    const auto manager = store::People{shop.connection}.add("CD", "C. Dyer", store::Role::StockManager);
    const auto owner = store::People{shop.connection}.add("EF", "E. Fenn", store::Role::Owner);
    checkRefused(shop, Why::NeedsApproval,
                 [&] { settle(shop.shop, found.difference, found.proposals.front(), manager); });
    std::optional<store::PersonId> asked = owner;
    SECTION("asked there and then") {}
    SECTION("or acting") {
        shop.shop.person = owner;
        asked.reset();
    }
    const Settled settled = settle(shop.shop, found.difference, found.proposals.front(), asked);
    CHECK(store::Counts{shop.connection}.settlement(settled.settlements.front())->approved == owner);
    checkRefused(shop, Why::AlreadyDone, [&] { shop.acceptFirst(found); }); // once only
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A settled difference can't be countered once its width was used", "[count]") {
    SettleShop shop;
    const store::PieceId piece = shop.at(mm(60));
    const store::CountId count = beginCount(shop.shop, "A1");
    shop.measure(count, piece, um(95'117));
    const Settled settled = shop.acceptFirst(shop.only());
    shop.cutAll(shop.order(shop.h8m1200, mm(50), 1)); // 42.617 are left of 95.117
    const auto left = shop.at(piece).extent;
    scrap(shop.shop, piece, left - mm(20), store::ScrapReason::Damaged, "");
    checkRefused(shop, Why::AlreadyDone, [&] { counterSettlement(shop.shop, settled.settlements.front()); });
    CHECK(whyNotCountered(shop.shop, settled.settlements.front())->detail() == shop.at(piece).code);
}

} // namespace riband::shop
