#pragma once

#include "core/shop/sheet.h"

#include <QString>
#include <QStringList>

namespace riband::app {

/// What a person tells beside the table.
struct SheetHints {
    QStringList columns; ///< what the heads do not tell: "Artikel=belt"; "Remark=" for one that is left out
    QString unit;        ///< mm, cm or in, of widths without one; "" is mm
};

/// A spreadsheet that a person gave, read into deliveries by core/shop/sheet. Throws BadInput for a column
/// that is neither known nor told, for one of these that is needed and missing, and with every bad row.
shop::Sheet readSpreadsheet(const shop::Shop& shop, const QString& path, const SheetHints& hints,
                            const std::vector<shop::SheetField>& needed);

} // namespace riband::app
