#pragma once

#include "app/table_file.h"
#include "core/belt/tables.h"
#include "core/cutting/problem.h"

#include <optional>

namespace riband::app {

struct StockRow {
    belt::Belt belt;
    cutting::Piece piece;
};
struct OrderRow {
    belt::Belt belt;
    cutting::Line line;
};

/// piece,belt,kind,width_mm,ribs,received; other columns are left alone. Throws BadInput with every bad row.
std::vector<StockRow> readStock(const QString& path, const belt::Tables& tables);
/// line,belt,width_mm,ribs,quantity
std::vector<OrderRow> readOrders(const QString& path, const belt::Tables& tables);
/// What a width is worth, step by step: width_mm,worth_mm for toothed belts or ribs,worth_ribs for ribbed
/// ones.
struct WorthCurve {
    Unit unit;
    std::vector<cutting::Worth::Point> points;
};
WorthCurve readCurve(const QString& path);

// The fields that several tables share. Nothing if the field can't be read; the fault is then noted.
std::optional<belt::Belt> beltOf(TableFile& file, const CsvTable::Row& row, const belt::Tables& tables);
/// width_mm of a toothed belt, ribs of a ribbed one; the other is empty.
std::optional<Extent> extentOf(TableFile& file, const CsvTable::Row& row, const belt::Belt& belt,
                               const belt::Tables& tables);
/// The same of a piece, which no cutter takes over 5 m or 10 000 ribs wide.
std::optional<Extent> pieceExtentOf(TableFile& file, const CsvTable::Row& row, const belt::Belt& belt,
                                    const belt::Tables& tables);
std::optional<cutting::PieceKind> kindOf(TableFile& file, const CsvTable::Row& row);
/// Nothing, too, if the field is empty: then no fault is noted.
std::optional<Date> dateOf(TableFile& file, const CsvTable::Row& row, std::string_view column);

} // namespace riband::app
