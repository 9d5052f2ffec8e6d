#include "core/shop/returned.h"

#include "core/shop/ready_piece.h"
#include "core/shop/spread.h"

#include <algorithm>
#include <stdexcept>

namespace riband::shop {

namespace {

using cutting::PieceKind;
using store::Account;

/// What the order has of a line from one piece.
struct Held {
    store::StockPiece from;
    std::int64_t width;
    Money cost;
};

bool isSold(const store::Posting& posting, store::LineId line) {
    return posting.account == Account::Sold && posting.line == line && posting.piece;
}

void addTo(const Shop& shop, std::vector<Held>& held, const store::Posting& posting) {
    const auto same =
        std::find_if(held.begin(), held.end(), [&](const Held& h) { return h.from.id == *posting.piece; });
    if (same == held.end()) {
        held.push_back({store::Pieces{shop.connection}.at(*posting.piece), posting.amount, posting.cost});
        return;
    }
    same->width += posting.amount;
    same->cost = same->cost + posting.cost;
}

/// Shelf belts first: they have their label still.
std::vector<Held> heldOf(const Shop& shop, store::LineId line) {
    std::vector<Held> held;
    for (const store::RecordedMovement& recorded : store::Ledger{shop.connection}.ofLine(line))
        for (const store::Posting& posting : recorded.movement.postings())
            if (isSold(posting, line)) addTo(shop, held, posting);
    std::erase_if(held, [](const Held& h) { return h.width == 0; });
    std::stable_partition(held.begin(), held.end(),
                          [](const Held& h) { return h.from.kind == PieceKind::Ready; });
    return held;
}

/// The postings that bring up to `belts` belts of one source back.
class Return {
public:
    Return(const Shop& shop, const store::OrderLine& line) : shop_{shop}, line_{line} {}

    std::int64_t bring(const Held& held, std::int64_t belts) {
        const std::int64_t each = line_.extent.count();
        const std::int64_t there = held.width / each;
        const std::vector<Money> costs =
            spread(held.cost, std::vector<std::int64_t>(static_cast<std::size_t>(there), each));
        const std::int64_t count = std::min(belts, there);
        for (std::int64_t i = 0; i < count; ++i)
            bringOne(held.from, costs[static_cast<std::size_t>(i)]);
        return count;
    }

    const std::vector<store::PieceId>& pieces() const { return pieces_; }

    void record() {
        store::Ledger{shop_.connection}.record(store::Movement{
            {store::Act::Cancel, shop_.now(), shop_.person, line_.belt, "", {}}, std::move(postings_)});
    }

private:
    void bringOne(const store::StockPiece& from, Money cost) {
        const std::int64_t width = line_.extent.count();
        const store::PieceId piece = from.kind == PieceKind::Ready ? from.id : addReadyFrom(shop_, from);
        postings_.push_back({Account::Sold, from.id, line_.id, -width, -cost, {}});
        postings_.push_back({Account::Ready, piece, {}, width, cost, {}});
        pieces_.push_back(piece);
    }

    const Shop& shop_;
    const store::OrderLine& line_;
    std::vector<store::Posting> postings_;
    std::vector<store::PieceId> pieces_;
};

} // namespace

std::vector<store::PieceId> returnToShelf(const Shop& shop, const store::OrderLine& line,
                                          std::int64_t belts) {
    if (belts == 0) return {};
    Return back{shop, line};
    std::int64_t missing = belts;
    for (const Held& held : heldOf(shop, line.id))
        missing -= back.bring(held, missing);
    if (missing != 0) throw std::logic_error("the ledger has fewer belts of this line than the order");
    back.record();
    store::OrderLine after = line;
    after.cut -= belts;
    store::Orders{shop.connection}.changeLine(after);
    return back.pieces();
}

} // namespace riband::shop
