#include "core/shop/reports/office.h"

#include <algorithm>
#include <map>

namespace riband::shop {

namespace {

constexpr std::size_t mostBelow = 500;

/// Rounded up: a cost that is told too low would be no warning. Before the yield is known, as if nothing was
/// lost.
std::optional<WidthPrice> fullCostOf(const store::StockedBelt& belt, const Balance<std::int64_t>& balance) {
    const std::int64_t wide = belt.newSleeve.count();
    if (wide == 0 || belt.sleeveCost == Money::minor(0)) return std::nullopt;
    const std::int64_t unit = belt.unit == Unit::Rib ? 1 : 1000; // µm in the millimetre that a price is for
    const double raw = static_cast<double>(belt.sleeveCost.inMinor()) * 1000.0 * static_cast<double>(unit) /
                       static_cast<double>(wide);
    const double yield = std::max(0.05, balance.yield().value_or(1.0));
    return WidthPrice::thousandths(static_cast<std::int64_t>(raw / std::min(1.0, yield) + 0.999));
}

void sort(std::vector<MarginRow>& rows) {
    std::stable_sort(rows.begin(), rows.end(),
                     [](const MarginRow& a, const MarginRow& b) { return a.margin() < b.margin(); });
}

} // namespace

std::optional<Permille> MarginRow::share() const {
    const Money known = sale.revenue - sale.uncosted;
    if (known <= Money::minor(0)) return std::nullopt;
    return Permille{roundedQuotient(margin().inMinor() * 1000, known.inMinor())};
}

std::optional<WidthPrice> MarginRow::proposed(Permille share, const Currency& currency) const {
    if (!fullCost || share.count() >= 1000) return std::nullopt;
    std::int64_t step = 1000; // thousandths of a minor unit: one minor unit
    for (int decimals = currency.decimals(); decimals > 2; --decimals)
        step *= 10;
    const std::int64_t exact =
        (fullCost->inThousandths() * 1000 + 999 - share.count()) / (1000 - share.count());
    return WidthPrice::thousandths((exact + step - 1) / step * step);
}

MarginReport marginReport(const Shop& shop, const Period& period) {
    const store::Revenue revenue{shop.connection, period.from, period.until};
    MarginReport report;
    std::map<store::BeltId, store::StockedBelt> belts;
    for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all())
        belts.emplace(belt.id, belt);
    const auto used = movedByBelt(shop, period);
    for (const store::BeltSale& sold : revenue.byBelt()) {
        const store::StockedBelt& belt = belts.at(sold.belt);
        const auto at = used.find(sold.belt);
        report.belts.push_back({belt.designation, belt.unit, sold.sale,
                                fullCostOf(belt, at == used.end() ? Balance<std::int64_t>{} : at->second),
                                belt.price});
    }
    for (const store::CustomerSale& sold : revenue.byCustomer())
        report.customers.push_back({sold.customer, std::nullopt, sold.sale});
    sort(report.belts);
    sort(report.customers);
    report.below = revenue.belowCost(mostBelow);
    return report;
}

} // namespace riband::shop
