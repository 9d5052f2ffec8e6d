#include "core/shop/cuttable.h"

#include "core/shop/promises.h"

#include <algorithm>

namespace riband::shop {

namespace {

/// The widest single belt of so much free width: it and what must stay beyond it are at least the stub.
Extent widestOf(Extent free, const cutting::Rules& rules) {
    const Extent lost = rules.trim + rules.kerf;
    const Extent none = Extent::none(free.unit());
    if (free <= lost + rules.end || free - lost < rules.stub) return none;
    return free - lost - rules.end;
}

belt::drive::Stocked stockedOf(const store::StockedBelt& belt, const std::vector<store::StockPiece>& pieces,
                               const Promises& promises, const cutting::Rules& rules) {
    belt::drive::Stocked stocked{belt.belt, Extent::none(belt.unit), {}};
    for (const store::StockPiece& piece : pieces) {
        if (piece.kind != cutting::PieceKind::Ready)
            stocked.widest = std::max(stocked.widest, widestOf(promises.free(piece, rules.end), rules));
        else if (piece.reserved.isNone())
            stocked.ready.push_back(piece.extent);
    }
    return stocked;
}

} // namespace

std::vector<belt::drive::Stocked> cuttable(const Shop& shop, const std::string& profile) {
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    const Promises promises = Promises::toCustomers(shop, settings);
    store::Pieces pieces{shop.connection};
    std::vector<belt::drive::Stocked> all;
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.ofProfile(profile)) {
        const auto stocked = stockedOf(belt, pieces.ofBelt(belt.id), promises, settings.rulesFor(belt.unit));
        if (belt::drive::wideEnough(stocked, {})) all.push_back(stocked);
    }
    return all;
}

} // namespace riband::shop
