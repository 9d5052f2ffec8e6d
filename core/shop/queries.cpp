#include "core/shop/queries.h"

#include "core/measure/code.h"
#include "core/shop/standing.h"

namespace riband::shop {

namespace {

void addMissing(const store::Order& order, const Promises& promises, std::vector<Missing>& rows) {
    const std::map<store::LineId, std::int64_t> belts = missingOf(order, promises);
    for (const store::OrderLine& line : order.lines)
        if (const auto found = belts.find(line.id); found != belts.end())
            rows.push_back({order.id, order.code, line, found->second});
}

} // namespace

std::vector<RackRow> rack(const Shop& shop) {
    std::map<store::BeltId, std::string> designations;
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all())
        designations.emplace(belt.id, belt.designation);
    std::vector<RackRow> rows;
    for (store::StockPiece& piece : store::Pieces{shop.connection}.all()) {
        const std::string& belt = designations[piece.belt];
        rows.push_back({std::move(piece), belt});
    }
    return rows;
}

Scanned scan(const Shop& shop, const std::string& text) {
    const std::optional<Code> code = Code::read(text);
    if (!code) return {};
    Scanned scanned;
    switch (code->kind()) {
    case CodeKind::Piece:
        scanned.piece = store::Pieces{shop.connection}.byCode(code->text());
        break;
    case CodeKind::Ticket:
        scanned.ticket = store::Tickets{shop.connection}.byCode(code->text());
        break;
    case CodeKind::Order:
        scanned.order = store::Orders{shop.connection}.byCode(code->text());
        break;
    }
    return scanned;
}

std::vector<Missing> missing(const Shop& shop) {
    const Promises promises = Promises::read(shop, store::Settings{shop.connection}.read());
    std::vector<Missing> rows;
    for (const store::Order& order : store::Orders{shop.connection}.inState(store::OrderState::Open))
        addMissing(order, promises, rows);
    return rows;
}

std::vector<store::RecordedMovement> lifeOf(const Shop& shop, store::PieceId piece) {
    return store::Ledger{shop.connection}.historyOf(piece);
}

} // namespace riband::shop
