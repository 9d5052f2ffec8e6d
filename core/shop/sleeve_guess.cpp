#include "core/shop/sleeve_guess.h"

#include "core/store/goods.h"

#include <algorithm>
#include <cstdlib>

namespace riband::shop {

namespace {

constexpr std::int64_t errOf = 50; // one in so many

bool near(Extent known, Extent extent) {
    return known.unit() == extent.unit() &&
           std::llabs(known.count() - extent.count()) * errOf <= known.count();
}

} // namespace

SleeveWidths sleeveWidths(const Shop& shop, const belt::Belt& belt) {
    SleeveWidths widths{shop.tables->usualSleeve(belt), shop.tables->sleeves(belt)};
    const auto kept = store::Catalogue{shop.connection}.find(belt);
    if (!kept) return widths;
    if (!kept->newSleeve.isNone()) widths.others.push_back(kept->newSleeve);
    for (const store::StockPiece& piece : store::Pieces{shop.connection}.ofBelt(kept->id))
        if (piece.kind == cutting::PieceKind::Sleeve) widths.others.push_back(piece.extent);
    for (const store::ExpectedDelivery& delivery : store::Goods{shop.connection}.expected())
        for (const store::ExpectedLine& line : delivery.lines)
            if (line.belt == kept->id) widths.others.push_back(line.extent);
    return widths;
}

bool isSleeve(const SleeveWidths& known, Extent extent) {
    if (known.usual.unit() == extent.unit() && extent >= known.usual) return true;
    return std::any_of(known.others.begin(), known.others.end(),
                       [&](Extent other) { return near(other, extent); });
}

} // namespace riband::shop
