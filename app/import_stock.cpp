#include "app/import.h"

#include "app/json.h"
#include "app/sheet_file.h"

#include <QJsonArray>

#include <map>

namespace riband::app {

QJsonObject importStock(const shop::Shop& shop, const QString& csv, const SheetHints& hints) {
    using shop::SheetField;
    const bool told = !hints.columns.isEmpty();
    const shop::Sheet sheet = readSpreadsheet(
        shop, csv, hints,
        told ? std::vector<SheetField>{}
             : std::vector{SheetField::Belt, SheetField::Kind, SheetField::Width, SheetField::Ribs});
    const auto made = shop::takeOver(shop, sheet.deliveries());
    std::map<store::PieceId, std::string> codes; // read at once, not piece by piece
    for (store::StockPiece& piece : store::Pieces{shop.connection}.all())
        codes.emplace(piece.id, std::move(piece.code));
    QJsonArray pieces;
    std::size_t next = 0;
    for (const shop::SheetRow& row : sheet.rows)
        for (int i = 0; i < row.delivery.sleeves; ++i)
            pieces << QJsonObject{{"line", static_cast<qint64>(row.line)},
                                  {"was", textValue(row.was)},
                                  {"piece", textValue(codes.at(made[next++]))}};
    return {{"rows", static_cast<qint64>(sheet.rows.size())}, {"pieces", pieces}};
}

} // namespace riband::app
