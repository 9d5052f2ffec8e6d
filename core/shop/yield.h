#pragma once

#include "core/shop/cut.h"

#include <map>

namespace riband::shop {

/// What one mounting made of a piece.
struct Yield {
    Extent trim;
    Extent kerf;                          ///< of all belts together
    std::map<store::LineId, Extent> sold; ///< width of all belts of a line
    std::vector<Extent> shelf;            ///< ready belts
    Extent spoiled;                       ///< by a miscut
    Extent left;                          ///< measured, or what the figures say
    bool keep;                            ///< back to the rack
    std::string note;
};

/// Trim, kerf, belts and what was spoiled.
Extent usedBy(const Yield& yield);

/// What is booked, and the cutter that made it; nothing where none is known.
struct CutAct {
    store::Act act;
    std::optional<store::CutterId> cutter;
};

struct Booked {
    store::MovementId movement;
    std::optional<store::PieceId> remnant;
    std::vector<store::PieceId> shelf;
    std::int64_t difference;
};

/// Books a cut of the piece inside the caller's transaction: width and cost go where the yield says, a thrown
/// away rest to End and Scrap, what is more or less than the figures to Difference. Width that was in no book
/// has no cost of its own: the piece's cost spreads over what there really was.
Booked book(const Shop& shop, const store::StockPiece& piece, const Yield& yield, const CutAct& act,
            const cutting::Rules& rules);

} // namespace riband::shop
