#include "core/shop/outlook.h"

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

std::vector<Extent> extentsOf(const std::vector<cutting::Line>& lines) {
    std::vector<Extent> extents;
    for (const cutting::Line& line : lines)
        extents.push_back(line.extent);
    return extents;
}

std::map<Extent, int> readyBelts(const std::vector<store::StockPiece>& pieces) {
    std::map<Extent, int> shelf;
    for (const store::StockPiece& piece : pieces)
        if (piece.kind == cutting::PieceKind::Ready && piece.reserved.isNone()) ++shelf[piece.extent];
    return shelf;
}

Extent widestOf(const std::vector<store::StockPiece>& pieces, Unit unit) {
    Extent widest = Extent::none(unit);
    for (const store::StockPiece& piece : pieces)
        widest = std::max(widest, piece.extent);
    return widest;
}

/// Most belts have nothing promised: the open tickets are then not asked for.
bool anyPromised(const std::vector<store::StockPiece>& pieces) {
    return std::any_of(pieces.begin(), pieces.end(),
                       [](const store::StockPiece& piece) { return !piece.reserved.isNone(); });
}

bool servesAll(const Outlook& outlook) { return cutting::bestFit(outlook.problem).unserved.empty(); }

} // namespace

Outlook outlookOf(const Shop& shop, const store::StockedBelt& belt, const store::ShopSettings& settings,
                  const std::vector<store::StockPiece>& pieces, const Promises& promises,
                  std::vector<cutting::Line> lines) {
    const std::vector<Offer> offers =
        offersOf(pieces, promises, settings.rulesFor(belt.unit), extentsOf(lines));
    std::vector<store::StockPiece> offered;
    for (const Offer& offer : offers)
        offered.push_back(offer.piece);
    return {belt,
            std::move(offered),
            problemOf(belt, settings, offers, std::move(lines)),
            dayOf(shop.now()),
            pastOf(shop, belt, settings, widestOf(pieces, belt.unit)),
            readyBelts(pieces)};
}

Outlook lookAt(const Shop& shop, const belt::Belt& belt, const std::vector<Wish>& wishes) {
    const store::StockedBelt stocked = entryOf(shop, belt);
    std::vector<cutting::Line> lines = linesOf(wishes, stocked.unit);
    const store::ShopSettings settings = store::Settings{shop.connection}.read();
    const std::vector<store::StockPiece> pieces = store::Pieces{shop.connection}.ofBelt(stocked.id);
    std::vector<foresight::Line> asked;
    for (const Wish& wish : wishes)
        asked.push_back({static_cast<foresight::Size>(wish.extent.count()), static_cast<int>(wish.quantity)});
    const bool promised = anyPromised(pieces);
    Outlook outlook = outlookOf(shop, stocked, settings, pieces,
                                promised ? Promises::read(shop, settings) : Promises::none(), lines);
    if (promised && !servesAll(outlook)) {
        Outlook without = outlookOf(shop, stocked, settings, pieces, Promises::toCustomers(shop, settings),
                                    std::move(lines));
        without.shelfGivesWay = servesAll(without);
        if (without.shelfGivesWay) outlook = std::move(without);
    }
    addToday(outlook.past, asked);
    return outlook;
}

} // namespace riband::shop
