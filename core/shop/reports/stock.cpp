#include "core/shop/reports/office.h"

#include "core/shop/offers.h"
#include "core/shop/piece_worth.h"
#include "core/store/rack_figures.h"

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

std::vector<CoverRow> emptyCovers() {
    return {{0, 91}, {91, 183}, {183, 366}, {366, 731}, {731, std::nullopt}, {std::nullopt, std::nullopt}};
}

void add(std::vector<CoverRow>& covers, const StockRow& row) {
    for (CoverRow& cover : covers) {
        if (!isOf(cover, row)) continue;
        ++cover.belts;
        cover.pieces += row.pieces;
        cover.cost = cover.cost + row.cost;
        cover.worth = cover.worth + row.worth.value_or(Money::minor(0));
    }
}

int ageOf(const store::PieceFigures& piece, Date today) {
    return std::max(0, static_cast<int>((today - piece.born).count()));
}

void add(std::vector<AgeRow>& ages, const store::PieceFigures& piece, int age) {
    for (AgeRow& row : ages)
        if (age >= row.fromDays && (!row.belowDays || age < *row.belowDays)) {
            ++row.pieces;
            row.cost = row.cost + piece.cost;
        }
}

void add(StockRow& row, const store::PieceFigures& piece, int age) {
    row.youngestDays = row.pieces == 0 ? age : std::min(row.youngestDays, age);
    row.oldestDays = std::max(row.oldestDays, age);
    ++row.pieces;
    row.width += piece.extent.count();
    row.cost = row.cost + piece.cost;
    row.uncosted += piece.cost == Money::minor(0) ? 1 : 0;
}

std::map<store::BeltId, std::int64_t> soldInYear(const Shop& shop, Date today) {
    std::map<store::BeltId, std::int64_t> sold;
    const Moment until{today + days{1}};
    for (const store::Flow& flow :
         store::Flows{shop.connection}.within(until - days{year}, until, store::Account::Sold))
        sold[flow.belt] += flow.within;
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

/// Width of a belt's pieces that is good for something: of remnants by its worth table, or before there is
/// one what a listed width can be cut from; of sleeves and ready belts all.
/// `each` is given the width of every piece.
double usefulWidth(const Shop& shop, const store::StockedBelt& belt, const store::ShopSettings& settings,
                   const std::vector<store::PieceFigures>& pieces, std::vector<double>* each = nullptr) {
    Extent widest = Extent::none(belt.unit);
    for (const store::PieceFigures& piece : pieces)
        widest = std::max(widest, piece.extent);
    const auto table = currentTable(shop, belt, settings, widest);
    const auto usable = usableWorth(settings.rulesFor(belt.unit), belt.listed);
    double width = 0;
    for (const store::PieceFigures& piece : pieces) {
        const double before = width;
        const std::int64_t all = piece.extent.count();
        if (piece.kind != cutting::PieceKind::Remnant)
            width += static_cast<double>(all);
        else if (table)
            width += static_cast<double>(table->of(static_cast<foresight::Size>(all)));
        else
            width += static_cast<double>(usable->of(all));
        if (each) each->push_back(width - before);
    }
    return width;
}

/// What nobody will buy is worth nothing, however well it could be cut: of a dead belt all, of a slow one
/// what lasts beyond two years.
double shareThatSells(const StockRow& row) {
    if (row.pace == Pace::Dead) return 0;
    if (row.pace != Pace::Slow) return 1;
    return static_cast<double>(slowCover) / static_cast<double>(*row.coverDays);
}

} // namespace

bool isOf(const CoverRow& cover, const StockRow& row) {
    if (!row.coverDays) return !cover.fromDays;
    return cover.fromDays && *row.coverDays >= *cover.fromDays &&
           (!cover.belowDays || *row.coverDays < *cover.belowDays);
}

StockReport stockReport(const Shop& shop, Date today) {
    StockReport report{.belts = {}, .ages = emptyAges(), .covers = emptyCovers()};
    std::map<store::BeltId, StockRow> rows;
    std::map<store::BeltId, std::vector<store::PieceFigures>> pieces;
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    const auto belts = store::Catalogue{shop.connection}.all();
    for (const store::StockedBelt& belt : belts)
        rows.emplace(belt.id, StockRow{belt.id, belt.designation, belt.unit});
    for (const store::PieceFigures& piece : store::figuresOfRack(shop.connection)) {
        pieces[piece.belt].push_back(piece);
        const int age = ageOf(piece, today);
        add(report.ages, piece, age);
        add(rows.at(piece.belt), piece, age);
        report.cost = report.cost + piece.cost;
        report.uncosted += piece.cost == Money::minor(0) ? 1 : 0;
    }
    const auto sold = soldInYear(shop, today);
    for (const store::StockedBelt& belt : belts) {
        StockRow& row = rows.at(belt.id);
        if (row.pieces == 0) continue;
        if (const auto at = sold.find(belt.id); at != sold.end()) row.soldInYear = at->second;
        judge(row);
        if (belt.sleeveCost > Money::minor(0) && !belt.newSleeve.isNone()) {
            const double width = usefulWidth(shop, belt, settings, pieces.at(belt.id));
            row.worth = asMoney(belt, width * shareThatSells(row));
            report.costOfKnown = report.costOfKnown + row.cost;
            report.worth = report.worth + *row.worth;
        }
        add(report.covers, row);
        report.belts.push_back(row);
    }
    std::stable_sort(report.belts.begin(), report.belts.end(),
                     [](const StockRow& a, const StockRow& b) { return a.cost > b.cost; });
    return report;
}

namespace {

std::vector<store::PieceFigures> figuresOf(const std::vector<store::StockPiece>& pieces) {
    std::vector<store::PieceFigures> figures;
    for (const store::StockPiece& piece : pieces)
        figures.push_back({piece.belt, piece.kind, piece.extent, piece.reserved, piece.cost, piece.born()});
    return figures;
}

} // namespace

std::vector<WeighedPiece> weighedPieces(const Shop& shop, Date today) {
    std::map<store::BeltId, std::vector<store::StockPiece>> pieces;
    for (store::StockPiece& piece : store::Pieces{shop.connection}.all())
        pieces[piece.belt].push_back(std::move(piece));
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    const store::Catalogue catalogue{shop.connection};
    std::vector<WeighedPiece> all;
    for (const StockRow& row : stockReport(shop, today).belts) {
        const store::StockedBelt belt = catalogue.at(row.belt);
        const auto& mine = pieces.at(row.belt);
        const auto figures = figuresOf(mine);
        std::vector<double> widths;
        if (row.worth) usefulWidth(shop, belt, settings, figures, &widths);
        double width = 0;
        Money told = Money::minor(0); // each is rounded with those before, so that they come to the sum
        for (std::size_t i = 0; i < mine.size(); ++i) {
            WeighedPiece& piece = all.emplace_back(WeighedPiece{mine[i], ageOf(figures[i], today), {}});
            if (!row.worth) continue;
            width += widths[i];
            const bool isLast = i + 1 == mine.size();
            const Money sum = isLast ? *row.worth : asMoney(belt, width * shareThatSells(row));
            piece.worth = sum - told;
            told = sum;
        }
    }
    return all;
}

} // namespace riband::shop
