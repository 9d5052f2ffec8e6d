#pragma once

#include "core/shop/shop.h"
#include "core/store/places.h"

namespace riband::shop {

/// Why a place can't be as it was said; nothing was changed.
enum class PlaceFault {
    NoName,
    BadName,         ///< too long, more than one line, or a code of the shop
    NameTaken,       ///< by another place
    StandsInSmaller, ///< or in itself: a room holds bays, a bay shelves, a shelf bins
    HoldsLarger,     ///< what stands in it is as large as it would be
    LiesThere,       ///< pieces do
    HoldsPlaces,     ///< other places stand in it
    HasLain,         ///< the book names it: a piece was there or went from there
};

/// Nothing if the place may be written so: a new one has the id 0.
std::optional<PlaceFault> faultOf(const Shop& shop, const store::Place& place);

/// The tree of places is the stock manager's and the owner's: each refuses NotTheirs to others, and gives the
/// fault, if there is one, without changing anything.
std::optional<PlaceFault> addPlace(const Shop& shop, const store::Place& place);
/// All but `pieces`: name, what it stands in, level, the belt that it is kept for, whether it is in front. A
/// place that is new, or of another level now, takes in the smaller ones that stand nowhere and whose names
/// begin with its own: "B3" takes "B3-2"; one that is added into nothing stands where its name says.
std::optional<PlaceFault> changePlace(const Shop& shop, const store::Place& place);
/// A place that was never used.
std::optional<PlaceFault> removePlace(const Shop& shop, store::PlaceId place);

} // namespace riband::shop
