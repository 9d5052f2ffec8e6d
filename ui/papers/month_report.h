#pragma once

#include "core/shop/reports/table.h"

class QPagedPaintDevice;

namespace riband::ui {

/// The report of a month (or another period), as one hands it to an accountant: read at once, then painted
/// without the shop.
struct MonthReport {
    shop::Period period;
    shop::Sees sees;
    Date printed;
    std::vector<shop::WasteRow> all; ///< by unit
    /// Of the period before, and of the same days a year earlier; the rack left out.
    std::map<Unit, shop::Balance<std::int64_t>> before, yearBefore;
    std::vector<shop::WasteRow> belts;   ///< by what they lost
    std::vector<shop::TrendPoint> trend; ///< toothed, months up to this
    shop::StockReport stock;
    shop::MarginReport margin; ///< empty unless the owner asks
};
MonthReport gatherMonth(const shop::Shop& shop, const shop::Period& period, shop::Sees sees);

/// Two to six pages; the pages.
int paintMonthReport(QPagedPaintDevice& device, const MonthReport& report, const store::ShopSettings& shop);

} // namespace riband::ui
