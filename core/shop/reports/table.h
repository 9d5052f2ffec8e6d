#pragma once

#include "core/shop/reports/office.h"
#include "core/shop/reports/overrides.h"
#include "core/shop/reports/trend.h"

namespace riband::shop {

/// A report as a table in the form of its file: what the screen, the CSV and the command line show alike.
/// Columns are named as docs/reports.md lists them; figures are in their exact text form
/// (core/measure/text.h), "" where there is none.
struct ReportTable {
    std::vector<std::string> columns;
    std::vector<std::vector<std::string>> rows;
};

/// What the person who looks may see: cost and margin are the owner's.
enum class Sees : bool { WidthOnly, Cost };
Sees seenBy(const Shop& shop); ///< who acts

ReportTable tableOf(const std::vector<WasteRow>& rows, const Currency& currency, Sees sees);
ReportTable tableOf(const StockReport& report, const Currency& currency, Sees sees);
ReportTable agesOf(const StockReport& report, const Currency& currency, Sees sees);
ReportTable coversOf(const StockReport& report, const Currency& currency, Sees sees);
/// Margins and the proposed list price that leaves `aim`.
ReportTable tableOf(const std::vector<MarginRow>& rows, Permille aim, const Currency& currency);
ReportTable tableOf(const std::vector<store::BelowCost>& lines, const Shop& shop, const Currency& currency);
ReportTable tableOf(const std::vector<TrendPoint>& points, Unit unit);
ReportTable takingsOf(const DayReport& report, const Currency& currency);
ReportTable uncollectedOf(const DayReport& report, Date today, const Currency& currency);
/// All, then people, then reasons; `kind` says which.
ReportTable tableOf(const OverrideReport& report, const Currency& currency, Sees sees);

/// A day's orders as they stand now, by their state.
ReportTable madeOf(const DayReport& report, const Currency& currency);

/// Tables of several kinds in one: `kind` in front of each row, then every column that one of them has.
ReportTable joined(const std::vector<std::pair<std::string, ReportTable>>& tables);

/// Head and rows as CSV (RFC 4180).
std::string csvOf(const ReportTable& table);

const char* wordFor(Unit unit); ///< "mm", "ribs"
const char* wordFor(store::Payment kind);
const char* wordFor(StockRow::Pace pace);
const char* wordFor(store::OrderState state); ///< "handed over"
/// Micrometres as mm, ribs as they are.
std::string amountOf(Unit unit, std::int64_t count);
/// A share as a percentage with one decimal: "4.3".
std::string percentOf(double share);

} // namespace riband::shop
