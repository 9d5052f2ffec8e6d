#include "core/shop/offers.h"

#include <algorithm>

namespace riband::shop {

namespace {

using cutting::PieceKind;

class UsableWorth final : public cutting::Worth {
public:
    explicit UsableWorth(std::int64_t least) : least_{least} {}
    std::int64_t of(std::int64_t extent) const override { return extent < least_ ? 0 : extent; }
    std::int64_t grain(std::int64_t widths) const override { return widths; }

private:
    std::int64_t least_;
};

bool isAsked(Extent extent, const std::vector<Extent>& asked) {
    return std::find(asked.begin(), asked.end(), extent) != asked.end();
}

bool canGive(const Offer& offer, const std::vector<Extent>& asked) {
    if (offer.piece.kind == PieceKind::Ready)
        return offer.piece.reserved.isNone() && isAsked(offer.free, asked);
    return !offer.free.isNone();
}

/// The labour of a mounting as width. The setting is in mm; a ribbed piece pays a whole rib of trim each
/// time, which is enough to keep mountings few.
Extent mountingCost(const store::ShopSettings& settings, Unit unit) {
    return settings.mountingCost.unit() == unit ? settings.mountingCost : Extent::none(unit);
}

} // namespace

std::vector<Offer> offersOf(const std::vector<store::StockPiece>& pieces, const Promises& promises,
                            const cutting::Rules& rules, const std::vector<Extent>& asked) {
    std::vector<Offer> offers;
    for (const store::StockPiece& piece : pieces) {
        const Offer offer{piece, promises.free(piece, rules.end)};
        if (canGive(offer, asked)) offers.push_back(offer);
    }
    return offers;
}

cutting::Piece asProblemPiece(const Offer& offer) {
    const bool opened = offer.piece.kind == PieceKind::Sleeve && offer.free != offer.piece.extent;
    return {.code = offer.piece.code,
            .kind = opened ? PieceKind::Remnant : offer.piece.kind,
            .extent = offer.free,
            .born = offer.piece.born()};
}

Extent leastKept(const cutting::Rules& rules, const std::vector<Extent>& listed) {
    if (listed.empty()) return rules.stub;
    const Extent narrowest = *std::min_element(listed.begin(), listed.end());
    return std::max(rules.stub, rules.trim + narrowest + rules.kerf + rules.reserve(narrowest));
}

std::shared_ptr<const cutting::Worth> usableWorth(const cutting::Rules& rules,
                                                  const std::vector<Extent>& listed) {
    if (listed.empty()) return cutting::Worth::plain(rules.stub);
    return std::make_shared<UsableWorth>(leastKept(rules, listed).count());
}

cutting::Problem problemOf(const store::StockedBelt& belt, const store::ShopSettings& settings,
                           const std::vector<Offer>& offers, std::vector<cutting::Line> lines) {
    const cutting::Rules& rules = settings.rulesFor(belt.unit);
    std::vector<cutting::Piece> pieces;
    for (const Offer& offer : offers)
        pieces.push_back(asProblemPiece(offer));
    return {rules, std::move(pieces), std::move(lines), usableWorth(rules, belt.listed),
            mountingCost(settings, belt.unit)};
}

} // namespace riband::shop
