#pragma once

#include "core/shop/reports/table.h"

#include <QJsonArray>
#include <QJsonObject>
#include <QString>

namespace riband::app {

// The JSON forms of `riband report`; docs/reports.md.

/// An object a row, by the columns; figures are texts, "" becomes null.
QJsonArray jsonOf(const shop::ReportTable& table);
/// Groups, their total, and the totals of the period before and of the same days a year earlier.
QJsonObject wasteJson(const shop::Shop& shop, const shop::Period& period, const QString& by,
                      const std::vector<shop::WasteRow>& rows, const Currency& currency, shop::Sees sees);
QJsonObject dayJson(const shop::DayReport& report, Date day, const Currency& currency);

} // namespace riband::app
