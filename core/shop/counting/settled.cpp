#include "core/shop/counting/settled.h"

#include <algorithm>

namespace riband::shop {

namespace {

using store::Account;

std::int64_t changeOf(const Shop& shop, store::MovementId movement, store::PieceId piece) {
    const store::RecordedMovement recorded = store::Ledger{shop.connection}.at(movement);
    std::int64_t change = 0;
    for (const store::Posting& posting : recorded.movement.postings())
        if (posting.piece == piece && (posting.account == Account::Rack || posting.account == Account::Ready))
            change += posting.amount;
    return change;
}

/// A piece that was put back came back by the counter-entry of its loss, not by a movement of its own.
bool putBack(const store::Settlement& settled) {
    return settled.explanation == store::Explanation::Found && settled.scan;
}

} // namespace

SettledCases::SettledCases(const Shop& shop) : shop_{shop} {
    for (const store::Settlement& settled : store::Counts{shop.connection}.settlements())
        if (settled.undoes)
            counters_.emplace(*settled.undoes, settled);
        else
            settlements_.push_back(settled);
    std::reverse(settlements_.begin(), settlements_.end());
}

SettledCase SettledCases::at(std::size_t index) const {
    const store::Settlement& settled = settlements_.at(index);
    const store::Counts counts{shop_.connection};
    const std::optional<store::Scan> scan = settled.scan ? counts.scan(*settled.scan) : std::nullopt;
    std::optional<store::StockPiece> piece;
    if (settled.piece) piece = store::Pieces{shop_.connection}.at(*settled.piece);
    const store::StockedBelt belt = store::Catalogue{shop_.connection}.at(piece ? piece->belt : scan->belt);
    SettledCase row{settled, counts.find(settled.count)->place, piece, belt.designation, belt.unit, 0, {}};
    if (putBack(settled))
        row.change = scan->gap();
    else if (settled.movement && settled.piece)
        row.change = changeOf(shop_, *settled.movement, *settled.piece);
    if (const auto counter = counters_.find(settled.id); counter != counters_.end())
        row.counteredBy = counter->second;
    return row;
}

} // namespace riband::shop
