#pragma once

#include "core/shop/receive.h"
#include "core/store/places.h"

namespace riband::shop {

/// Where a piece could go, and why.
struct PlaceAdvice {
    enum class Why {
        Fixed,  ///< kept for this belt
        Front,  ///< a narrow remnant: within easy reach
        Same,   ///< the same belt lies there
        Beside, ///< free and empty, and the same belt lies beside it
        Empty,  ///< free and empty
    };
    std::string place;
    Why why;
    std::int64_t alike; ///< pieces of the belt that lie there
};

/// A remnant is narrow below a quarter of a new sleeve (common practice, no source).
bool narrow(const store::StockedBelt& belt, cutting::PieceKind kind, Extent extent);

/// The best places first, at most `most`: those kept for the belt, where the same belt lies (most pieces
/// first), empty free ones beside those, then any empty free one. A narrow remnant goes to places in front
/// first, within this order. Never a place that is kept for another belt; rooms, bays and shelves only where
/// pieces lie already or nothing stands in them. Pure: `alike` are the pieces of the belt.
std::vector<PlaceAdvice> advisePlaces(const store::StockedBelt& belt, cutting::PieceKind kind, Extent extent,
                                      const std::vector<store::Place>& places,
                                      const std::vector<store::StockPiece>& alike, std::size_t most = 3);

/// The same, read from the shop.
std::vector<PlaceAdvice> advisePlaces(const Shop& shop, const store::StockedBelt& belt,
                                      cutting::PieceKind kind, Extent extent, std::size_t most = 3);

/// The place that is filled in for goods that come in, unless a person says another: the best one. Where that
/// is an empty one, it is where the same belt of the lines beside it goes, and never where another of them
/// goes. "" if there is none, or the belt is in no table.
std::string placeFor(const Shop& shop, const belt::Belt& belt, cutting::PieceKind kind, Extent extent,
                     const std::vector<Delivery>& beside = {});

} // namespace riband::shop
