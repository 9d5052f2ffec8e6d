#include "core/shop/reports/office.h"

#include <algorithm>
#include <map>

namespace riband::shop {

namespace {

using std::chrono::days;
using Pace = StockRow::Pace;
constexpr int year = 365;
constexpr std::int64_t slowCover = 2 * year;
constexpr int halfYear = 182;

std::vector<AgeRow> emptyAges() {
    return {{.fromDays = 0, .belowDays = 91},     {.fromDays = 91, .belowDays = 183},
            {.fromDays = 183, .belowDays = 366},  {.fromDays = 366, .belowDays = 731},
            {.fromDays = 731, .belowDays = 1827}, {.fromDays = 1827, .belowDays = std::nullopt}};
}

int ageOf(const store::StockPiece& piece, Date today) {
    return std::max(0, static_cast<int>((today - piece.born()).count()));
}

void add(std::vector<AgeRow>& ages, const store::StockPiece& piece, int age) {
    for (AgeRow& row : ages)
        if (age >= row.fromDays && (!row.belowDays || age < *row.belowDays)) {
            ++row.pieces;
            row.cost = row.cost + piece.cost;
        }
}

void add(StockRow& row, const store::StockPiece& piece, int age) {
    row.youngestDays = row.pieces == 0 ? age : std::min(row.youngestDays, age);
    row.oldestDays = std::max(row.oldestDays, age);
    ++row.pieces;
    row.width += piece.extent.count();
    row.cost = row.cost + piece.cost;
}

std::map<store::BeltId, std::int64_t> soldInYear(const Shop& shop, Date today) {
    std::map<store::BeltId, std::int64_t> sold;
    const Moment until{today + days{1}};
    for (const store::Flow& flow : store::Flows{shop.connection}.sums(until - days{year}, until))
        if (flow.account == store::Account::Sold) sold[flow.belt] += flow.within;
    return sold;
}

void judge(StockRow& row) {
    if (row.soldInYear <= 0) {
        row.pace = row.youngestDays >= halfYear ? Pace::Dead : Pace::New;
        return;
    }
    row.coverDays = row.width * year / row.soldInYear;
    row.pace = *row.coverDays > slowCover ? Pace::Slow : Pace::Moving;
}

} // namespace

StockReport stockReport(const Shop& shop, Date today) {
    StockReport report{.belts = {}, .ages = emptyAges()};
    std::map<store::BeltId, StockRow> rows;
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all())
        rows.emplace(belt.id, StockRow{belt.id, belt.designation, belt.unit});
    for (const store::StockPiece& piece : store::Pieces{shop.connection}.all()) {
        const int age = ageOf(piece, today);
        add(report.ages, piece, age);
        add(rows.at(piece.belt), piece, age);
        report.cost = report.cost + piece.cost;
    }
    const auto sold = soldInYear(shop, today);
    for (auto& [belt, row] : rows) {
        if (row.pieces == 0) continue;
        if (const auto at = sold.find(belt); at != sold.end()) row.soldInYear = at->second;
        judge(row);
        report.belts.push_back(row);
    }
    std::stable_sort(report.belts.begin(), report.belts.end(),
                     [](const StockRow& a, const StockRow& b) { return a.cost > b.cost; });
    return report;
}

} // namespace riband::shop
