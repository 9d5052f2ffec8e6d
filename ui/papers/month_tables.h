#pragma once

#include "ui/papers/month_report.h"
#include "ui/papers/paper_table.h"

namespace riband::ui {

// The tables of the month's report. Those that leave lines out say how many and what they come to.

/// The month in a few figures, beside the period before and the same days a year earlier.
PaperTable comparison(const MonthReport& report, const Currency& currency);
/// The equation of the book, one line a figure: it must hold to the micrometre and the cent.
PaperTable equation(const MonthReport& report, const Currency& currency);
/// Belts by what they lost.
PaperTable beltsTable(const MonthReport& report, const Currency& currency);
PaperTable agesTable(const MonthReport& report, const Currency& currency);
PaperTable coversTable(const MonthReport& report, const Currency& currency);
/// Dead and slow belts; no rows if all move.
PaperTable clearTable(const MonthReport& report, const Currency& currency);
/// Those that brought most come first.
PaperTable marginTable(const std::vector<shop::MarginRow>& rows, const QString& name,
                       const Currency& currency);
PaperTable belowTable(const MonthReport& report, const Currency& currency);

} // namespace riband::ui
