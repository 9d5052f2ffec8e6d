#include "core/shop/piece_worth.h"

#include "core/foresight/kept_for.h"
#include "core/shop/learn.h"

#include <algorithm>
#include <cmath>

namespace riband::shop {

const PieceWorths::Known& PieceWorths::known(store::BeltId belt) {
    const auto found = byBelt_.find(belt);
    if (found != byBelt_.end()) return found->second;
    // Most belts of a large shop have none: then their orders need not be read.
    if (!store::WorthTables{shop_.connection}.of(belt)) return byBelt_.emplace(belt, Known{}).first->second;
    const Past past = lessonOf(shop_, belt).past;
    return byBelt_.emplace(belt, Known{past.setting, futureOf(past)}).first->second;
}

std::optional<PieceWorth> PieceWorths::of(const store::StockPiece& piece) {
    if (piece.kind == cutting::PieceKind::Ready || piece.gone()) return std::nullopt;
    const Known& belt = known(piece.belt);
    if (!belt.future || belt.future->fault != WorthFault::None) return std::nullopt;
    const auto size = static_cast<foresight::Size>(piece.extent.count());
    const Unit unit = piece.extent.unit();
    const auto worth = static_cast<std::int64_t>(belt.future->table.of(size));
    const std::int64_t step = unit == Unit::Micrometre ? 1000 : 1; // an expectation is no finer
    const std::int64_t shown = worth > 0 ? std::max(step, worth - worth % step) : 0;
    PieceWorth answer{Extent::of(unit, shown), std::nullopt, belt.future->version};
    if (const auto kept = foresight::keptFor(belt.setting, belt.future->table, belt.future->outlook, size))
        answer.keptFor = Reason::Kept{Extent::of(unit, kept->line.width), kept->line.quantity,
                                      static_cast<int>(std::lround(100 * kept->share))};
    return answer;
}

} // namespace riband::shop
