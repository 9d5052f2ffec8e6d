#include "core/shop/buying/cases.h"

#include "core/shop/shelf_life.h"
#include "core/store/goods.h"
#include "core/store/offers.h"
#include "core/store/rack_figures.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

namespace riband::shop {

namespace {

using foresight::Size;

constexpr double daysOfYear = 365;

double daysBetween(Moment from, Moment to) {
    return std::chrono::duration<double, std::ratio<86400>>(to - from).count();
}

Size sizeOf(Extent extent) { return static_cast<Size>(extent.count()); }

/// Minor units for a micrometre or a rib, without tax.
double priceOf(const store::StockedBelt& belt, const store::PriceRules& rules) {
    const double ofUnit = belt.unit == Unit::Rib ? 1e3 : 1e6;
    const double price = static_cast<double>(belt.price.inThousandths()) / ofUnit;
    return rules.pricesIncludeTax ? price / (1 + static_cast<double>(rules.tax.count()) / 1000) : price;
}

foresight::CutRules rulesOf(const store::ShopSettings& settings, Unit unit) {
    const cutting::Rules& rules = settings.rulesFor(unit);
    const bool inUnit = settings.mountingCost.unit() == unit;
    return {sizeOf(rules.trim), sizeOf(rules.kerf), sizeOf(rules.end), sizeOf(rules.stub),
            inUnit ? static_cast<double>(settings.mountingCost.count()) : 0.0};
}

/// The widths that are listed, or else those that were asked for, or else any: a rack of nothing.
std::vector<Size> listedOf(const store::StockedBelt& belt, const foresight::Setting& setting,
                           const foresight::Record& record) {
    std::vector<Size> listed;
    for (const Extent extent : belt.listed)
        listed.push_back(sizeOf(extent));
    if (listed.empty())
        for (const auto& order : record.orders)
            for (const auto& line : order.lines)
                listed.push_back(line.width);
    std::erase_if(listed, [&](Size width) { return !canGive(setting, width); });
    if (listed.empty()) listed.push_back(std::max<Size>(setting.sleeve / 10, 1));
    return listed;
}

void addLine(foresight::Order& order, foresight::Line line) {
    for (auto& other : order.lines)
        if (other.width == line.width) {
            other.quantity += line.quantity;
            return;
        }
    order.lines.push_back(line);
}

class Reader {
public:
    Reader(const Shop& shop, std::optional<Moment> since)
        : shop_{shop}, belts_{store::Catalogue{shop.connection}.all()}, lives_{shop} {
        outlook_.settings = store::Settings{shop.connection}.read();
        outlook_.today = dayOf(shop.now());
        now_ = Moment{outlook_.today + std::chrono::days{1}};
        longAgo_ = now_ - longestRecord;
        since_ = std::max(longAgo_, since.value_or(longAgo_));
        const store::BuyingRules& buying = outlook_.settings.buying;
        outlook_.terms.service = static_cast<double>(buying.service.count()) / 1000;
        outlook_.terms.reviewDays = buying.reviewDays;
        outlook_.terms.orderCost = static_cast<double>(buying.orderCost.inMinor());
        outlook_.terms.interest = static_cast<double>(outlook_.settings.advice.interest.count()) / 1000;
    }

    BuyingOutlook read() {
        readRecords();
        readPieces();
        readExpected();
        offers_ = store::SleeveOffers{shop_.connection}.all();
        for (store::StockedBelt& belt : belts_)
            addBelt(std::move(belt));
        return std::move(outlook_);
    }

private:
    void readRecords() {
        std::vector<store::AskedLine> asked = store::Orders{shop_.connection}.askedSince(since_);
        if (since_ > longAgo_) askMoreOfUnlisted(asked);
        Moment first = now_;
        for (const auto& line : asked)
            first = std::min(first, line.at);
        days_ = daysBetween(first, now_);
        outlook_.days = static_cast<int>(days_);
        std::optional<store::OrderId> order;
        std::optional<store::BeltId> belt;
        std::vector<foresight::Order>* orders = nullptr;
        for (const auto& line : asked) {
            const bool sameBelt = belt == line.belt;
            if (!sameBelt) orders = &records_[line.belt];
            if (!sameBelt || order != line.order) orders->push_back({daysBetween(first, line.at), {}});
            addLine(orders->back(), {sizeOf(line.extent), static_cast<int>(line.quantity)});
            order = line.order;
            belt = line.belt;
        }
    }

    /// Which widths a sleeve is cut into is known of a belt that lists none by its orders.
    void askMoreOfUnlisted(std::vector<store::AskedLine>& asked) const {
        std::set<store::BeltId> unlisted;
        for (const store::StockedBelt& belt : belts_)
            if (belt.listed.empty()) unlisted.insert(belt.id);
        std::erase_if(asked, [&](const auto& line) { return unlisted.contains(line.belt); });
        constexpr std::size_t all = 1'000'000;
        for (const store::BeltId belt : unlisted)
            for (const store::PastLine& line : store::Orders{shop_.connection}.pastOf(belt, all))
                if (line.made >= longAgo_)
                    asked.push_back({belt, line.order, line.made, line.extent, line.belts, 0});
    }

