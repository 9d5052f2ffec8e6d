#include "core/shop/places.h"

#include "core/shop/limits.h"
#include "core/shop/people.h"

#include <algorithm>

namespace riband::shop {

namespace {

std::optional<PlaceFault> nameFault(const Shop& shop, const store::Place& place) {
    if (place.name.empty()) return PlaceFault::NoName;
    if (!canBePlace(shop, place.name)) return PlaceFault::BadName;
    const auto named = store::Places{shop.connection}.byName(place.name);
    if (named && named->id != place.id) return PlaceFault::NameTaken;
    return std::nullopt;
}

std::optional<PlaceFault> treeFault(const Shop& shop, const store::Place& place) {
    for (const store::Place& other : store::Places{shop.connection}.all()) {
        if (other.id == place.parent && (other.id == place.id || other.level >= place.level))
            return PlaceFault::StandsInSmaller;
        if (other.parent == place.id && other.id != place.id && other.level <= place.level)
            return PlaceFault::HoldsLarger;
    }
    return std::nullopt;
}

/// What a place stands in by its name, if that is large enough.
std::optional<store::PlaceId> holderByName(const store::Places& places, const store::Place& made) {
    const auto holder = places.byName(made.name)->parent;
    for (const store::Place& each : places.all())
        if (each.id == holder && each.level < made.level) return holder;
    return std::nullopt;
}

void takeIn(store::Places& places, const store::Place& holder) {
    for (store::Place other : places.all()) {
        if (other.parent || other.level <= holder.level || !other.name.starts_with(holder.name + '-'))
            continue;
        other.parent = holder.id;
        places.change(other);
    }
}

} // namespace

std::optional<PlaceFault> faultOf(const Shop& shop, const store::Place& place) {
    const auto fault = nameFault(shop, place);
    return fault ? fault : treeFault(shop, place);
}

std::optional<PlaceFault> addPlace(const Shop& shop, const store::Place& place) {
    store::Transaction transaction{shop.connection};
    demandRole(shop, store::Role::StockManager);
    if (const auto fault = faultOf(shop, place)) return fault;
    store::Places places{shop.connection};
    store::Place made = place;
    made.id = *places.named(place.name);
    if (!made.parent) made.parent = holderByName(places, made);
    places.change(made);
    takeIn(places, made);
    transaction.commit();
    return std::nullopt;
}

std::optional<PlaceFault> changePlace(const Shop& shop, const store::Place& place) {
    store::Transaction transaction{shop.connection};
    demandRole(shop, store::Role::StockManager);
    if (const auto fault = faultOf(shop, place)) return fault;
    store::Places places{shop.connection};
    const std::vector<store::Place> before = places.all();
    places.change(place);
    const bool otherLevel = std::any_of(before.begin(), before.end(), [&](const store::Place& each) {
        return each.id == place.id && each.level != place.level;
    });
    if (otherLevel) takeIn(places, place);
    transaction.commit();
    return std::nullopt;
}

std::optional<PlaceFault> removePlace(const Shop& shop, store::PlaceId id) {
    store::Transaction transaction{shop.connection};
    demandRole(shop, store::Role::StockManager);
    store::Places places{shop.connection};
    for (const store::Place& place : places.all()) {
        if (place.id == id && place.pieces > 0) return PlaceFault::LiesThere;
        if (place.parent == id) return PlaceFault::HoldsPlaces;
    }
    try {
        places.remove(id);
    } catch (const store::StoreError& error) {
        if (error.kind() != store::StoreError::Kind::Constraint) throw;
        return PlaceFault::HasLain; // rolled back
    }
    transaction.commit();
    return std::nullopt;
}

} // namespace riband::shop
