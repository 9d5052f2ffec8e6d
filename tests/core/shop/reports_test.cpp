// The owner's reports on small shops whose figures are worked out beside them.
#include "core/shop/reports/basis.h"
#include "core/store/verify.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

namespace {

Moment morning(int year, unsigned month, unsigned day) {
    return Moment{Date{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day}}};
}
const Period everything{morning(2000, 1, 1), morning(2100, 1, 1)};

const WasteRow& rowNamed(const std::vector<WasteRow>& rows, const std::string& group) {
    for (const WasteRow& row : rows)
        if (row.group == group) return row;
    FAIL("no row " << group);
    throw std::logic_error("unreachable");
}

void checkHolds(const WasteRow& row) {
    INFO(row.group);
    CHECK(row.width.in() == row.width.out());
    CHECK(row.money.in() == row.money.out());
}

const Currency euro{"EUR", 2};

/// The movements behind each figure of a line come to it, as the table has it, and one by one.
void checkBehind(const Shop& shop, const WasteRow& row) {
    const ReportTable table = tableOf(std::vector{row}, euro, Sees::Cost);
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const std::string& figure = table.columns[i];
        INFO(row.group << " " << figure);
        const auto what = behindFigure(row.behind, figure);
        if (!what) {
            const std::string& field = table.rows.front()[i];
            CHECK(std::all_of(field.begin(), field.end(), [](char c) { return c == '0' || c == '.'; }));
            continue;
        }
        const Moves moves = movesBehind(shop, *what, figure, euro, 1000);
        CHECK(moves.basis.all == static_cast<std::int64_t>(moves.newest.size()));
        if (table.rows.front()[i].empty()) continue; // a belt has no known weight
        const bool isSum = figure != "group" && figure != "unit" && figure != "lost_share_percent";
        if (!isSum) CHECK(moves.basis.sum.empty());
        if (isSum && !(row.behind.place && moves.basis.sum.empty()))
            CHECK(moves.basis.sum == table.rows.front()[i]);
    }
}

} // namespace

TEST_CASE("Where a sleeve of 100 went is told to the micrometre and the cent", "[reports]") {
    TestShop shop;
    // 100 for 80.00: three belts of 30, 2.5 of trim; of the 7.5 that are left 5 are the end, 2.5 a stub.
    shop.piece(shop.h8m1200, mm(100), cutting::PieceKind::Sleeve, 8000);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 3));
    const auto rows = waste(shop.shop, everything, GroupBy::Belt);
    REQUIRE(rows.size() == 1);
    const WasteRow& row = rows.front();
    CHECK(row.group == "H8M 1200");
    CHECK(row.width == Balance<std::int64_t>{
                           .bought = 100'000, .sold = 90'000, .trim = 2'500, .end = 5'000, .stub = 2'500});
    CHECK(row.money ==
          Balance<std::int64_t>{.bought = 8000, .sold = 7200, .trim = 200, .end = 400, .stub = 200});
    CHECK(row.width.yield() == Approx(0.9));
    CHECK(row.area.bought == Approx(0.1 * 1.2)); // 100 mm of 1200
    checkHolds(row);
}

TEST_CASE("What lay on the rack before opens the period, and what lies there closes it", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 1)); // 367.5 stay
    const Moment noon = shop.time + std::chrono::hours{3};
    shop.time = noon;
    shop.cutAll(shop.order(shop.h8m1200, mm(50), 1)); // 315 stay
    const auto later = waste(shop.shop, {noon, everything.until}, GroupBy::All);
    REQUIRE(later.size() == 1);
    CHECK(later.front().width ==
          Balance<std::int64_t>{.opening = 367'500, .sold = 50'000, .trim = 2'500, .closing = 315'000});
    const auto earlier = waste(shop.shop, {everything.from, noon}, GroupBy::All);
    CHECK(earlier.front().width.closing == later.front().width.opening);
    CHECK(earlier.front().money.closing == later.front().money.opening);
}

