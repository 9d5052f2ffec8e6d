#include "core/store/ledger.h"

#include <stdexcept>

namespace riband::store {
namespace {

/// A kilometre of width, ten thousand million of money: more is a slip of the pen, and sums stay far from
/// overflow.
constexpr std::int64_t most = 1'000'000'000'000;

void require(bool kept, const char* rule) {
    if (!kept) throw std::invalid_argument(rule);
}

void check(const Posting& posting) {
    const bool lies = posting.account == Account::Rack || posting.account == Account::Ready;
    require(!lies || posting.piece, "what lies on the rack or the shelf is a piece");
    require(posting.account != Account::Sold || posting.line, "what is sold names its order line");
    require((posting.account == Account::Scrap) == posting.reason.has_value(),
            "what is scrapped, and only that, names its reason");
    require(posting.amount != 0 || posting.cost.inMinor() != 0, "a posting moves width or money");
    require(posting.amount > -most && posting.amount < most, "a posting moves less than a kilometre");
    require(posting.cost.inMinor() > -most && posting.cost.inMinor() < most,
            "a posting moves too much money");
}

} // namespace

Movement::Movement(About about, std::vector<Posting> postings)
    : about_{std::move(about)}, postings_{std::move(postings)} {
    require(postings_.size() >= 2 && postings_.size() <= 100'000,
            "a movement goes from somewhere to somewhere");
    require((about_.act == Act::Undo) == about_.undoes.has_value(),
            "a counter-entry, and only that, names what it undoes");
    require(!about_.cutter || about_.act == Act::Cut || about_.act == Act::Miscut || about_.act == Act::Undo,
            "only a cut is made on a cutter");
    std::int64_t amount = 0, cost = 0;
    for (const Posting& posting : postings_) {
        check(posting);
        amount += posting.amount;
        cost += posting.cost.inMinor();
    }
    require(amount == 0, "the widths of a movement sum to zero");
    require(cost == 0, "the money of a movement sums to zero");
}

Movement counterOf(const RecordedMovement& mistake, Moment at, PersonId person, std::string note) {
    std::vector<Posting> postings = mistake.movement.postings();
    for (Posting& posting : postings) {
        posting.amount = -posting.amount;
        posting.cost = -posting.cost;
    }
    return {{.act = Act::Undo,
             .at = at,
             .person = person,
             .belt = mistake.movement.about().belt,
             .note = std::move(note),
             .undoes = mistake.id,
             .cutter = mistake.movement.about().cutter},
            std::move(postings)};
}

} // namespace riband::store
