#pragma once

#include "core/shop/reports/table.h"

#include <QString>

class QPagedPaintDevice;

namespace riband::ui {

/// What was suggested, what was done otherwise, and what that came to. Returns the pages.
int paintOverrides(QPagedPaintDevice& device, const shop::ReportTable& table, const QString& verdict,
                   const shop::Period& period, const store::ShopSettings& shop);

} // namespace riband::ui
