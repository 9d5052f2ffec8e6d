#pragma once

#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::store {

/// How large a place is; a place stands in one of a larger level.
enum class PlaceLevel : std::uint8_t { Room, Bay, Shelf, Bin };

struct Place {
    PlaceId id;
    std::string name; ///< unique in the shop: "B3-2"
    std::optional<PlaceId> parent;
    PlaceLevel level;
    std::optional<BeltId> fixedFor; ///< none: free, for whatever comes
    bool front;                     ///< within easy reach: narrow remnants go there first
    std::int64_t pieces;            ///< that lie there now
};

/// The places of the shop as a tree. With Pieces the only code that names the table `place`.
class Places {
public:
    explicit Places(Connection& connection) : connection_{connection} {}
    std::vector<Place> all() const; ///< by name
    std::optional<Place> byName(const std::string& name) const;
    /// The place of that name, added if it is new: a free bin in the place whose name begins its own, if
    /// there is one ("B3-2" in "B3"). Nothing for "".
    std::optional<PlaceId> named(const std::string& name);
    /// Writes all but `pieces`. Throws StoreError::Constraint if the name is another place's, or the place
    /// would stand in itself or in a smaller one.
    void change(const Place& place);
    /// Throws StoreError::Constraint while something lies there, has lain there or stands in it.
    void remove(PlaceId place);

private:
    Connection& connection_;
};

} // namespace riband::store