    void readPieces() {
        for (const store::PieceFigures& piece : store::figuresOfRack(shop_.connection))
            if (piece.kind != cutting::PieceKind::Ready) pieces_[piece.belt].push_back(piece);
    }

    /// What is ordered already is not ordered again.
    void readExpected() {
        for (const store::ExpectedDelivery& delivery : store::Goods{shop_.connection}.expected())
            for (const store::ExpectedLine& line : delivery.lines)
                expected_[line.belt] +=
                    static_cast<int>(std::max<std::int64_t>(0, line.sleeves - line.arrived));
    }

    /// A sleeve of which something is promised will be open anyway.
    void stand(const store::StockedBelt& belt, foresight::BuyingCase& buying) {
        const auto ageLimit = static_cast<int>(buying.setting.ageLimitDays);
        for (const store::PieceFigures& piece : pieces_[belt.id]) {
            const auto age = (outlook_.today - piece.born).count();
            if (age > ageLimit) continue;
            if (piece.kind == cutting::PieceKind::Sleeve && piece.reserved.isNone())
                ++buying.sleeves;
            else if (const Extent free = piece.extent - piece.reserved; free.count() > 0)
                buying.remnants.push_back({sizeOf(free), -static_cast<double>(age)});
        }
    }

    int leadOf(int days) const { return days > 0 ? days : outlook_.settings.buying.deliveryDays; }

    /// Of all cutters. No shaft known, no limit known.
    double widestMillimetres() const {
        double widest = 0;
        for (const store::ShopCutter& each : outlook_.settings.cutters)
            for (const cutting::Shaft& shaft : each.cutter.shafts)
                widest = std::max(widest, shaft.usable - each.cutter.gap);
        return widest > 0 ? widest : std::numeric_limits<double>::infinity();
    }

    /// Millimetres of one unit of width.
    double millimetresOf(const store::StockedBelt& belt) const {
        const belt::Profile* profile = shop_.tables->profile(belt.belt.profile);
        if (belt.unit == Unit::Micrometre || !profile) return 1e-3;
        return static_cast<double>(profile->pitch.inNanometres()) / 1e6;
    }

    bool canBeMounted(const store::StockedBelt& belt, Extent sleeve) const {
        return static_cast<double>(sleeve.count()) * millimetresOf(belt) <= widestMillimetres();
    }

    std::vector<foresight::SleeveChoice> choicesOf(const store::StockedBelt& belt) const {
        std::vector<foresight::SleeveChoice> choices{{sizeOf(belt.newSleeve),
                                                      static_cast<double>(belt.sleeveCost.inMinor()),
                                                      leadOf(belt.deliveryDays)}};
        const auto offered = offers_.find(belt.id);
        if (offered == offers_.end()) return choices;
        for (const store::SleeveOffer& offer : offered->second) {
            const foresight::SleeveChoice choice{
                sizeOf(offer.extent), static_cast<double>(offer.cost.inMinor()), leadOf(offer.deliveryDays)};
            if (offer.extent == belt.newSleeve)
                choices.front() = choice; // today's price goes before the last one paid
            else if (canBeMounted(belt, offer.extent))
                choices.push_back(choice);
        }
        return choices;
    }

    void addBelt(store::StockedBelt belt) {
        foresight::BuyingCase buying;
        buying.record.days = days_;
        if (const auto known = records_.find(belt.id); known != records_.end())
            buying.record.orders = std::move(known->second);
        foresight::Setting& setting = buying.setting;
        setting.sleeve = sizeOf(belt.newSleeve);
        setting.rules = rulesOf(outlook_.settings, belt.unit);
        setting.listed = listedOf(belt, setting, buying.record);
        setting.daysPerYear = daysOfYear;
        setting.rackLimit = outlook_.settings.mostRemnants;
        setting.ageLimitDays = lives_.of(belt).years * daysOfYear;
        setting.interest = outlook_.terms.interest;
        setting.ribs = belt.unit == Unit::Rib;
        if (!setting.fault().empty()) return; // a sleeve that can't be cut is not bought
        buying.price = priceOf(belt, outlook_.settings.prices);
        buying.choices = choicesOf(belt);
        stand(belt, buying);
        const int expected = expected_[belt.id];
        buying.sleeves += expected;
        const double millimetres = millimetresOf(belt);
        outlook_.belts.push_back({std::move(belt), std::move(buying), expected, millimetres});
    }

    const Shop& shop_;
    std::vector<store::StockedBelt> belts_;
    ShelfLife lives_;
    Moment now_; ///< the end of today, so that a list is the same all day
    Moment longAgo_, since_;
    double days_ = 0;
    BuyingOutlook outlook_;
    std::map<store::BeltId, std::vector<foresight::Order>> records_;
    std::map<store::BeltId, std::vector<store::PieceFigures>> pieces_;
    std::map<store::BeltId, std::vector<store::SleeveOffer>> offers_;
    std::map<store::BeltId, int> expected_;
};

} // namespace

BuyingOutlook lookAtBuying(const Shop& shop, std::optional<Moment> since) {
    return Reader{shop, since}.read();
}

} // namespace riband::shop
