#include "core/shop/yield.h"

#include "core/shop/ready_piece.h"
#include "core/shop/spread.h"

namespace riband::shop {

namespace {

using store::Account;

/// Collects the postings of one cut; amounts first, the costs are spread over them at the end.
class Entry {
public:
    explicit Entry(const store::StockPiece& piece) : piece_{piece} {}

    void add(Account account, Extent extent, std::optional<store::LineId> line = {},
             std::optional<store::ScrapReason> reason = {}) {
        if (!extent.isNone())
            outputs_.push_back({account, piece_.id, line, extent.count(), Money::minor(0), reason});
    }
    void addShelf(store::PieceId piece, Extent extent) {
        outputs_.push_back({Account::Ready, piece, {}, extent.count(), Money::minor(0), {}});
    }

    /// `kept` stays on the rack. What is still missing to the piece's width is lost, what is too much was
    /// found.
    std::vector<store::Posting> postings(Extent kept) {
        const std::int64_t lost = piece_.extent.count() - kept.count() - sum();
        if (lost > 0) outputs_.push_back({Account::Difference, piece_.id, {}, lost, Money::minor(0), {}});
        const Money taken = piece_.cost - spreadCosts(kept);
        if (lost < 0) outputs_.push_back({Account::Difference, piece_.id, {}, lost, Money::minor(0), {}});
        outputs_.insert(outputs_.begin(),
                        {Account::Rack, piece_.id, {}, kept.count() - piece_.extent.count(), -taken, {}});
        return std::move(outputs_);
    }

private:
    std::int64_t sum() const {
        std::int64_t sum = 0;
        for (const store::Posting& posting : outputs_)
            sum += posting.amount;
        return sum;
    }

    /// Gives the cost that stays on the rack.
    Money spreadCosts(Extent kept) {
        std::vector<std::int64_t> widths{kept.count()};
        for (const store::Posting& posting : outputs_)
            widths.push_back(posting.amount);
        const std::vector<Money> costs = spread(piece_.cost, widths);
        for (std::size_t i = 0; i < outputs_.size(); ++i)
            outputs_[i].cost = costs[i + 1];
        return costs.front();
    }

    const store::StockPiece& piece_;
    std::vector<store::Posting> outputs_;
};

void throwAway(Entry& entry, Extent left, Extent end) {
    const Extent ragged = std::min(left, end);
    entry.add(Account::End, ragged);
    entry.add(Account::Scrap, left - ragged, {}, store::ScrapReason::Stub);
}

void addYield(Entry& entry, const Yield& yield, const cutting::Rules& rules) {
    for (const auto& [line, width] : yield.sold)
        entry.add(Account::Sold, width, line);
    entry.add(Account::Trim, yield.trim);
    entry.add(Account::Kerf, yield.kerf);
    entry.add(Account::Scrap, yield.spoiled, {}, store::ScrapReason::Miscut);
    if (!yield.keep) throwAway(entry, yield.left, rules.end);
}

} // namespace

Extent usedBy(const Yield& yield) {
    Extent used = yield.trim + yield.kerf + yield.spoiled;
    for (const auto& [line, width] : yield.sold)
        used = used + width;
    for (const Extent belt : yield.shelf)
        used = used + belt;
    return used;
}

Booked book(const Shop& shop, const store::StockPiece& piece, const Yield& yield, const CutAct& act,
            const cutting::Rules& rules) {
    Entry entry{piece};
    std::vector<store::PieceId> shelf;
    for (const Extent belt : yield.shelf) {
        shelf.push_back(addReadyFrom(shop, piece));
        entry.addShelf(shelf.back(), belt);
    }
    addYield(entry, yield, rules);
    const Extent kept = yield.keep ? yield.left : Extent::none(piece.extent.unit());
    const store::MovementId movement = store::Ledger{shop.connection}.record(store::Movement{
        {act.act, shop.now(), shop.person, piece.belt, yield.note, {}, act.cutter}, entry.postings(kept)});
    const bool opened = yield.keep && piece.kind == cutting::PieceKind::Sleeve;
    if (opened) store::Pieces{shop.connection}.becomeRemnant(piece.id);
    return {movement, yield.keep ? std::optional{piece.id} : std::nullopt, std::move(shelf),
            (yield.left + usedBy(yield)).count() - piece.extent.count()};
}

} // namespace riband::shop
