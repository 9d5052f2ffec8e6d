#pragma once

#include "core/shop/reports/table.h"

#include <QStringList>

class QPagedPaintDevice;

namespace riband::ui {

/// What was suggested, what was done otherwise, and what that came to: `words` are the sentences under the
/// title, `decisions` those that departed with people's own words, `period` its days in words. Returns the
/// pages.
int paintOverrides(QPagedPaintDevice& device, const shop::ReportTable& table,
                   const shop::ReportTable& decisions, const QStringList& words, const QString& period,
                   const store::ShopSettings& shop);

} // namespace riband::ui
