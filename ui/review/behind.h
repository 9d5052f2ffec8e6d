#pragma once

#include "core/shop/buying/reach.h"
#include "core/shop/reports/basis.h"
#include "core/shop/reports/compared.h"

#include <functional>
#include <memory>

namespace riband::ui {

/// Reads what stands behind a figure, in a worker.
using ReadBasis = std::function<shop::Basis(const shop::Shop& shop)>;
/// For a figure of a table, by its row and the name of its column; an empty function where nothing stands
/// behind it.
using Behind = std::function<ReadBasis(std::size_t row, const std::string& column)>;

/// Of rows of the waste report that stand in the table as they are here.
Behind behindWaste(const std::vector<shop::WasteRow>& rows);
/// A figure of an earlier period leads to what was moved then.
Behind behindCompared(const std::vector<shop::ComparedRow>& rows, const shop::Compared& periods);
Behind behindMonths(std::vector<store::Behind> months, const shop::ReportTable& table);
Behind behindStock(const shop::StockReport& report, Date day, const shop::ReportTable& table,
                   shop::Sees sees);
Behind behindMargin(const shop::MarginReport& report, const shop::Period& period,
                    const shop::ReportTable& table);
Behind behindDay(const shop::DayReport& report, Date day, const shop::ReportTable& table);
/// With `played` of each what it came to both ways.
Behind behindOverrides(const shop::Period& period, const shop::ReportTable& table,
                       std::shared_ptr<const shop::BothWays> played, shop::Sees sees);
Behind behindReach(const std::vector<shop::BeltReach>& belts, const shop::Period& period,
                   const shop::ReportTable& table);

} // namespace riband::ui
