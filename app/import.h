#pragma once

#include "app/sheet_file.h"
#include "core/shop/shop.h"

#include <QJsonObject>
#include <QString>

namespace riband::app {

// Each takes in the whole table or, with a bad row, nothing: then it throws BadInput that names every bad row
// with line, column and reason. The columns are told in docs/commands.md, "import".

/// belt,kind,width_mm,ribs and, if wanted, other fields of core/shop/sheet; whatever columns the hints tell.
/// The answer has the new codes.
QJsonObject importStock(const shop::Shop& shop, const QString& csv, const SheetHints& hints);
/// belt and, if wanted, body,cord,price,sleeve_mm,sleeve_ribs,sleeve_cost,delivery_days,listed.
QJsonObject importBelts(const shop::Shop& shop, const QString& csv);

/// belt,sleeve_mm,sleeve_ribs,cost and, if wanted, delivery_days: what makers offer, in the place of what was
/// known of these belts.
QJsonObject importOffers(const shop::Shop& shop, const QString& csv);

} // namespace riband::app
