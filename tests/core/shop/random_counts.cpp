#include "tests/core/shop/random_counts.h"

#include "core/shop/counting/count.h"
#include "core/shop/counting/settle.h"

#include <utility>

namespace riband::shop {

RandomCounts::RandomCounts(TestShop& shop, std::mt19937& random) : shop_{shop}, random_{random} {
    store::Transaction transaction{shop.connection};
    store::People people{shop.connection};
    owner_ = people.add("OM", "O. Mercer", store::Role::Owner);
    manager_ = people.add("SC", "S. Cooper", store::Role::StockManager);
    store::ShopSettings settings = store::Settings{shop.connection}.read();
    settings.counting.approveOver = Money::minor(50);
    store::Settings{shop.connection}.write(settings);
    transaction.commit();
}

std::int64_t RandomCounts::number(std::int64_t from, std::int64_t to) {
    return std::uniform_int_distribution<std::int64_t>{from, to}(random_);
}

void RandomCounts::act(const belt::Belt& belt, Unit unit) {
    switch (number(0, 9)) {
    case 0:
        return find(belt, unit);
    case 1:
        return close();
    case 2:
    case 3:
    case 4:
        return settleAny();
    case 5:
        return counterAny();
    default:
        return scan();
    }
}

std::string RandomCounts::anyPlace() { return "B" + std::to_string(number(1, 3)); }

/// Mostly as the book says, or near it; sometimes far from it, or only seen.
std::optional<Extent> RandomCounts::measured(Extent book) {
    const bool ribbed = book.unit() == Unit::Rib;
    if (oneIn(6)) return std::nullopt;
    if (oneIn(4)) return Extent::of(book.unit(), std::max<std::int64_t>(1, book.count() / number(2, 3)));
    if (oneIn(3)) return book;
    const std::int64_t off = ribbed ? number(-2, 2) : 100 * number(-40, 40);
    return Extent::of(book.unit(), std::max<std::int64_t>(1, book.count() + off));
}

/// The open count of the place; none if it was only begun by this act.
std::optional<store::CountId> RandomCounts::countAt(const std::string& place) {
    if (const auto open = store::Counts{shop_.connection}.openAt(place)) return open->id;
    beginCount(shop_.shop, place);
    return std::nullopt;
}

void RandomCounts::scan() {
    if (again_) {
        const Again last = *std::exchange(again_, std::nullopt);
        note(shop_.shop, last.count, last.piece, last.width, last.method);
        return;
    }
    const std::vector<store::StockPiece> pieces = store::Pieces{shop_.connection}.all();
    if (pieces.empty()) return;
    const store::StockPiece& piece =
        pieces[static_cast<std::size_t>(number(0, static_cast<std::int64_t>(pieces.size()) - 1))];
    const auto count = countAt(piece.place.empty() || oneIn(4) ? anyPlace() : piece.place);
    if (!count) return;
    const std::optional<Extent> width = measured(piece.extent);
    const auto method = static_cast<store::Method>(number(0, 2));
    const Noted noted = note(shop_.shop, *count, piece.id, width, method);
    ++scans_;
    if (noted.verdict == counting::Verdict::Again && !oneIn(5))
        again_ = Again{*count, piece.id, *width, method};
}

void RandomCounts::find(const belt::Belt& belt, Unit unit) {
    const auto count = countAt(anyPlace());
    if (!count) return;
    const Extent width = unit == Unit::Rib ? ribs(number(3, 30)) : mm(number(15, 120));
    noteFind(shop_.shop, *count, belt, width, store::Method::Calliper);
    ++scans_;
}

void RandomCounts::close() {
    const std::vector<store::Count> open = store::Counts{shop_.connection}.open();
    if (!open.empty()) closeCount(shop_.shop, open.front().id);
}

/// Mostly the likeliest proposal.
void RandomCounts::settleAny() {
    const std::vector<Finding> open = findings(shop_.shop);
    if (open.empty()) return scan();
    const Finding& finding =
        open[static_cast<std::size_t>(number(0, static_cast<std::int64_t>(open.size()) - 1))];
    const auto last = static_cast<std::int64_t>(finding.proposals.size()) - 1;
    settleAs(finding, finding.proposals[static_cast<std::size_t>(oneIn(3) ? number(0, last) : 0)]);
}

/// By the clerk alone, or allowed by the stock manager or by the owner; beyond the limit only the last will
/// do, and the book says who it was.
void RandomCounts::settleAs(const Finding& finding, const counting::Proposal& proposal) {
    const bool needed = needsApproval(finding, proposal);
    const std::optional<store::PersonId> asked[] = {std::nullopt, manager_, owner_, owner_};
    const auto allows = asked[number(0, 3)];
    try {
        const Settled settled = settle(shop_.shop, finding.difference, proposal, allows);
        CHECK((!needed || allows == owner_));
        const auto written = store::Counts{shop_.connection}.settlement(settled.settlements.front());
        REQUIRE(written);
        CHECK(written->person == shop_.shop.person);
        CHECK(written->approved == (needed ? std::optional{owner_} : std::nullopt));
        approved_ += needed ? 1 : 0;
        ++settled_;
    } catch (const Refusal& refusal) {
        CHECK((refusal.why() == Refusal::Why::NeedsApproval) == (needed && allows != owner_));
        throw;
    }
}

void RandomCounts::counterAny() {
    const std::vector<store::Settlement> all = store::Counts{shop_.connection}.settlements();
    if (all.empty()) return scan();
    const store::SettlementId one =
        all[static_cast<std::size_t>(number(0, static_cast<std::int64_t>(all.size()) - 1))].id;
    const std::optional<Refusal> why = whyNotCountered(shop_.shop, one);
    try {
        counterSettlement(shop_.shop, one);
        CHECK_FALSE(why);
    } catch (const Refusal& refusal) {
        REQUIRE(why);
        CHECK(why->why() == refusal.why());
        throw;
    }
    ++countered_;
}

} // namespace riband::shop
