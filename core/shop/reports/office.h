#pragma once

#include "core/shop/reports/waste.h"
#include "core/store/revenue.h"
#include "core/store/takings.h"

namespace riband::shop {

/// A belt on the rack and the shelf: what it is worth and how long it lasts.
struct StockRow {
    store::BeltId belt;
    std::string designation;
    Unit unit;
    std::int64_t pieces = 0;
    std::int64_t width = 0; ///< µm or ribs
    Money cost = Money::minor(0);
    std::int64_t uncosted = 0; ///< pieces that came in without a cost: it is not known
    /// What the pieces are expected to be good for, at the price of the belt's sleeve (docs/reports.md);
    /// nothing where no sleeve has a price.
    std::optional<Money> worth{};
    int oldestDays = 0, youngestDays = 0; ///< by the day the rubber was made, else received
    std::int64_t soldInYear = 0;          ///< width sold in the 365 days before
    /// Days that the width lasts at the pace of that year; nothing if none was sold.
    std::optional<std::int64_t> coverDays{};
    enum class Pace {
        Moving,
        Slow, ///< lasts longer than two years
        Dead, ///< nothing sold in a year, and the youngest piece lies half a year or longer
        New,  ///< nothing sold in a year, but it came lately
    } pace = Pace::Moving;
};
/// Pieces of an age.
struct AgeRow {
    int fromDays;
    std::optional<int> belowDays;
    std::int64_t pieces = 0;
    Money cost = Money::minor(0);
};
/// Belts that last as many days at the pace of the last year; without days those of which none was sold.
struct CoverRow {
    std::optional<int> fromDays, belowDays;
    std::int64_t belts = 0, pieces = 0;
    Money cost = Money::minor(0);
    Money worth = Money::minor(0); ///< of those whose worth is known
};
/// Whether a belt lasts as long as a line tells.
bool isOf(const CoverRow& cover, const StockRow& row);
struct StockReport {
    std::vector<StockRow> belts; ///< by falling value
    std::vector<AgeRow> ages;
    std::vector<CoverRow> covers;
    Money cost = Money::minor(0); ///< of all
    std::int64_t uncosted = 0;    ///< pieces of which none is known
    /// Of the belts whose worth is known: what they cost, and what they are worth.
    Money costOfKnown = Money::minor(0), worth = Money::minor(0);
};
StockReport stockReport(const Shop& shop, Date today);
/// A piece on rack or shelf, how old it is, and what it adds to the worth of its belt.
struct WeighedPiece {
    store::StockPiece piece;
    int days;
    std::optional<Money> worth;
};
/// The pieces that `stockReport` sums, to the cent.
std::vector<WeighedPiece> weighedPieces(const Shop& shop, Date today);

/// What belts and customers brought, less what the width sold had cost. Labour and rent are not in it.
struct MarginRow {
    std::string name;         ///< designation, or customer ("" walk-ins)
    std::optional<Unit> unit; ///< of a belt
    store::Sale sale;
    /// What a millimetre or rib really costs now: the last sleeve's price over its width and the shop's yield
    /// of the belt. Nothing for customers, and where the cost of a sleeve isn't known.
    std::optional<WidthPrice> fullCost{};
    WidthPrice price = WidthPrice::thousandths(0); ///< the list's
    Money margin() const { return sale.margin(); }
    /// Of the revenue whose cost is known, in thousandths; nothing without one.
    std::optional<Permille> share() const;
    bool listBelowCost() const { return fullCost && price < *fullCost; }
    /// The price that leaves `share` of it over the full cost, rounded up to a hundredth of the major unit.
    std::optional<WidthPrice> proposed(Permille share, const Currency& currency) const;
};
struct MarginReport {
    std::vector<MarginRow> belts, customers; ///< by rising margin
    std::vector<store::BelowCost> below;
};
MarginReport marginReport(const Shop& shop, const Period& period);

/// The close of a day.
struct DayReport {
    std::vector<store::OrdersMade> made; ///< orders made that day, as they stand now
    struct Paid {
        store::Payment kind;
        std::int64_t orders;
        Money amount;
    };
    std::vector<Paid> takings; ///< all four kinds
    Money taken = Money::minor(0);
    std::int64_t openTickets = 0;
    std::int64_t openOrders = 0;
    std::vector<store::Order> uncollected; ///< ready, longest waiting first
};
DayReport dayReport(const Shop& shop, Date day);

} // namespace riband::shop
