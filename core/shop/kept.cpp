#include "core/shop/kept.h"

#include "core/shop/demand.h"
#include "core/shop/receive.h"

namespace riband::shop {

namespace {

/// Cords as they are usual in a body (common practice, no source); the construction's own word goes first.
std::string cordOf(const belt::Profile& profile, const std::string& construction) {
    for (const char* cord : {"steel", "aramid", "glass"})
        if (construction.find(cord) != std::string::npos) return cord;
    if (profile.ribbed()) return "";
    if (profile.body == "polyurethane") return "steel";
    return profile.body == "rubber" ? "glass" : "";
}

std::vector<Extent> listedWidths(const belt::Tables& tables, const belt::Belt& belt, Extent sleeve) {
    std::vector<Extent> listed;
    for (const belt::StandardWidth& width : tables.widths(belt.profile))
        if (width.extent < sleeve) listed.push_back(width.extent);
    return listed;
}

} // namespace

store::StockedBelt usualEntry(const belt::Tables& tables, const belt::Belt& belt) {
    const belt::Profile* profile = tables.profile(belt.profile);
    if (!profile) refuse(Refusal::Why::NoSuchBelt, belt.profile);
    const Extent sleeve = tables.usualSleeve(belt);
    return {.id = store::BeltId{0},
            .belt = belt,
            .designation = belt::designation(belt),
            .unit = profile->unit(),
            .body = profile->body,
            .cord = cordOf(*profile, belt.construction),
            .price = WidthPrice::thousandths(0),
            .newSleeve = sleeve,
            .sleeveCost = Money::minor(0),
            .deliveryDays = 0,
            .listed = listedWidths(tables, belt, sleeve)};
}

store::StockedBelt entryOf(const Shop& shop, const belt::Belt& belt) {
    std::optional<store::StockedBelt> kept = store::Catalogue{shop.connection}.find(belt);
    return kept ? std::move(*kept) : usualEntry(*shop.tables, belt);
}

store::StockedBelt keptBelt(const Shop& shop, const belt::Belt& belt) {
    store::Catalogue catalogue{shop.connection};
    if (std::optional<store::StockedBelt> kept = catalogue.find(belt)) return *kept;
    return catalogue.at(catalogue.add(usualEntry(*shop.tables, belt)));
}

store::StockedBelt& KeptBelts::of(const belt::Belt& belt) {
    Key key{belt.profile, belt.length.inNanometres(), belt.construction};
    const auto known = known_.find(key);
    if (known != known_.end()) return known->second;
    return known_.emplace(std::move(key), keptBelt(shop_, belt)).first->second;
}

store::StockedBelt keep(const Shop& shop, const belt::Belt& belt) {
    if (std::optional<store::StockedBelt> kept = store::Catalogue{shop.connection}.find(belt)) return *kept;
    store::Transaction transaction{shop.connection};
    const store::StockedBelt kept = keptBelt(shop, belt);
    transaction.commit();
    return kept;
}

} // namespace riband::shop
