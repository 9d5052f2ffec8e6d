#include "core/shop/counting/settle.h"

#include "core/shop/counting/correct.h"
#include "core/shop/counting/late_cut.h"
#include "core/shop/demand.h"
#include "core/store/upkeep.h"

#include <algorithm>

namespace riband::shop {

namespace {

using counting::Difference;
using counting::Proposal;
using store::Account;
using store::Explanation;
using Why = Refusal::Why;

/// One difference on its way to be settled.
class Act {
public:
    Act(const Shop& shop, const Finding& finding, const Proposal& proposal,
        std::optional<store::PersonId> approved)
        : shop_{shop}, finding_{finding}, proposal_{proposal}, approved_{approved} {}

    Settled run() {
        demandApproval();
        book();
        write(finding_.difference);
        if (proposal_.other) write(*proposal_.other);
        return std::move(settled_);
    }

private:
    const Difference& gap() const { return finding_.difference; }
    const store::StockPiece& piece() const { return *finding_.piece; }

    void demandApproval() {
        if (!needsApproval(finding_, proposal_)) return;
        const store::People people{shop_.connection};
        if (people.at(shop_.person).role == store::Role::Owner) approved_ = shop_.person;
        if (!approved_ || people.at(*approved_).role != store::Role::Owner)
            refuse(Why::NeedsApproval, finding_.belt);
    }

    void book() {
        switch (proposal_.what) {
        case Explanation::BookedLate:
            return;
        case Explanation::CutNotRecorded:
        case Explanation::CutFromOther:
        case Explanation::LineNotTicketed:
            settled_.movement = counting::bookLateCut(shop_, piece(), gap(), proposal_);
            break;
        case Explanation::Swapped:
            swap();
            break;
        case Explanation::LostLabel:
            relabel();
            break;
        case Explanation::Found:
            found();
            return;
        case Explanation::TrimForgotten:
            wasted(Account::Trim, -gap().gap + proposal_.unexplained);
            break;
        case Explanation::EdgeWaste:
            wasted(Account::End, -gap().gap);
            break;
        default:
            correctBy(piece(), gap().gap);
        }
        if (finding_.piece) add(counting::voided(shop_, finding_.piece->id));
    }

    void add(const std::vector<Voided>& voided) {
        settled_.voided.insert(settled_.voided.end(), voided.begin(), voided.end());
    }

    std::string note() const { return "count " + finding_.place; }

    void correctBy(const store::StockPiece& piece, std::int64_t change) {
        if (change != 0)
            settled_.movement = counting::correct(shop_, piece, change, Account::Difference, note());
        if (change < 0 && proposal_.what == Explanation::SaleWithoutOrder)
            store::Pieces{shop_.connection}.becomeRemnant(piece.id);
    }

    /// The waste goes to its own account, what the measuring adds to it to Difference.
    void wasted(Account account, std::int64_t width) {
        settled_.movement = counting::correctWaste(shop_, piece(), gap().gap, account, width, note());
    }

    void swap() {
        const store::StockPiece other = store::Pieces{shop_.connection}.at(*proposal_.other->piece);
        const bool isShort = gap().gap < 0;
        const store::StockPiece& from = isShort ? piece() : other;
        const store::StockPiece& to = isShort ? other : piece();
        const std::int64_t lacks = isShort ? -gap().gap : -proposal_.other->gap;
        const std::int64_t gains = isShort ? proposal_.other->gap : gap().gap;
        settled_.movement = counting::correctSwap(shop_, from, to, gains, lacks - gains, note());
        add(counting::voided(shop_, other.id));
    }

    /// The find is the missing piece: it lies where it was found, and gets its label again.
    void relabel() {
        const Difference& find = gap().kind == Difference::Kind::Find ? gap() : *proposal_.other;
        const Difference& lost = gap().kind == Difference::Kind::Find ? *proposal_.other : gap();
        const store::StockPiece missing = store::Pieces{shop_.connection}.at(*lost.piece);
        correctBy(missing, find.measured - missing.extent.count());
        const std::string place = store::Counts{shop_.connection}.find(find.count)->place;
        if (missing.place != place)
            store::Upkeep{shop_.connection}.relocate(missing.id, place, shop_.person, shop_.now());
        add(counting::voided(shop_, missing.id));
        settled_.label = missing.id;
    }

    void found() {
        if (proposal_.settlement) return restore();
        if (finding_.piece) return comeBack();
        const auto [made, movement] = counting::bookFind(
            shop_, gap().belt, Extent::of(gap().unit, gap().measured), finding_.place, note());
        settled_.label = made;
        settled_.movement = movement;
    }

    /// Its label is on it, and the book has nothing of it: thrown away or used up, as was believed.
    void comeBack() {
        settled_.movement = counting::correct(shop_, piece(), gap().gap, Account::Found, note());
        if (piece().kind == cutting::PieceKind::Sleeve)
            store::Pieces{shop_.connection}.becomeRemnant(piece().id);
    }

    /// Booked as missing before: that is taken back with its cost, the rest is measuring.
    void restore() {
        add(counting::takeBack(shop_, *proposal_.settlement));
        const store::StockPiece again = store::Pieces{shop_.connection}.at(*gap().piece);
        correctBy(again, gap().measured - again.extent.count());
    }

    void write(const Difference& settled) {
        settled_.settlements.push_back(store::Counts{shop_.connection}.add(
            store::Settlement{.id = store::SettlementId{0},
                              .count = settled.count,
                              .scan = settled.scan,
                              .piece = settled.piece ? settled.piece : settled_.label,
                              .explanation = proposal_.what,
                              .movement = settled_.movement,
                              .person = shop_.person,
                              .at = shop_.now(),
                              .approved = needsApproval(finding_, proposal_) ? approved_ : std::nullopt,
                              .undoes = {}}));
    }

    const Shop& shop_;
    const Finding& finding_;
    const Proposal& proposal_;
    std::optional<store::PersonId> approved_;
    Settled settled_;
};

} // namespace

Settled settle(const Shop& shop, const Difference& difference, const Proposal& proposal,
               std::optional<store::PersonId> approved) {
    store::Transaction transaction{shop.connection};
    const std::optional<Finding> finding = findingOf(shop, difference);
    if (!finding) refuse(Why::AlreadyDone, "");
    const auto standing = std::find_if(finding->proposals.begin(), finding->proposals.end(),
                                       [&](const Proposal& each) { return sameAct(each, proposal); });
    if (standing == finding->proposals.end()) refuse(Why::AlreadyDone, finding->belt);
    Settled settled = Act{shop, *finding, *standing, approved}.run();
    transaction.commit();
    return settled;
}

} // namespace riband::shop
