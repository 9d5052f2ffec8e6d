#include "core/shop/kept.h"

#include "core/shop/demand.h"
#include "core/shop/receive.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <sstream>

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

std::set<std::string> wordsOf(const std::string& construction) {
    std::istringstream said{construction};
    return {std::istream_iterator<std::string>{said}, {}};
}

/// What a belt is made of, by its designation and by its entry.
std::set<std::string> wordsOf(const store::StockedBelt& kept) {
    std::set<std::string> words = wordsOf(kept.belt.construction);
    words.merge(wordsOf(kept.body));
    words.merge(wordsOf(kept.cord));
    words.insert("cord");
    return words;
}

/// "aramid" names the only belt of that size that is kept with an aramid cord, "steel cord" one whose entry
/// says so.
std::optional<store::StockedBelt> known(const Shop& shop, const belt::Belt& belt) {
    store::Catalogue catalogue{shop.connection};
    if (auto kept = catalogue.find(belt)) return kept;
    if (belt.construction.empty()) return std::nullopt;
    const std::set<std::string> said = wordsOf(belt.construction);
    std::optional<store::StockedBelt> meant;
    for (store::StockedBelt& kept : catalogue.ofProfile(belt.profile)) {
        if (kept.belt.length != belt.length || !std::ranges::includes(wordsOf(kept), said)) continue;
        if (meant) return std::nullopt; // it may be either
        meant = std::move(kept);
    }
    return meant;
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
    std::optional<store::StockedBelt> kept = known(shop, belt);
    return kept ? std::move(*kept) : usualEntry(*shop.tables, belt);
}

store::StockedBelt keptBelt(const Shop& shop, const belt::Belt& belt) {
    if (std::optional<store::StockedBelt> kept = known(shop, belt)) return *kept;
    store::Catalogue catalogue{shop.connection};
    return catalogue.at(catalogue.add(usualEntry(*shop.tables, belt)));
}

std::vector<cutting::SetUp::Remark> notMadeFor(const cutting::Cutter& cutter,
                                               const store::StockedBelt& belt) {
    using Remark = cutting::SetUp::Remark;
    std::vector<Remark> remarks;
    if (belt.cord == "steel" && !cutter.cutsSteelCord) remarks.push_back(Remark::SteelCord);
    if (belt.cord == "aramid" && !cutter.cutsAramidCord) remarks.push_back(Remark::AramidCord);
    if (belt.body == "polyurethane" && !cutter.cutsPolyurethane) remarks.push_back(Remark::Polyurethane);
    return remarks;
}

std::vector<cutting::SetUp::Remark> notMadeFor(const std::vector<store::ShopCutter>& cutters,
                                               const store::StockedBelt& belt) {
    std::vector<cutting::SetUp::Remark> remarks = notMadeFor(cutters.front().cutter, belt);
    for (const store::ShopCutter& other : cutters)
        std::erase_if(remarks, [lacks = notMadeFor(other.cutter, belt)](const auto remark) {
            return std::ranges::find(lacks, remark) == lacks.end();
        });
    return remarks;
}

store::StockedBelt& KeptBelts::of(const belt::Belt& belt) {
    Key key{belt.profile, belt.length.inNanometres(), belt.construction};
    const auto known = known_.find(key);
    if (known != known_.end()) return known->second;
    return known_.emplace(std::move(key), keptBelt(shop_, belt)).first->second;
}

store::StockedBelt keep(const Shop& shop, const belt::Belt& belt) {
    if (std::optional<store::StockedBelt> kept = known(shop, belt)) return *kept;
    store::Transaction transaction{shop.connection};
    const store::StockedBelt kept = keptBelt(shop, belt);
    transaction.commit();
    return kept;
}

} // namespace riband::shop
