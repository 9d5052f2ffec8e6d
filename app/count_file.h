#pragma once

#include "core/shop/shop.h"

#include <QJsonObject>
#include <QString>

namespace riband::app {

/// Takes what a hand-held collector noted: place,piece,belt,width_mm,ribs,method and, if wanted, remark
/// (docs/commands.md, "count"). All rows or none: throws BadInput that names every bad row with line, column
/// and reason. With `close` the counts of the places are closed too. The answer has what came of each row,
/// and what is missing.
QJsonObject countFile(const shop::Shop& shop, const QString& csv, bool close);

} // namespace riband::app
