#pragma once

#include "core/shop/reports/compared.h"

#include <QJsonArray>
#include <QJsonObject>
#include <QString>

namespace riband::app {

// The JSON forms of `riband report`; docs/reports.md.

/// An object a row, by the columns; figures are texts, "" becomes null.
QJsonArray jsonOf(const shop::ReportTable& table);
/// Groups beside the period before and the same days a year earlier, their total, and those of then.
QJsonObject wasteJson(const shop::Shop& shop, const shop::Compared& compared, const QString& by,
                      const Currency& currency, shop::Sees sees);
QJsonObject dayJson(const shop::DayReport& report, Date day, const Currency& currency);

} // namespace riband::app
