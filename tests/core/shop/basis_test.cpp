// What stands behind the figures of the reports comes to them.
#include "core/shop/reports/basis.h"
#include "core/shop/reports/compared.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

namespace {

const Period everything{Moment{Date{std::chrono::year{2000} / 1 / 1}},
                        Moment{Date{std::chrono::year{2100} / 1 / 1}}};
const Currency euro{"EUR", 2};

void price(const Shop& shop, const belt::Belt& belt, std::int64_t thousandths, std::int64_t sleeveCost) {
    store::Transaction transaction{shop.connection};
    store::Catalogue catalogue{shop.connection};
    store::StockedBelt stocked = catalogue.find(belt).value();
    stocked.price = WidthPrice::thousandths(thousandths);
    stocked.newSleeve = mm(400);
    stocked.sleeveCost = Money::minor(sleeveCost);
    catalogue.change(stocked);
    transaction.commit();
}

std::string fieldOf(const ReportTable& table, std::size_t row, const std::string& column) {
    const auto at = std::find(table.columns.begin(), table.columns.end(), column);
    REQUIRE(at != table.columns.end());
    return table.rows[row][static_cast<std::size_t>(at - table.columns.begin())];
}

/// A belt of which a sleeve, remnants and a ready belt lie there, worth what halves of a cent divide.
struct StockedShop : TestShop {
    StockedShop() {
        price(shop, h8m1200, 50'000, 8001);
        piece(h8m1200, mm(400), cutting::PieceKind::Sleeve, 8001, 30);
        cutAll(order(h8m1200, mm(100), 1));
        remnant(h8m1200, um(67'333), 700);
        remnant(h8m1200, um(41'111), 100);
        ready(h8m1200, mm(30));
        piece(t5x500, mm(200), cutting::PieceKind::Sleeve, 3000, 800);
    }
    Date today() const { return dayOf(shop.now()); }
};

} // namespace

TEST_CASE("Behind every figure of the stock lie the pieces that come to it, to the cent",
          "[reports][basis]") {
    StockedShop shop;
    const StockReport report = stockReport(shop.shop, shop.today());
    const auto check = [&](const ReportTable& table, std::size_t row, const StockPart& part) {
        for (const std::string& figure : table.columns) {
            if (figure != "pieces" && figure != "width" && figure != "cost" && figure != "worth") continue;
            INFO(figure << " of row " << row);
            const Basis basis = piecesBehind(shop.shop, shop.today(), part, figure, euro, Sees::Cost);
            const std::string field = fieldOf(table, row, figure);
            if (basis.all == 0 || (field.empty() && figure == "worth")) {
                CHECK(basis.sum.empty());
                continue;
            }
            CHECK(basis.sum == field);
        }
    };
    const ReportTable belts = tableOf(report, euro, Sees::Cost), ages = agesOf(report, euro, Sees::Cost),
                      covers = coversOf(report, euro, Sees::Cost);
    for (std::size_t row = 0; row < report.belts.size(); ++row)
        check(belts, row, {.belts = {report.belts[row].belt}});
    for (std::size_t row = 0; row < report.ages.size(); ++row)
        check(ages, row, {.age = report.ages[row]});
    for (std::size_t row = 0; row < report.covers.size(); ++row) {
        StockPart part;
        for (const StockRow& belt : report.belts)
            if (isOf(report.covers[row], belt)) part.belts.insert(belt.belt);
        if (!part.belts.empty()) check(covers, row, part);
    }
    const store::BeltId h8m = store::Catalogue{shop.connection}.find(shop.h8m1200)->id;
    CHECK(piecesBehind(shop.shop, shop.today(), {.belts = {h8m}}, "pieces", euro, Sees::Cost).sum == "4");
}

TEST_CASE("Who may not see costs sees none behind the stock and the decisions", "[reports][basis]") {
    StockedShop shop;
    for (const Basis& basis : {piecesBehind(shop.shop, shop.today(), {}, "cost", euro, Sees::WidthOnly),
                               decisionsBehind(shop.shop, everything, "all", "", "expected_cost", nullptr,
                                               euro, Sees::WidthOnly)}) {
        for (const std::string& column : basis.lines.columns) {
            CHECK(column.find("cost") == std::string::npos);
            CHECK(column != "worth");
        }
        CHECK(basis.unit != "EUR");
    }
}

TEST_CASE("Behind a margin stand the order lines, and behind a day what was taken and made",
          "[reports][basis]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    price(shop.shop, shop.h8m1200, 10'000, 8000);
    const Ordered first = shop.order(shop.h8m1200, mm(30), 3);
    shop.cutAll(first);
    const Ordered named = order(shop.shop, {.lines = {TestShop::line(shop.h8m1200, mm(20), 2)},
                                            .customer = "Lower Mill",
                                            .phone = "",
                                            .due = std::nullopt,
                                            .note = ""});
    shop.cutAll(named);
    handOver(shop.shop, named.order, store::Payment::Card);
    const MarginReport report = marginReport(shop.shop, everything);
    const ReportTable belts = tableOf(report.belts, Permille{400}, euro),
                      customers = tableOf(report.customers, Permille{400}, euro);
    for (const char* figure : {"lines", "width", "revenue", "cost", "margin"}) {
        INFO(figure);
        CHECK(salesBehind(shop.shop, everything, {.belt = "H8M 1200"}, figure, euro).sum ==
              fieldOf(belts, 0, figure));
        for (std::size_t row = 0; row < report.customers.size(); ++row)
            if (std::string{"width"} != figure)
                CHECK(
                    salesBehind(shop.shop, everything, {.customer = report.customers[row].name}, figure, euro)
                        .sum == fieldOf(customers, row, figure));
    }
    CHECK(salesBehind(shop.shop, everything, {.customer = "Lower Mill"}, "lines", euro).lines.rows.size() ==
          1);
    // The sleeve's 80.00 over 400 mm, and 130 sold of 135 used: two trims of 2.5.
    const Basis cost = fullCostBehind(shop.shop, everything, "H8M 1200", euro);
    CHECK(cost.lines.rows ==
          std::vector<std::vector<std::string>>{
              {"sleeve_cost", "80.00"}, {"sleeve_width", "400"}, {"sold", "130"}, {"used", "135"}});

    const Date day = dayOf(shop.shop.now());
    const DayReport close = dayReport(shop.shop, day);
    const ReportTable takings = takingsOf(close, euro), made = madeOf(close, euro);
    CHECK(takingsBehind(shop.shop, day, store::Payment::Card, "amount", euro).sum ==
          fieldOf(takings, 1, "amount"));
    CHECK(takingsBehind(shop.shop, day, store::Payment::Card, "orders", euro).sum == "1");
    CHECK(takingsBehind(shop.shop, day, store::Payment::Cash, "orders", euro).lines.rows.empty());
    for (std::size_t row = 0; row < close.made.size(); ++row)
        for (const char* figure : {"orders", "amount"})
            CHECK(ordersMadeBehind(shop.shop, day, close.made[row].state, figure, euro).sum ==
                  fieldOf(made, row, figure));
    const ReportTable waiting = uncollectedOf(close, day, euro);
    REQUIRE(waiting.rows.size() == 1);
    CHECK(orderLinesBehind(shop.shop, fieldOf(waiting, 0, "order"), "total", euro).sum ==
          fieldOf(waiting, 0, "total"));
}

TEST_CASE("A group stands beside the period before and the same days a year earlier", "[reports][compared]") {
    TestShop shop;
    const Moment now = shop.time;
    const auto sell = [&](Moment at, std::int64_t width, int belts) {
        shop.time = at;
        shop.cutAll(shop.order(shop.h8m1200, mm(width), belts));
    };
    shop.time = now - std::chrono::days{380};
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    sell(now - std::chrono::days{365}, 20, 1); // and 2.5 of trim
    sell(now - std::chrono::days{10}, 30, 2);
    sell(now - std::chrono::days{1}, 50, 1);
    const Moment end{dayOf(now) + std::chrono::days{1}};
    const Period week{end - std::chrono::days{7}, end};
    const std::vector<GroupBy> by{GroupBy::Belt, GroupBy::Person, GroupBy::Cutter, GroupBy::Place,
                                  GroupBy::Cause};
    const Compared all = compared(shop.shop, week, by, waste(shop.shop, week, by));
    CHECK(all.beforeTold == Told::Whole);
    CHECK(all.yearBeforeTold == Told::Whole);
    for (const auto& rows : all.groups) {
        std::int64_t sold = 0, before = 0, lastYear = 0, lostBefore = 0;
        for (const ComparedRow& row : rows) {
            REQUIRE(row.before);
            REQUIRE(row.yearBefore);
            sold += row.now.width.sold;
            before += row.before->width.sold;
            lostBefore += row.before->width.lost();
            lastYear += row.yearBefore->width.sold;
        }
        CHECK(sold == 50'000);
        CHECK(before == 60'000);
        CHECK(lostBefore == 2'500);
        CHECK(lastYear == 20'000);
    }
    const ReportTable table = tableOf(all.groups.front(), euro, Sees::Cost);
    CHECK(fieldOf(table, 0, "sold_before") == "60");
    CHECK(fieldOf(table, 0, "lost_before") == "2.5");
    CHECK(fieldOf(table, 0, "yield_before_percent") == "96.0");
    CHECK(fieldOf(table, 0, "cost_lost_before") == "0.50");
    CHECK(fieldOf(table, 0, "sold_year_before") == "20");
    for (const std::string& column : tableOf(all.groups.front(), euro, Sees::WidthOnly).columns)
        CHECK(column.find("cost") == std::string::npos);
}

TEST_CASE("Before the book began there is nothing to compare with, and that is not nought",
          "[reports][compared]") {
    TestShop shop;
    shop.piece(shop.h8m1200, mm(400), cutting::PieceKind::Sleeve, 8000);
    shop.cutAll(shop.order(shop.h8m1200, mm(30), 2));
    const Moment first{dayOf(shop.time)}, end = first + std::chrono::days{1};
    const Period today{first, end};
    const std::vector<GroupBy> by{GroupBy::Belt};
    const Compared all = compared(shop.shop, today, by, waste(shop.shop, today, by));
    CHECK(all.beforeTold == Told::Nothing);
    CHECK_FALSE(all.groups.front().front().before);
    CHECK_FALSE(all.groups.front().front().yearBefore);
    const ReportTable table = tableOf(all.groups.front(), euro, Sees::Cost);
    CHECK(fieldOf(table, 0, "sold_before").empty());
    CHECK(table.rows.front().size() == table.columns.size());
    CHECK(toldOf(shop.shop, {first - std::chrono::days{1}, end}) == Told::Part);
}

} // namespace riband::shop
