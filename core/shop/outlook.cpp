#include "core/shop/demand.h"
#include "core/shop/kept.h"
#include "core/shop/offers.h"

#include <algorithm>

namespace riband::shop {

namespace {

std::vector<cutting::Line> linesOf(const std::vector<Wish>& wishes, Unit unit) {
    std::vector<cutting::Line> lines;
    for (const Wish& wish : wishes) {
        demandBelts(unit, wish.extent, wish.quantity);
        lines.push_back({std::to_string(lines.size() + 1), wish.extent, wish.quantity});
    }
    return lines;
}

std::vector<Extent> extentsOf(const std::vector<Wish>& wishes) {
    std::vector<Extent> extents;
    for (const Wish& wish : wishes)
        extents.push_back(wish.extent);
    return extents;
}

std::vector<store::StockPiece> piecesOf(const Shop& shop, const std::optional<store::StockedBelt>& kept) {
    if (!kept) return {};
    return store::Pieces{shop.connection}.ofBelt(kept->id);
}

/// Most belts have nothing promised: the open tickets are then not asked for.
Promises promisesFor(const Shop& shop, const std::vector<store::StockPiece>& pieces,
                     const store::ShopSettings& settings) {
    const auto promised = [](const store::StockPiece& piece) { return !piece.reserved.isNone(); };
    return std::any_of(pieces.begin(), pieces.end(), promised) ? Promises::read(shop, settings)
                                                               : Promises::none();
}

} // namespace

Outlook lookAt(const Shop& shop, const belt::Belt& belt, const std::vector<Wish>& wishes) {
    const std::optional<store::StockedBelt> kept = store::Catalogue{shop.connection}.find(belt);
    const store::StockedBelt stocked = kept ? *kept : usualEntry(*shop.tables, belt);
    std::vector<cutting::Line> lines = linesOf(wishes, stocked.unit);
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    const std::vector<store::StockPiece> pieces = piecesOf(shop, kept);
    const std::vector<Offer> offers = offersOf(pieces, promisesFor(shop, pieces, settings),
                                               settings.rulesFor(stocked.unit), extentsOf(wishes));
    std::vector<store::StockPiece> offered;
    for (const Offer& offer : offers)
        offered.push_back(offer.piece);
    return {stocked, std::move(offered), problemOf(stocked, settings, offers, std::move(lines)),
            dayOf(shop.now())};
}

} // namespace riband::shop
