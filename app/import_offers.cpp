#include "app/import.h"

#include "app/plan_files.h"
#include "core/shop/kept.h"
#include "core/store/offers.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::app {

namespace {

using ui::Words;
constexpr std::int64_t mostDays = 1000;

/// A belt with all that the table offers of it.
struct Offered {
    belt::Belt belt;
    std::vector<store::SleeveOffer> offers;
};

/// The width stands in the column of the belt's unit.
std::optional<Extent> widthOf(TableFile& file, const CsvTable::Row& row, Unit unit) {
    const bool ribbed = unit == Unit::Rib;
    const char* other = ribbed ? "sleeve_mm" : "sleeve_ribs";
    if (!file.field(row, other).empty())
        file.fault(row, other, Words::tr("This belt is not measured so; leave it empty."));
    const char* own = ribbed ? "sleeve_ribs" : "sleeve_mm";
    const auto extent =
        file.quantity<Extent>(row, own, [unit](const std::string& text) { return readExtent(text, unit); });
    if (extent && !extent->isNone()) return extent;
    if (extent) file.fault(row, own, Words::tr("A sleeve is wider than nothing."));
    return std::nullopt;
}

std::optional<store::SleeveOffer> offerOf(TableFile& file, const CsvTable::Row& row, Unit unit,
                                          const Currency& currency) {
    const auto width = widthOf(file, row, unit);
    const auto cost =
        file.quantity<Money>(row, "cost", [&](const std::string& text) { return readMoney(text, currency); });
    if (cost && *cost <= Money::minor(0)) file.fault(row, "cost", Words::tr("A sleeve costs something."));
    const bool hasDays = !file.field(row, "delivery_days").empty();
    const auto days = hasDays ? file.count(row, "delivery_days", mostDays) : 0;
    if (!width || !cost || !days) return std::nullopt;
    return store::SleeveOffer{*width, *cost, static_cast<int>(*days)};
}

Offered& entryOf(std::vector<Offered>& all, const belt::Belt& belt) {
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Offered& entry) { return entry.belt == belt; });
    return found == all.end() ? all.emplace_back(Offered{belt, {}}) : *found;
}

std::vector<Offered> offeredIn(TableFile& file, const belt::Tables& tables, const Currency& currency) {
    std::vector<Offered> all;
    for (const auto& row : file.rows()) {
        const auto belt = beltOf(file, row, tables);
        if (!belt) continue;
        const auto offer = offerOf(file, row, tables.profile(belt->profile)->unit(), currency);
        if (!offer) continue;
        auto& offers = entryOf(all, *belt).offers;
        const bool again = std::any_of(offers.begin(), offers.end(), [&](const store::SleeveOffer& other) {
            return other.extent == offer->extent;
        });
        if (again) file.fault(row, "belt", Words::tr("This sleeve stands in the table already."));
        offers.push_back(*offer);
    }
    file.refuseFaults();
    return all;
}

} // namespace

QJsonObject importOffers(const shop::Shop& shop, const QString& csv) {
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    TableFile file(csv, {"belt", "cost"});
    file.refuseOthers({"belt", "sleeve_mm", "sleeve_ribs", "cost", "delivery_days"});
    const auto offered = offeredIn(file, *shop.tables, currency);
    store::Transaction transaction{shop.connection};
    for (const Offered& entry : offered)
        store::SleeveOffers{shop.connection}.replace(shop::keptBelt(shop, entry.belt).id, entry.offers);
    transaction.commit();
    return {{"rows", static_cast<qint64>(file.rows().size())}};
}

} // namespace riband::app
