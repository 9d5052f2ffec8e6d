#include "app/export.h"
#include "app/table_words.h"
#include "core/measure/text.h"
#include "core/shop/queries.h"

namespace riband::app {

namespace {

std::vector<std::string> fieldsOf(const shop::RackRow& row, const Currency& currency) {
    const store::StockPiece& piece = row.piece;
    const bool ribbed = piece.extent.unit() == Unit::Rib;
    const std::string count = printCount(piece.extent);
    return {piece.code,
            row.belt,
            wordFor(piece.kind),
            ribbed ? "" : count,
            ribbed ? count : "",
            printDate(piece.received),
            piece.made ? printDate(*piece.made) : "",
            piece.place,
            piece.batch,
            printMoney(piece.cost, currency)};
}

} // namespace

void exportStock(const shop::Shop& shop, TableWriter& writer) {
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    writer.head({"piece", "belt", "kind", "width_mm", "ribs", "received", "made", "place", "batch", "cost"});
    for (const shop::RackRow& row : shop::rack(shop))
        writer.row(fieldsOf(row, currency));
}

} // namespace riband::app
