#pragma once

#include "core/shop/reports/compared.h"

class QPagedPaintDevice;

namespace riband::ui {

/// The report of a month (or another period), as one hands it to an accountant: read at once, then painted
/// without the shop.
struct MonthReport {
    /// What a span of days brought.
    struct Span {
        shop::Period period{};
        shop::Told told = shop::Told::Whole;
        std::map<Unit, shop::Moved> moved{}; ///< of the one that is reported, with the rack before and after
        store::Sale sales{};                 ///< revenue and cost alone; nothing unless the owner asks
    };
    shop::Sees sees;
    Date printed;
    Span now{}, before{}, yearBefore{};
    std::vector<shop::WasteRow> all{}; ///< by unit
    shop::Compared belts{};            ///< by what they lost
    shop::Trends trends{};             ///< months up to this
    shop::StockReport stock{};
    shop::MarginReport margin{}; ///< empty unless the owner asks
};
MonthReport gatherMonth(const shop::Shop& shop, const shop::Period& period, shop::Sees sees);

/// Two or three pages, and more only where a table is long; returns how many.
int paintMonthReport(QPagedPaintDevice& device, const MonthReport& report, const store::ShopSettings& shop);

} // namespace riband::ui
