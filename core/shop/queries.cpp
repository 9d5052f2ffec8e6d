#include "core/shop/queries.h"

#include "core/measure/code.h"
#include "core/shop/standing.h"

#include <algorithm>

namespace riband::shop {

namespace {

void addMissing(const store::Order& order, const Promises& promises, std::vector<Missing>& rows) {
    const std::map<store::LineId, std::int64_t> belts = missingOf(order, promises);
    for (const store::OrderLine& line : order.lines)
        if (const auto found = belts.find(line.id); found != belts.end())
            rows.push_back({order.id, order.code, line, found->second});
}

/// Also without its dash, as a label is read out loud, unless a place is called so.
std::optional<Code> codeIn(const Shop& shop, const std::string& said) {
    if (const auto code = Code::read(said)) return code;
    const std::size_t last = said.find_last_not_of(' ');
    if (last == std::string::npos || said.find('-') != std::string::npos) return std::nullopt;
    const auto code = Code::read(said.substr(0, last) + '-' + said[last]);
    if (!code) return std::nullopt;
    const std::vector<std::string> places = store::Pieces{shop.connection}.places();
    return std::find(places.begin(), places.end(), said) == places.end() ? code : std::nullopt;
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
    const std::optional<Code> code = codeIn(shop, text);
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
