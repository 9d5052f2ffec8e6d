#include "core/shop/family.h"

#include "core/store/orders.h"

#include <set>

namespace riband::shop {

namespace {

using store::Account;

bool atHome(const store::Posting& posting) {
    return posting.account == Account::Rack || posting.account == Account::Ready;
}

class Reader {
public:
    Reader(const Shop& shop, Unit unit, Family& family) : shop_{shop}, unit_{unit}, family_{family} {}

    void read(const store::StockPiece& piece, std::size_t depth) {
        const std::size_t at = family_.pieces.size();
        family_.pieces.push_back({piece, depth, {}});
        std::int64_t width = 0;
        for (const store::RecordedMovement& recorded : store::Ledger{shop_.connection}.historyOf(piece.id)) {
            sum(recorded);
            if (auto act = actOf(recorded, piece.id, width))
                family_.pieces[at].acts.push_back(std::move(*act));
        }
        for (const store::StockPiece& child : store::Pieces{shop_.connection}.cutFrom(piece.id))
            read(child, depth + 1);
    }

private:
    /// Each movement counts once, however many of the family it touches.
    void sum(const store::RecordedMovement& recorded) {
        if (!seen_.insert(recorded.id).second) return;
        for (const store::Posting& posting : recorded.movement.postings()) {
            if (posting.piece && !inFamily(*posting.piece)) continue;
            if (posting.account == Account::Bought || posting.account == Account::Found)
                family_.cameIn -= posting.amount;
            else if (atHome(posting))
                family_.here += posting.amount;
            else
                family_.out[posting.account] += posting.amount;
        }
    }

    /// Goods in may fill several pieces by one movement: only those of this family count.
    bool inFamily(store::PieceId piece) {
        const auto known = known_.find(piece);
        if (known != known_.end()) return known->second;
        const store::StockPiece read = store::Pieces{shop_.connection}.at(piece);
        const bool in = piece == root() || (read.parent && inFamily(*read.parent));
        known_.emplace(piece, in);
        return in;
    }
    store::PieceId root() const { return family_.pieces.front().piece.id; }

    std::optional<FamilyAct> actOf(const store::RecordedMovement& recorded, store::PieceId piece,
                                   std::int64_t& width) {
        const store::Movement::About& about = recorded.movement.about();
        FamilyAct act{recorded.id,
                      about.at,
                      about.act,
                      about.person,
                      about.note,
                      Extent::of(unit_, width),
                      Extent::of(unit_, width),
                      {},
                      about.undoes,
                      {}};
        act.undoneBy = store::Ledger{shop_.connection}.undoneBy(recorded.id);
        bool touched = false;
        for (const store::Posting& posting : recorded.movement.postings())
            if (atHome(posting) && posting.piece == piece) {
                width += posting.amount;
                touched = true;
            }
        act.after = Extent::of(unit_, width);
        if (touched && act.after < act.before)
            for (const store::Posting& posting : recorded.movement.postings())
                if (posting.amount > 0) act.parts.push_back(partOf(posting));
        return touched ? std::optional{act} : std::nullopt;
    }

    FamilyAct::Part partOf(const store::Posting& posting) {
        FamilyAct::Part part{.account = posting.account,
                             .extent = Extent::of(unit_, posting.amount),
                             .piece = {},
                             .line = posting.line,
                             .order = {},
                             .reason = posting.reason};
        if (atHome(posting)) part.piece = posting.piece;
        if (posting.line) {
            const store::Orders orders{shop_.connection};
            const store::Order order = orders.at(orders.orderOf(*posting.line));
            part.order = order.code;
            part.belts = beltsOf(order, *posting.line, part.extent);
        }
        return part;
    }

    /// The book has the sum; the line says how wide each is, unless it was changed since.
    static std::int64_t beltsOf(const store::Order& order, store::LineId id, Extent sum) {
        for (const store::OrderLine& line : order.lines)
            if (line.id == id && !line.extent.isNone() && sum.count() % line.extent.count() == 0)
                return sum.count() / line.extent.count();
        return 1;
    }

    const Shop& shop_;
    Unit unit_;
    Family& family_;
    std::set<store::MovementId> seen_;
    std::map<store::PieceId, bool> known_;
};

} // namespace

bool Family::equal() const {
    std::int64_t gone = 0;
    for (const auto& [account, amount] : out)
        gone += amount;
    return cameIn == gone + here;
}

Family familyOf(const Shop& shop, store::PieceId id) {
    const store::Pieces pieces{shop.connection};
    store::StockPiece root = pieces.at(id);
    while (root.parent)
        root = pieces.at(*root.parent);
    Family family{store::Catalogue{shop.connection}.at(root.belt).designation, {}, 0, {}, 0};
    Reader{shop, root.extent.unit(), family}.read(root, 0);
    return family;
}

} // namespace riband::shop