TEST_CASE("A ready belt that is sold later moves from ready to sold", "[reports]") {
    TestShop shop;
    shop.ready(shop.h8m1200, mm(30));
    const Moment noon = shop.time + std::chrono::hours{3};
    const auto before = waste(shop.shop, {everything.from, noon}, GroupBy::All).front();
    CHECK(before.width.ready == 30'000);
    CHECK(before.shelf == 30'000);
    shop.time = noon;
    shop.order(shop.h8m1200, mm(30), 1); // taken from the shelf at once
    const auto after = waste(shop.shop, {noon, everything.until}, GroupBy::All).front();
    CHECK(after.width.ready == -30'000);
    CHECK(after.width.sold == 30'000);
    CHECK(after.shelf == 0);
    const auto all = waste(shop.shop, everything, GroupBy::All).front();
    CHECK(all.width.ready == 0);
    CHECK(all.width.sold == 30'000);
    for (const WasteRow* row : {&before, &after, &all})
        checkHolds(*row);
}

TEST_CASE("Each cause, person and place has its line, and they add up to the shop", "[reports]") {
    TestShop shop;
    const auto id = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 2));
    move(shop.shop, id, "A1");
    scrap(shop.shop, id, mm(10), store::ScrapReason::Damaged, "");
    shop.piece(shop.pj1194, ribs(40), cutting::PieceKind::Sleeve, 4000);
    const auto all = waste(shop.shop, everything, GroupBy::All);
    for (const GroupBy by : {GroupBy::Belt, GroupBy::Profile, GroupBy::Family, GroupBy::Person,
                             GroupBy::Cutter, GroupBy::Place, GroupBy::Cause}) {
        const auto rows = waste(shop.shop, everything, by);
        for (const WasteRow& row : rows)
            checkHolds(row);
        for (const WasteRow& whole : all) {
            CHECK(totalOf(rows, whole.unit).width == whole.width);
            CHECK(totalOf(rows, whole.unit).money == whole.money);
        }
    }
    const auto causes = waste(shop.shop, everything, GroupBy::Cause);
    CHECK(rowNamed(causes, "damaged").width.damaged == 10'000);
    CHECK(rowNamed(causes, "damaged").width.closing == -10'000); // taken from the rack
    CHECK(rowNamed(waste(shop.shop, everything, GroupBy::Place), "A1").width.closing == 327'500);
    CHECK(rowNamed(waste(shop.shop, everything, GroupBy::Family), "V-ribbed").unit == Unit::Rib);
}

TEST_CASE("What each cutter cut has its line, and the rest is by hand", "[reports]") {
    TestShop shop;
    const store::CutterId second = shop.addCutter("Long bench");
    const auto id = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000); // 0.20 a mm
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 2)); // on the usual one: 60 and 2.5 of trim
    const Ordered other = shop.order(shop.h8m1200, mm(50), 1);
    putOnCutter(shop.shop, shop.mountingOf(other).id, second); // 50 and 2.5 of trim
    shop.cutAll(other);
    scrap(shop.shop, id, mm(10), store::ScrapReason::Damaged, "");

    const auto rows = waste(shop.shop, everything, GroupBy::Cutter);
    REQUIRE(rows.size() == 3);
    CHECK(rowNamed(rows, "Cutter").width ==
          Balance<std::int64_t>{.sold = 60'000, .trim = 2'500, .closing = -62'500});
    CHECK(rowNamed(rows, "Cutter").money ==
          Balance<std::int64_t>{.sold = 1200, .trim = 50, .closing = -1250});
    CHECK(rowNamed(rows, "Long bench").width ==
          Balance<std::int64_t>{.sold = 50'000, .trim = 2'500, .closing = -52'500});
    CHECK(rowNamed(rows, "Long bench").money ==
          Balance<std::int64_t>{.sold = 1000, .trim = 50, .closing = -1050});
    CHECK(rowNamed(rows, "").width ==
          Balance<std::int64_t>{.bought = 400'000, .damaged = 10'000, .closing = 390'000});
    for (const WasteRow& row : rows)
        checkHolds(row);

    for (const GroupBy by : {GroupBy::All, GroupBy::Belt, GroupBy::Person, GroupBy::Cause, GroupBy::Cutter})
        for (const WasteRow& row : waste(shop.shop, everything, by))
            checkBehind(shop.shop, row);

    const auto onSecond = movesBehind(shop.shop, rowNamed(rows, "Long bench").behind, "group", euro, 100);
    REQUIRE(onSecond.newest.size() == 1);
    CHECK(onSecond.newest.front().movement.movement.about().cutter == second);
    CHECK(movesBehind(shop.shop, rowNamed(rows, "").behind, "group", euro, 100).newest.size() == 2);
}

TEST_CASE("A cut that is undone is taken back from its cutter, also after that was taken out", "[reports]") {
    TestShop shop;
    const store::CutterId second = shop.addCutter("Long bench");
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    const store::MountingId mounting = shop.mountingOf(ordered).id;
    putOnCutter(shop.shop, mounting, second);
    shop.cutAll(ordered);
    store::ShopSettings settings = store::Settings{shop.connection}.read();
    settings.cutters.pop_back();
    store::Transaction transaction{shop.connection};
    store::Settings{shop.connection}.write(settings);
    transaction.commit();
    undoCut(shop.shop, mounting);
    for (const WasteRow& row : waste(shop.shop, everything, GroupBy::Cutter))
        CHECK(row.group != "Long bench"); // nothing is left of it
    shop.cutAll(ordered);                 // it waited on a cutter that is no more
    CHECK(rowNamed(waste(shop.shop, everything, GroupBy::Cutter), "Cutter").width.sold == 30'000);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Behind every line of the waste report stand the movements that it sums", "[reports]") {
    TestShop shop;
    shop.addCutter("Long bench");
    const auto id = shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    move(shop.shop, id, "A1");
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 2));
    shop.piece(shop.t5x500, mm(100), cutting::PieceKind::Sleeve, 4000);
    shop.cutAll(shop.order(shop.t5x500, mm(20), 1));
    for (const GroupBy by : {GroupBy::Belt, GroupBy::Profile, GroupBy::Family, GroupBy::Person,
                             GroupBy::Cutter, GroupBy::Place, GroupBy::Cause})
        for (const WasteRow& row : waste(shop.shop, everything, by)) {
            INFO(row.group);
            std::int64_t sold = 0, trim = 0;
            for (const auto& line : movesBehind(shop.shop, row.behind, "group", euro, 100).newest)
                for (const auto& posting : line.movement.movement.postings()) {
                    if (!row.behind.accounts.empty() && posting.account != row.behind.accounts.front())
                        continue;
                    if (posting.account == store::Account::Sold) sold += posting.amount;
                    if (posting.account == store::Account::Trim) trim += posting.amount;
                }
            checkBehind(shop.shop, row);
            CHECK(sold == row.width.sold);
            CHECK(trim == row.width.trim);
        }
}

TEST_CASE("What was undone takes its figures back, when it was undone", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 1);
    shop.cutAll(ordered);
    const Moment noon = shop.time + std::chrono::hours{3};
    shop.time = noon;
    undoCut(shop.shop, shop.at(*ordered.ticket).mountings.front().id);
    CHECK(waste(shop.shop, {noon, everything.until}, GroupBy::All).front().width ==
          Balance<std::int64_t>{.opening = 367'500, .sold = -30'000, .trim = -2'500, .closing = 400'000});
    CHECK(waste(shop.shop, everything, GroupBy::All).front().width ==
          Balance<std::int64_t>{.bought = 400'000, .closing = 400'000});
}

TEST_CASE("The movements behind a figure add up to it", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    for (int i = 0; i < 3; ++i)
        shop.cutAll(shop.order(shop.h8m1200, mm(30), 1));
    const auto row = waste(shop.shop, everything, GroupBy::Belt).front();
    const Moves moves = movesBehind(shop.shop, *behindFigure(row.behind, "trim"), "trim", euro, 2);
    CHECK(moves.basis.all == 3); // the sum is of all, however few are told
    CHECK(moves.basis.sum == "7.5");
    CHECK(moves.basis.unit == "mm");
    REQUIRE(moves.newest.size() == 2);
    CHECK(moves.newest.front().counts == "2.5");
    CHECK(moves.newest.front().movement.movement.about().at >
          moves.newest.back().movement.movement.about().at);
    // 0.20 a mm
    CHECK(movesBehind(shop.shop, *behindFigure(row.behind, "cost_trim"), "cost_trim", euro, 2).basis.sum ==
          "1.50");
    CHECK(row.width.lost() == 7'500);
    CHECK(movesBehind(shop.shop, *behindFigure(row.behind, "cost_lost"), "cost_lost", euro, 2).basis.sum ==
          "1.50");
}

TEST_CASE("The period before has as many months, or as many days; the year before the same days",
          "[reports]") {
    CHECK(before({morning(2026, 3, 1), morning(2026, 4, 1)}) ==
          Period{morning(2026, 2, 1), morning(2026, 3, 1)});
    CHECK(before({morning(2026, 1, 1), morning(2027, 1, 1)}) ==
          Period{morning(2025, 1, 1), morning(2026, 1, 1)});
    CHECK(before({morning(2026, 3, 9), morning(2026, 3, 16)}) ==
          Period{morning(2026, 3, 2), morning(2026, 3, 9)});
    CHECK(yearBefore({morning(2024, 2, 29), morning(2024, 3, 1)}) ==
          Period{morning(2023, 2, 28), morning(2023, 3, 1)});
}

} // namespace riband::shop
