// What counting found in a period, on a shop small enough to work out by hand.
#include "core/shop/counting/count.h"
#include "core/shop/counting/settle.h"
#include "core/shop/reports/accuracy.h"
#include "core/shop/reports/shrinkage.h"
#include "tests/core/shop/shop_fixture.h"

#include <algorithm>

namespace riband::shop {

using store::Explanation;
using store::Method;

namespace {

const Period everything{Moment{Date{std::chrono::year{2000} / 1 / 1}},
                        Moment{Date{std::chrono::year{2100} / 1 / 1}}};

/// 10.00 for 100 mm of H8M, so a cent is 0.1 mm; 20.00 for 200 mm of T5. At A1: `near` is 0.2 short, `cut` 20
/// short, `gone` of 45 is not there, and 30 of H8M lie without label. At B2 a T5 of which 30 were cut for an
/// order and not recorded: with a trim, 32.5 are missing. Of 40 ribs at C3, 6 and a trim were cut by JT and
/// recorded; it lies at D4.
struct CountedShop : TestShop {
    CountedShop() {
        near = at(h8m1200, mm(100), "A1", 1'000);
        cut = at(h8m1200, mm(60), "A1", 600);
        gone = at(h8m1200, mm(45), "A1", 450);
        late = at(t5x500, mm(200), "B2", 2'000);
        ribbed = at(pj1194, ribs(40), "C3", 4'000);
        cutAll(order(pj1194, ribs(6), 1)); // 33 are left for 33.00
        order(t5x500, mm(30), 1);
        measure("A1", near, um(99'800), 1);
        measure("A1", cut, mm(40), 2);
        noteFind(shop, beginCount(shop, "A1"), h8m1200, mm(30), Method::Calliper);
        closeCount(shop, beginCount(shop, "A1"));
        measure("B2", late, um(167'500), 2);
        measure("D4", ribbed, ribs(33), 1);
    }
    store::PieceId at(const belt::Belt& belt, Extent extent, const std::string& place, std::int64_t cost) {
        const store::PieceId made = piece(belt, extent, cutting::PieceKind::Remnant, cost);
        move(shop, made, place);
        return made;
    }
    using TestShop::at;
    void measure(const std::string& place, store::PieceId piece, Extent extent, int times) {
        const store::CountId count = beginCount(shop, place);
        for (int i = 0; i < times; ++i)
            note(shop, count, piece, extent, Method::Calliper);
    }
    /// The difference of this piece, or of the find.
    store::SettlementId settleAs(std::optional<store::PieceId> piece, Explanation what) {
        for (const Finding& finding : findings(shop))
            if (finding.difference.piece == piece)
                for (const auto& proposal : finding.proposals)
                    if (proposal.what == what)
                        return settle(shop, finding.difference, proposal).settlements.front();
        FAIL("no such proposal");
        throw std::logic_error("unreachable");
    }
    void settleAll() {
        settleAs(cut, Explanation::Unexplained);
        settleAs(gone, Explanation::Unexplained);
        settleAs(std::nullopt, Explanation::Found);
        settleAs(late, Explanation::CutNotRecorded);
    }
    store::PieceId near{0}, cut{0}, gone{0}, late{0}, ribbed{0};
};

template <class Row>
const Row& rowOf(const std::vector<Row>& rows, const std::string& group) {
    for (const Row& row : rows)
        if (row.group == group) return row;
    FAIL("no row " << group);
    throw std::logic_error("unreachable");
}

void check(const ShrinkageRow& row, std::int64_t settled, std::int64_t less, std::int64_t more,
           std::int64_t sold, std::int64_t lost, std::int64_t cost) {
    INFO(row.group);
    CHECK(row.settled == settled);
    CHECK(row.less == less);
    CHECK(row.more == more);
    CHECK(row.sold == sold);
    CHECK(row.lost == lost);
    CHECK(row.cost == Money::minor(cost));
    CHECK(row.less == row.more + row.sold + row.lost);
}

void check(const AccuracyRow& row, std::int64_t counted, std::int64_t right, std::int64_t elsewhere,
           std::int64_t missing, std::int64_t unlabelled) {
    INFO(row.group);
    CHECK(row.counted == counted);
    CHECK(row.right == right);
    CHECK(row.elsewhere == elsewhere);
    CHECK(row.missing == missing);
    CHECK(row.unlabelled == unlabelled);
}

} // namespace

TEST_CASE("Shrinkage is told by cause, by belt and by place, in width and at cost", "[count][reports]") {
    CountedShop shop;
    CHECK(shrinkage(shop.shop, everything, ShrinkageBy::Cause).size() == 1); // what was near enough
    shop.settleAll();
    const auto causes = shrinkage(shop.shop, everything, ShrinkageBy::Cause);
    REQUIRE(causes.size() == 4);
    CHECK(causes.front().group == "unexplained"); // the dearest first
    check(rowOf(causes, "unexplained"), 2, 65'000, 0, 0, 65'000, 650);
    check(rowOf(causes, "unrecorded cut"), 1, 32'500, 0, 30'000, 2'500, 25); // the trim is lost
    check(rowOf(causes, "measuring"), 1, 200, 0, 0, 200, 2);
    check(rowOf(causes, "found"), 1, 0, 30'000, 0, -30'000, 0);
    check(totalOf(causes, Unit::Micrometre), 5, 97'700, 30'000, 30'000, 37'700, 677);
    const auto belts = shrinkage(shop.shop, everything, ShrinkageBy::Belt);
    check(rowOf(belts, "H8M 1200"), 4, 65'200, 30'000, 0, 35'200, 652);
    check(rowOf(belts, "T5 500"), 1, 32'500, 0, 30'000, 2'500, 25);
    const auto places = shrinkage(shop.shop, everything, ShrinkageBy::Place);
    check(rowOf(places, "A1"), 4, 65'200, 30'000, 0, 35'200, 652);
    check(rowOf(places, "B2"), 1, 32'500, 0, 30'000, 2'500, 25);
    const Period before{everything.from, Moment{Date{std::chrono::year{2026} / 3 / 1}}};
    CHECK(shrinkage(shop.shop, before, ShrinkageBy::Cause).empty());
}

TEST_CASE("A settlement that was countered is no shrinkage, and one movement counts once",
          "[count][reports]") {
    CountedShop shop;
    const store::SettlementId missing = shop.settleAs(shop.gone, Explanation::Unexplained);
    check(rowOf(shrinkage(shop.shop, everything, ShrinkageBy::Cause), "unexplained"), 1, 45'000, 0, 0, 45'000,
          450);
    counterSettlement(shop.shop, missing);
    CHECK(shrinkage(shop.shop, everything, ShrinkageBy::Cause).size() == 1); // what was near enough

    // 20 short and 20 long: the width moves from one to the other, 0.1 mm of it nobody knows.
    const store::PieceId other = shop.at(shop.h8m1200, mm(80), "B2", 800);
    shop.measure("B2", other, um(99'900), 2);
    shop.settleAs(shop.cut, Explanation::Swapped);
    check(rowOf(shrinkage(shop.shop, everything, ShrinkageBy::Cause), "wrong piece taken"), 2, 20'000, 19'900,
          0, 100, 0);
}

TEST_CASE("Accuracy is told of all, by place, by belt, and by person and month", "[count][reports]") {
    CountedShop shop;
    const auto all = accuracy(shop.shop, everything, AccuracyBy::All);
    REQUIRE(all.size() == 1);
    check(all.front(), 4, 2, 1, 1, 1); // near and ribbed are right, cut and late are not
    CHECK(all.front().share() == 0.4); // 2 of 4 seen and 1 missing
    shop.settleAll();
    CHECK(accuracy(shop.shop, everything, AccuracyBy::All).front().share() == 0.4); // as it was found
    const auto places = accuracy(shop.shop, everything, AccuracyBy::Place);
    check(rowOf(places, "A1"), 2, 1, 0, 1, 1);
    check(rowOf(places, "B2"), 1, 0, 0, 0, 0);
    check(rowOf(places, "D4"), 1, 1, 1, 0, 0);
    CHECK(places.front().group == "A1"); // two wrong
    const auto belts = accuracy(shop.shop, everything, AccuracyBy::Belt);
    check(rowOf(belts, "H8M 1200"), 2, 1, 0, 1, 1);
    check(rowOf(belts, "PJ 1194"), 1, 1, 1, 0, 0);
    const std::string who = store::People{shop.connection}.at(shop.shop.person).initials;
    const auto people = accuracy(shop.shop, everything, AccuracyBy::Person);
    CHECK(people.size() == 2);
    check(rowOf(people, who), 1, 1, 1, 0, 0); // only the ribbed one was cut
    check(rowOf(people, ""), 3, 1, 0, 1, 1);
    CHECK(rowOf(people, who).month == "2026-03");
    check(rowOf(accuracy(shop.shop, everything, AccuracyBy::Counter), who), 4, 2, 1, 1, 1);
    CHECK_FALSE(AccuracyRow{}.share());
}

TEST_CASE("The second measurement decides, and a later count is another look", "[count][reports]") {
    TestShop shop;
    const store::PieceId piece = shop.remnant(shop.h8m1200, mm(100));
    const store::CountId first = beginCount(shop.shop, "A1");
    note(shop.shop, first, piece, mm(90), Method::Calliper); // misread
    note(shop.shop, first, piece, mm(100), Method::Calliper);
    closeCount(shop.shop, first);
    check(accuracy(shop.shop, everything, AccuracyBy::All).front(), 1, 1, 1, 0, 0);
    note(shop.shop, beginCount(shop.shop, "A1"), piece, mm(100), Method::Tape);
    check(accuracy(shop.shop, everything, AccuracyBy::All).front(), 2, 2, 1, 0, 0);
}

TEST_CASE("Proved is what was counted within 90 days and waits for nothing", "[count][reports]") {
    CountedShop shop;
    shop.piece(shop.h8m1200, mm(10), cutting::PieceKind::Remnant, 100); // nobody counts it
    const auto proved = [&](Moment until) { return provedShare(shop.shop, until); };
    const Moment now = shop.time + std::chrono::hours{1};
    CHECK(proved(now).pieces == 6);
    CHECK(proved(now).proved == 2); // near and ribbed
    shop.settleAll();               // gone is gone, the find is a piece
    const Moment then = shop.time + std::chrono::hours{1};
    const ProvedShare share = proved(then);
    CHECK(share.pieces == 6);
    CHECK(share.proved == 5);
    // 9.98 near + 4.00 cut + 16.75 late + 0 found + what the ribs are worth, and 1.00 of the last.
    const Money ribs = shop.at(shop.ribbed).cost;
    CHECK(share.provedCost == Money::minor(998 + 400 + 1'675) + ribs);
    CHECK(share.cost == share.provedCost + Money::minor(100));
    CHECK(proved(then + std::chrono::days{91}).proved == 0);
    CHECK(provedShare(shop.shop, then + std::chrono::days{91}, 100).proved == 5);
}

TEST_CASE("The tables of both reports are those of their files", "[count][reports]") {
    CountedShop shop;
    shop.settleAll();
    const Currency euro{"EUR", 2};
    const auto causes = shrinkage(shop.shop, everything, ShrinkageBy::Cause);
    CHECK(csvOf(tableOf(causes, euro, Sees::Cost)) == "group,unit,settled,less,more,sold,lost,cost_lost\r\n"
                                                      "unexplained,mm,2,65,0,0,65,6.50\r\n"
                                                      "unrecorded cut,mm,1,32.5,0,30,2.5,0.25\r\n"
                                                      "measuring,mm,1,0.2,0,0,0.2,0.02\r\n"
                                                      "found,mm,1,0,30,0,-30,0.00\r\n");
    CHECK(tableOf(causes, euro, Sees::WidthOnly).columns.back() == "lost"); // costs are the owner's
    CHECK(csvOf(tableOf(accuracy(shop.shop, everything, AccuracyBy::All))) ==
          "group,month,counted,right,elsewhere,missing,unlabelled,right_percent\r\n"
          ",,4,2,1,1,1,40.0\r\n");
}

} // namespace riband::shop
