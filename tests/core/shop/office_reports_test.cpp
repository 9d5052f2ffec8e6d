// Stock, margin, day and trend, each on a shop small enough to work out by hand.
#include "core/shop/price.h"
#include "core/shop/reports/table.h"
#include "tests/core/shop/shop_fixture.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace riband::shop {

namespace {

const Period everything{Moment{Date{std::chrono::year{2000} / 1 / 1}},
                        Moment{Date{std::chrono::year{2100} / 1 / 1}}};

const StockRow& rowNamed(const StockReport& report, const std::string& belt) {
    for (const StockRow& row : report.belts)
        if (row.designation == belt) return row;
    FAIL("no row " << belt);
    throw std::logic_error("unreachable");
}

void price(TestShop& shop, const belt::Belt& belt, std::int64_t thousandths, std::int64_t sleeveCost) {
    store::Catalogue catalogue{shop.connection};
    store::StockedBelt entry = *catalogue.find(belt);
    entry.price = WidthPrice::thousandths(thousandths);
    entry.sleeveCost = Money::minor(sleeveCost);
    entry.newSleeve = mm(400);
    store::Transaction transaction{shop.connection};
    catalogue.change(entry);
    transaction.commit();
}

} // namespace

TEST_CASE("The rack is worth what can be cut from it and sold in two years", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000, 30);
    shop.remnant(shop.h8m1200, mm(20), 30); // gives no listed width: 2.5 + 20 + 5 is wider
    shop.remnant(shop.h8m1200, mm(100), 30);
    shop.piece(shop.t5x500, mm(400), cutting::PieceKind::Sleeve, 3000, 800);
    price(shop, shop.h8m1200, 100'000, 8000); // 0.20 a mm
    price(shop, shop.t5x500, 100'000, 3000);
    shop.piece(shop.pj1194, ribs(40));
    const auto now = [&] { return stockReport(shop.shop, dayOf(shop.shop.now())); };
    CHECK(rowNamed(now(), "H8M 1200").worth.value().inMinor() == 10'000); // 500 of 520 mm
    CHECK(rowNamed(now(), "T5 500").worth.value().inMinor() == 0);        // dead
    CHECK_FALSE(rowNamed(now(), "PJ 1194").worth);                        // no sleeve has a price
    CHECK(now().worth.inMinor() == 10'000);
    CHECK(now().costOfKnown == rowNamed(now(), "H8M 1200").cost + Money::minor(3000));
    shop.cutAll(shop.order(shop.h8m1200, mm(80), 1)); // of the sleeve, which keeps 317.5
    const StockRow slow = rowNamed(now(), "H8M 1200");
    REQUIRE(slow.width == 317'500 + 100'000 + 20'000);
    REQUIRE(slow.pace == StockRow::Pace::Slow);
    REQUIRE(slow.coverDays == 437'500 * 365 / 80'000); // 1996; 730 of them are sold
    CHECK(slow.worth.value().inMinor() == std::llround(417.5 * 20 * 730 / 1996));
}

TEST_CASE("The rack is told by age, by how long it lasts, and by what is dead", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000, 30);
    shop.cutAll(shop.order(shop.h8m1200, mm(100), 1)); // 297.5 stay
    shop.piece(shop.t5x500, mm(200), cutting::PieceKind::Sleeve, 3000, 800);
    shop.piece(shop.pj1194, ribs(40), cutting::PieceKind::Sleeve, 4000, 10);
    const StockReport report = stockReport(shop.shop, dayOf(shop.shop.now()));
    const StockRow& moving = rowNamed(report, "H8M 1200");
    CHECK(moving.soldInYear == 100'000);
    CHECK(moving.coverDays == 297'500 * 365 / 100'000); // 1085 days, longer than two years
    CHECK(moving.pace == StockRow::Pace::Slow);
    CHECK(rowNamed(report, "T5 500").pace == StockRow::Pace::Dead);
    CHECK(rowNamed(report, "PJ 1194").pace == StockRow::Pace::New);
    std::int64_t pieces = 0;
    Money cost = Money::minor(0);
    for (const AgeRow& age : report.ages) {
        pieces += age.pieces;
        cost = cost + age.cost;
    }
    CHECK(pieces == 3);
    CHECK(cost == report.cost);
    std::int64_t belts = 0;
    Money covered = Money::minor(0);
    for (const CoverRow& cover : report.covers) {
        belts += cover.belts;
        covered = covered + cover.cost;
    }
    CHECK(belts == 3);
    CHECK(covered == report.cost);
    CHECK(report.covers[4].belts == 1); // 731 days and more: the H8M
    CHECK(report.covers[4].cost == moving.cost);
    CHECK(report.covers[5].belts == 2); // none sold
    CHECK(report.ages[4].pieces == 1);  // 731 days to five years: the T5
    CHECK(report.ages[4].cost == Money::minor(3000));
}

TEST_CASE("A margin is what came in without tax, less what the width sold had cost", "[reports]") {
    TestShop shop;
    // 400 mm for 80.00 is 0.20 a mm. Three belts of 30 at 0.10 a mm: 9.00 and three cuts of 2.50 = 16.50; the
    // width cost 18.00.
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    price(shop, shop.h8m1200, 10'000, 8000);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 3));
    const MarginReport report = marginReport(shop.shop, everything);
    REQUIRE(report.belts.size() == 1);
    const MarginRow& row = report.belts.front();
    CHECK(row.sale.revenue == Money::minor(1650));
    CHECK(row.sale.cost == Money::minor(1800));
    CHECK(row.margin() == Money::minor(-150));
    CHECK(row.share() == Permille{-91});
    REQUIRE(report.below.size() == 1);
    CHECK(report.below.front().revenue == Money::minor(1650));
    CHECK(row.listBelowCost());
    // 90 sold and 2.5 of trim: yield 90/92.5, so a mm sold costs 20 x 92.5 / 90 = 20.556 cents.
    REQUIRE(row.fullCost);
    CHECK(row.fullCost->inThousandths() == 20'556);
    // 40 % over it: 20.556 / 0.6 = 34.26, rounded up to the cent.
    CHECK(row.proposed(Permille{400}, Currency{"EUR", 2}) == WidthPrice::thousandths(35'000));
    CHECK(report.customers.front().sale.revenue == Money::minor(1650));
}

TEST_CASE("What was cut from width without a cost is in no margin, and it is told how much that is",
          "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400)); // nobody said what it cost
    price(shop, shop.h8m1200, 10'000, 8000);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 3)); // 16.50
    const auto row = [&] { return marginReport(shop.shop, everything).belts.at(0); };
    CHECK(row().sale.revenue == Money::minor(1650));
    CHECK(row().sale.uncosted == Money::minor(1650));
    CHECK_FALSE(row().sale.costKnown());
    CHECK(row().margin() == Money::minor(0));
    CHECK_FALSE(row().share());
    const auto cells = tableOf(marginReport(shop.shop, everything).belts, Permille{400}, Currency{"EUR", 2});
    CHECK(cells.rows.at(0).at(6).empty()); // the margin
    CHECK(cells.rows.at(0).back() == "16.50");

    // Another piece whose cost is known: only what it gave is in the margin.
    shop.piece(shop.h8m1200, mm(450), cutting::PieceKind::Sleeve, 9000, 9); // the older one goes first
    shop.cutAll(shop.order(shop.h8m1200, mm(380), 1));
    REQUIRE(row().sale.lines == 2);
    CHECK(row().sale.costKnown());
    CHECK(row().sale.uncosted == Money::minor(1650));
    CHECK(row().sale.cost == Money::minor(7600));
    CHECK(row().margin() == row().sale.revenue - Money::minor(1650) - Money::minor(7600));
    CHECK(marginReport(shop.shop, everything).customers.at(0).sale.uncosted == Money::minor(1650));
    const store::Sale all = store::Revenue{shop.connection, everything.from, everything.until}.total();
    CHECK(all.margin() == row().margin());

    const StockReport stock = stockReport(shop.shop, dayOf(shop.shop.now()));
    CHECK(stock.uncosted == 1);
    CHECK(rowNamed(stock, "H8M 1200").uncosted == 1);
}

TEST_CASE("A period in which nothing was sold has no sales", "[reports]") {
    TestShop shop;
    const store::Sale none = store::Revenue{shop.connection, everything.from, everything.until}.total();
    CHECK(none.lines == 0);
    CHECK(none.revenue == Money::minor(0));
    CHECK(none.uncosted == Money::minor(0));
}

TEST_CASE("A belt that comes back takes its sale and its cost back", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    price(shop, shop.h8m1200, 50'000, 8000);
    const Ordered ordered = shop.order(shop.h8m1200, mm(30), 3);
    shop.cutAll(ordered);
    cancel(shop.shop, ordered.order);
    const MarginReport report = marginReport(shop.shop, everything);
    REQUIRE(report.belts.size() == 1);
    CHECK(report.belts.front().sale.revenue == Money::minor(0));
    CHECK(report.belts.front().sale.cost == Money::minor(0));
    CHECK(report.below.empty());
}

TEST_CASE("The day closes with its takings by kind, and what is still to be collected", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    price(shop, shop.h8m1200, 50'000, 8000);
    const Ordered paid = shop.order(shop.h8m1200, mm(30), 1), waits = shop.order(shop.h8m1200, mm(20), 1);
    shop.cutAll(paid);
    shop.cutAll(waits);
    shop.order(shop.h8m1200, mm(50), 1);
    handOver(shop.shop, paid.order, store::Payment::Card);
    const Money total = shop.lineOf(paid.order).price.total;
    const DayReport report = dayReport(shop.shop, dayOf(shop.shop.now()));
    CHECK(report.taken == total);
    CHECK(report.takings[1].orders == 1);
    CHECK(report.takings[1].amount == total);
    CHECK(report.takings[0].orders == 0);
    CHECK(report.openTickets == 1);
    CHECK(report.openOrders == 1);
    REQUIRE(report.uncollected.size() == 1);
    CHECK(report.uncollected.front().id == waits.order);
    CHECK(dayReport(shop.shop, dayOf(shop.shop.now()) + std::chrono::days{1}).taken == Money::minor(0));
}

TEST_CASE("Months that chance alone moves stay in their band 19 times in 20, and a bad month leaves it",
          "[reports]") {
    std::mt19937 random{7};
    std::exponential_distribution<double> sold{1.0 / 60}, lost{1.0 / 4};
    const auto month = [&](double worse) {
        TrendPoint point{everything, {}, std::nullopt};
        for (int cut = 0; cut < 80; ++cut) {
            const auto s = static_cast<std::int64_t>(1000 * sold(random));
            const auto l = static_cast<std::int64_t>(1000 * worse * (2.5 + lost(random)));
            const double dl = static_cast<double>(l), du = static_cast<double>(s + l);
            ++point.scatter.movements;
            point.scatter.sold += s;
            point.scatter.lost += l;
            point.scatter.lostLost += dl * dl;
            point.scatter.lostUsed += dl * du;
            point.scatter.usedUsed += du * du;
        }
        return point;
    };
    std::vector<TrendPoint> points;
    for (int i = 0; i < 2000; ++i)
        points.push_back(month(1));
    addBands(points);
    const auto outside = std::count_if(points.begin(), points.end(), [](const auto& p) { return p.news(); });
    CHECK(outside > 60); // 100 expected, standard deviation 10
    CHECK(outside < 140);
    points.resize(12);
    points.push_back(month(1.8));
    addBands(points);
    CHECK(points.back().news());
}

TEST_CASE("The trend's sums are those of the waste report, month by month", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 2));
    shop.time += std::chrono::days{40};
    shop.cutAll(shop.order(shop.h8m1200, mm(50), 1));
    const auto points = trends(shop.shop, shop.time, 3).toothed;
    REQUIRE(points.size() == 3);
    for (const TrendPoint& point : points) {
        const WasteRow all = totalOf(waste(shop.shop, point.month, GroupBy::All), Unit::Micrometre);
        CHECK(point.scatter.sold == all.width.sold);
        CHECK(point.scatter.lost == all.width.lost());
    }
    CHECK(points.back().scatter.movements == 1);
    CHECK(points.back().low == 0); // one cut says nothing of chance
    CHECK(points.back().high == 1);
}

TEST_CASE("Costs stand in a table for the owner only", "[reports]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    const Currency euro{"EUR", 2};
    const auto rows = waste(shop.shop, everything, GroupBy::All);
    const StockReport stock = stockReport(shop.shop, dayOf(shop.shop.now()));
    for (const ReportTable& table :
         {tableOf(rows, euro, Sees::WidthOnly), tableOf(stock, euro, Sees::WidthOnly),
          agesOf(stock, euro, Sees::WidthOnly), coversOf(stock, euro, Sees::WidthOnly)}) {
        for (const std::string& column : table.columns)
            CHECK(column.find("cost") == std::string::npos);
        for (const auto& row : table.rows)
            CHECK(row.size() == table.columns.size());
    }
    CHECK(csvOf(tableOf(rows, euro, Sees::Cost)).find("80.00") != std::string::npos);
    CHECK(csvOf(tableOf(rows, euro, Sees::WidthOnly)).find("80.00") == std::string::npos);
}

} // namespace riband::shop
