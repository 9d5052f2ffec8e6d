#pragma once

#include "core/shop/shop.h"
#include "core/store/sales.h"
#include "core/store/shelf_lives.h"
#include "core/store/upkeep.h"

#include <map>

namespace riband::shop {

/// The last day on which a piece should be used: so many years after it was born by the body of its belt (the
/// shop's setting, core/shop/shelf_life.h), or the day to which an inspection extended it. 29 February
/// ends on the 28th. Pure.
Date useBy(const store::StockPiece& piece, store::ShelfYears life,
           const std::optional<store::Inspection>& last);

/// A piece that ages out, and what could become of it till then.
struct AgeingPiece {
    store::StockPiece piece;
    std::string belt; ///< designation
    Date useBy;
    bool extended; ///< was passed once: it can't be extended again
    bool refused;  ///< an inspection found it bad: only scrap is left
    Extent sells;  ///< that customers will probably take of it till then, at last year's pace; the others of
                   ///< its belt that age out before it are used up first
};
/// Pieces that age out within so many days from today or have, the first due first.
std::vector<AgeingPiece> ageing(const Shop& shop, std::chrono::days within);

/// An aged piece was looked at. Sound: it may be used for the extension of its body beyond
/// its day, and once only. Not sound: it is to be scrapped. Refuses PieceGone, NotAged more than half a year
/// before its day, ExtendedAlready. Gives the new day.
std::optional<Date> inspect(const Shop& shop, store::PieceId piece, bool sound, const std::string& note);

/// The last inspection of a piece was booked by mistake: it stays in its life as taken back, and its day is
/// what it was before. Refuses PieceGone; ActStays if there is none to take back.
void undoInspection(const Shop& shop, store::PieceId piece);

/// What should become of a remnant that costs more than it is good for.
struct Burden {
    enum class Advice {
        Offer, ///< cut it into ready belts of the width that is asked for most and fits
        Scrap, ///< no width that is asked for or listed can be cut from it
    };
    store::StockPiece piece;
    std::string belt;
    Advice advice;
    std::optional<Extent> width; ///< of the ready belts
    std::int64_t belts = 0;      ///< so many of them
    std::int64_t years = 0;      ///< that it would lie at last year's pace, ten at the most
    Extent keeping;              ///< what keeping it so long costs, in width: AdviceRules::holding a year
};
/// Remnants that nothing can be cut from any more by the listed widths, or whose keeping costs more width
/// than they have, by belt, the widest first; nothing that tickets need.
std::vector<Burden> burdens(const Shop& shop);

} // namespace riband::shop
