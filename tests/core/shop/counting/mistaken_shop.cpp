#include "tests/core/shop/counting/mistaken_shop.h"

#include "core/shop/counting/slip.h"

namespace riband::shop {

using store::Explanation;

namespace {
constexpr std::int64_t trim = 2'500;
}

MistakenShop::MistakenShop(unsigned seed, int belts, int piecesEach, int mistakes, std::int64_t noise,
                           Fall fall)
    : random_{seed}, noise_{noise}, fall_{fall} {
    manager_ = store::People{connection}.add("CD", "C. Dyer", store::Role::Owner);
    furnish(belts, piecesEach);
    for (int tries = 0; static_cast<int>(made_.size()) < mistakes && tries < 20 * mistakes; ++tries)
        make(static_cast<Mistake>(number(0, static_cast<int>(Mistake::Gone))));
}

std::int64_t MistakenShop::number(std::int64_t from, std::int64_t to) {
    return std::uniform_int_distribution<std::int64_t>{from, to}(random_);
}

void MistakenShop::furnish(int belts, int piecesEach) {
    for (int i = 0; i < belts; ++i) {
        const belt::Belt belt{"H8M", Teeth{100 + i}, Length::millimetres(800 + 8 * i), ""};
        belts_.push_back(belt);
        for (int j = 0; j < piecesEach; ++j) {
            const auto made = piece(belt, um(100 * number(900, 4'000)), cutting::PieceKind::Remnant, 2'000);
            move(shop, made, "P" + std::to_string(i / 3) + "-" + std::to_string(j % 2));
            truth_.emplace(made, at(made).extent.count());
            beltOf_.emplace(made, belt);
        }
    }
}

/// What has no label any more, or is gone, is in nobody's hands.
bool MistakenShop::mayBeTouched(store::PieceId piece) const {
    if (fall_ == Fall::Apart) return !touched_.contains(piece);
    return !lost_.contains(piece) && truth_.at(piece) > 60'000;
}

std::optional<store::PieceId> MistakenShop::untouched(const belt::Belt& belt) {
    std::vector<store::PieceId> free;
    for (const auto& [piece, width] : truth_)
        if (beltOf_.at(piece) == belt && mayBeTouched(piece) && width > 60'000) free.push_back(piece);
    if (free.empty()) return std::nullopt;
    return free[static_cast<std::size_t>(number(0, static_cast<std::int64_t>(free.size()) - 1))];
}

std::optional<store::PieceId> MistakenShop::anyUntouched() {
    return untouched(
        belts_[static_cast<std::size_t>(number(0, static_cast<std::int64_t>(belts_.size()) - 1))]);
}

bool MistakenShop::cutWithoutRecord(bool fromOther) {
    const auto first = anyUntouched();
    if (!first) return false;
    const belt::Belt belt = beltOf_.at(*first);
    const std::int64_t width = 1'000 * number(10, 40);
    const Ordered ordered = order(belt, um(width), 1);
    const store::PieceId planned = mountingOf(ordered).piece;
    if (!mayBeTouched(planned)) return false; // the order stays open, as others do
    touched_.insert(planned);
    const auto piece = fromOther ? untouched(belt) : std::optional{planned};
    if (!piece || (fromOther && piece == planned)) return false;
    touched_.insert(*piece);
    truth_.at(*piece) -= trim + width;
    made_.push_back({fromOther ? Mistake::CutFromOther : Mistake::CutNotRecorded, *piece, ordered.order});
    return true;
}

bool MistakenShop::cutWrongPiece() {
    const auto first = anyUntouched();
    if (!first) return false;
    const belt::Belt belt = beltOf_.at(*first);
    const std::int64_t width = 1'000 * number(10, 40);
    const Ordered ordered = order(belt, um(width), 1);
    const store::PieceId planned = mountingOf(ordered).piece;
    if (!mayBeTouched(planned)) return false;
    touched_.insert(planned);
    const auto other = untouched(belt);
    if (!other || other == planned) return false;
    touched_.insert(*other);
    cutAll(ordered); // the book takes it from the planned one
    truth_.at(*other) -= trim + width;
    made_.push_back({Mistake::WrongPiece, *other, ordered.order});
    made_.push_back({Mistake::WrongPiece, planned, ordered.order});
    return true;
}

bool MistakenShop::mistypeRest() {
    const auto first = anyUntouched();
    if (!first) return false;
    const std::int64_t width = 1'000 * number(10, 40);
    const Ordered ordered = order(beltOf_.at(*first), um(width), 1);
    const store::PieceId piece = mountingOf(ordered).piece;
    if (!mayBeTouched(piece)) return false;
    touched_.insert(piece);
    const std::int64_t left = truth_.at(piece) - trim - width;
    for (const std::int64_t typed : counting::transpositionsOf(left, Unit::Micrometre)) {
        if (typed < 20'000 || typed >= at(piece).extent.count()) continue;
        recordCut(shop, {mountingOf(ordered).id, um(typed), {}, ""});
        truth_.at(piece) = left;
        // The rest was measured: what the book did not know of the piece before, that made good.
        std::erase_if(made_, [&](const Made& made) { return made.piece == piece; });
        made_.push_back({Mistake::Transposed, piece, {}});
        return true;
    }
    return false;
}

bool MistakenShop::make(Mistake mistake) {
    switch (mistake) {
    case Mistake::CutNotRecorded:
        return cutWithoutRecord(false);
    case Mistake::CutFromOther:
        return cutWithoutRecord(true);
    case Mistake::WrongPiece:
        return cutWrongPiece();
    case Mistake::Transposed:
        return mistypeRest();
    default:
        break;
    }
    const auto piece = anyUntouched();
    if (!piece) return false;
    touched_.insert(*piece);
    made_.push_back({mistake, *piece, {}});
    if (mistake == Mistake::TrimForgotten) truth_.at(*piece) -= trim;
    if (mistake == Mistake::SaleWithoutOrder) truth_.at(*piece) -= trim + 20'000;
    if (mistake == Mistake::LostLabel) lost_.insert(*piece);
    if (mistake == Mistake::Gone) truth_.at(*piece) = 0;
    return true;
}

void MistakenShop::note(store::CountId count, store::PieceId piece) {
    const auto measured = [&] { return um(truth_.at(piece) + (noise_ ? number(-noise_, noise_) : 0)); };
    if (lost_.contains(piece)) {
        noteFind(shop, count, beltOf_.at(piece), measured(), store::Method::Calliper);
        return;
    }
    for (int tries = 0; tries < 50; ++tries)
        if (shop::note(shop, count, piece, measured(), store::Method::Calliper).verdict !=
            counting::Verdict::Again)
            return;
}

void MistakenShop::count() {
    std::map<std::string, std::vector<store::PieceId>> places;
    for (const auto& [piece, width] : truth_)
        places[at(piece).place].push_back(piece);
    for (const auto& [place, pieces] : places) {
        const store::CountId count = beginCount(shop, place);
        for (const store::PieceId piece : pieces)
            if (truth_.at(piece) > 0) note(count, piece);
        closeCount(shop, count);
    }
}

void MistakenShop::acceptFirstProposals() {
    for (std::vector<Finding> open = findings(shop); !open.empty(); open = findings(shop)) {
        const Finding& finding = open.front();
        const counting::Proposal& first = finding.proposals.front();
        settle(shop, finding.difference, first, manager_);
        if (finding.difference.piece) settled_[*finding.difference.piece] = first.what;
        if (first.other && first.other->piece) settled_[*first.other->piece] = first.what;
    }
}

std::optional<Explanation> MistakenShop::settledAs(store::PieceId piece) const {
    const auto found = settled_.find(piece);
    return found == settled_.end() ? std::nullopt : std::optional{found->second};
}

bool MistakenShop::happened(store::PieceId piece, Explanation what) const {
    return std::any_of(made_.begin(), made_.end(), [&](const Made& made) {
        return made.piece == piece && rightFor(made.mistake) == what;
    });
}

Explanation MistakenShop::rightFor(Mistake mistake) {
    switch (mistake) {
    case Mistake::CutNotRecorded:
        return Explanation::CutNotRecorded;
    case Mistake::CutFromOther:
        return Explanation::CutFromOther;
    case Mistake::WrongPiece:
        return Explanation::Swapped;
    case Mistake::SaleWithoutOrder:
        return Explanation::SaleWithoutOrder;
    case Mistake::Transposed:
        return Explanation::Transposed;
    case Mistake::TrimForgotten:
        return Explanation::TrimForgotten;
    case Mistake::LostLabel:
        return Explanation::LostLabel;
    case Mistake::Gone:
        break;
    }
    return Explanation::Unexplained;
}

const char* MistakenShop::nameOf(Mistake mistake) {
    constexpr const char* names[] = {"cut not recorded",
                                     "cut from another piece, not recorded",
                                     "cut from the wrong piece",
                                     "sale without order",
                                     "digits transposed",
                                     "trim forgotten",
                                     "label lost",
                                     "gone"};
    return names[static_cast<std::size_t>(mistake)];
}

} // namespace riband::shop
