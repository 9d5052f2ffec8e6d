#pragma once

#include "core/shop/reports/trend.h"
#include "ui/drawing/charts.h"

namespace riband::ui {

/// What left the rack as a flow picture: sold, onto the shelf, and each way of losing it. `money` gives the
/// cost beside each, nothing leaves it out.
FlowPicture flowOf(const shop::WasteRow& row, const std::function<QString(Money)>& money);
/// The months with the band of chance.
TrendPicture trendOf(const std::vector<shop::TrendPoint>& points, Unit unit);

} // namespace riband::ui
