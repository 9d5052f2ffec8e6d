#include "core/store/places.h"

#include "core/store/inner.h"
#include "core/store/search.h"
#include "core/store/statement.h"

namespace riband::store {
namespace {

#define PLACES                                                                                               \
    "SELECT l.id, l.name, l.parent, l.level, l.belt, l.front,"                                               \
    " (SELECT count(*) FROM piece p WHERE p.place = l.id AND p.extent > 0) FROM place l "

Place placeOf(const Statement& row) {
    return {.id = row.get<PlaceId>(0),
            .name = row.get<std::string>(1),
            .parent = row.get<std::optional<PlaceId>>(2),
            .level = row.get<PlaceLevel>(3),
            .fixedFor = row.get<std::optional<BeltId>>(4),
            .front = row.get<bool>(5),
            .pieces = row.get<std::int64_t>(6)};
}

/// Up the tree from a place: its parent must be larger, so no place stands in itself.
bool standsRight(Connection& connection, const Place& place) {
    if (!place.parent) return true;
    const auto level = only<PlaceLevel>(connection, "SELECT level FROM place WHERE id = ?", *place.parent);
    return level && *level < place.level;
}

bool holdsSmaller(Connection& connection, const Place& place) {
    return only<std::int64_t>(connection, "SELECT count(*) FROM place WHERE parent = ? AND level <= ?",
                              place.id, place.level)
               .value_or(0) == 0;
}

} // namespace

std::vector<Place> Places::all() const {
    std::vector<Place> places;
    Statement rows{connection_, PLACES "ORDER BY l.name"};
    while (rows.next())
        places.push_back(placeOf(rows));
    return places;
}

std::optional<Place> Places::byName(const std::string& name) const {
    Statement row{connection_, PLACES "WHERE l.name = ?", name};
    if (!row.next()) return std::nullopt;
    return placeOf(row);
}

std::optional<PlaceId> Places::named(const std::string& name) {
    if (name.empty()) return std::nullopt;
    if (const auto id = only<PlaceId>(connection_, "SELECT id FROM place WHERE name = ?", name)) return id;
    return insert<PlaceId>(connection_,
                           "INSERT INTO place (name, parent) SELECT ?, (SELECT id FROM place"
                           " WHERE level < 3 AND substr(?, 1, length(name) + 1) = name || '-'"
                           " ORDER BY length(name) DESC LIMIT 1)",
                           name, name);
}

void Places::change(const Place& place) {
    if (!standsRight(connection_, place) || !holdsSmaller(connection_, place)) {
        connection_.inner().spoiled = true;
        throw StoreError{StoreError::Kind::Constraint, connection_.path(), "a place stands in a larger one"};
    }
    store::change(connection_,
                  "UPDATE place SET name = ?, parent = ?, level = ?, belt = ?, front = ? WHERE id = ?",
                  place.name, place.parent, place.level, place.fixedFor, place.front, place.id);
    indexPlace(connection_, place.id);
}

void Places::remove(PlaceId place) { store::change(connection_, "DELETE FROM place WHERE id = ?", place); }

} // namespace riband::store
