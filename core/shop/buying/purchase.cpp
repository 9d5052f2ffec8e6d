#include "core/shop/buying/purchase.h"

#include "core/foresight/buying/basket.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace riband::shop {

namespace {

using foresight::WidthAdvice;

/// Sleeves of the better width that give no less than those of the present one.
int sleevesOf(const WidthAdvice& best, const BuyingBelt& belt, int present) {
    const double of = static_cast<double>(belt.buying.choices.front().width) / best.sleeve.width;
    return of <= 1 ? present : static_cast<int>(std::ceil(present * of - 1e-9));
}

PurchaseLine lineOf(const BuyingOutlook& outlook, std::size_t index) {
    const BuyingBelt& belt = outlook.belts[index];
    foresight::BuyingAdvice advice = foresight::adviseBuying(belt.buying, outlook.terms);
    const WidthAdvice best = advice.widths.front();
    const int sleeves = sleevesOf(best, belt, advice.buy);
    return {.belt = index,
            .advice = std::move(advice),
            .width = Extent::of(belt.belt.unit, best.sleeve.width),
            .each = Money::minor(static_cast<std::int64_t>(best.sleeve.cost)),
            .leadDays = best.sleeve.leadDays,
            .wanted = sleeves,
            .sleeves = sleeves};
}

foresight::Wanted wantedOf(const BuyingBelt& belt, const PurchaseLine& line) {
    foresight::Wanted wanted{line.each.inMinor(), {}};
    const double margin = std::max(marginOf(belt, line.advice), 0.0);
    const double lost = line.advice.need.lostWith(belt.buying.sleeves);
    for (int sleeves = 0; sleeves <= line.wanted; ++sleeves)
        wanted.worth.push_back(margin * (lost - line.advice.need.lostWith(belt.buying.sleeves + sleeves)));
    return wanted;
}

/// Money that would keep no sale more until the delivery after next makes up the lots that cost least a year,
/// the belt that most probably runs out first.
void fillUp(std::vector<PurchaseLine*> lines, Money left) {
    std::stable_sort(lines.begin(), lines.end(), [](const PurchaseLine* a, const PurchaseLine* b) {
        return a->advice.risk > b->advice.risk;
    });
    for (PurchaseLine* line : lines) {
        const auto affordable = static_cast<int>(
            std::min<std::int64_t>(left.inMinor() / line->each.inMinor(), line->wanted - line->sleeves));
        line->sleeves += affordable;
        left = left - line->each * affordable;
    }
}

/// The lines that can be weighed against money get what the best basket has of them, the others nothing.
void fitToBudget(const BuyingOutlook& outlook, PurchaseList& list) {
    std::vector<foresight::Wanted> wanted;
    std::vector<PurchaseLine*> weighed;
    for (PurchaseLine& line : list.lines) {
        if (line.wanted == 0) continue;
        line.sleeves = 0;
        if (!line.costKnown()) continue;
        wanted.push_back(wantedOf(outlook.belts[line.belt], line));
        weighed.push_back(&line);
    }
    const foresight::Basket basket = foresight::bestBasket(wanted, list.budget->inMinor());
    for (std::size_t i = 0; i < weighed.size(); ++i)
        weighed[i]->sleeves = basket.sleeves[i];
    if (*list.budget > Money::minor(basket.cost)) fillUp(weighed, *list.budget - Money::minor(basket.cost));
    list.proven = basket.proven;
    list.keeps = basket.worth;
    list.keepsAtMost = basket.bound;
}

} // namespace

std::vector<Expectation> expectationsOf(const PurchaseList& list, const BuyingOutlook& outlook) {
    std::map<int, Expectation> byLead;
    for (const PurchaseLine& line : list.lines) {
        if (line.sleeves == 0) continue;
        Expectation& delivery = byLead[line.leadDays];
        delivery.due = outlook.today + std::chrono::days{line.leadDays};
        delivery.reference = printDate(outlook.today);
        delivery.lines.push_back({.belt = outlook.belts[line.belt].belt.belt,
                                  .sleeves = line.sleeves,
                                  .extent = line.width,
                                  .costEach = line.each});
    }
    std::vector<Expectation> all;
    for (auto& [days, delivery] : byLead)
        all.push_back(std::move(delivery));
    return all;
}

double marginOf(const BuyingBelt& belt, const foresight::BuyingAdvice& advice) {
    const WidthAdvice& width = advice.widths.front();
    const double rubber = width.sleeve.cost / width.sleeve.width * width.consumption.usedPerSold;
    return belt.buying.price > 0 ? belt.buying.price - rubber : rubber;
}

PurchaseList purchaseList(const BuyingOutlook& outlook, std::optional<Money> budget,
                          const foresight::Work& work) {
    std::vector<std::optional<PurchaseLine>> lines(outlook.belts.size());
    foresight::onAllCores(
        lines.size(), [&](std::size_t belt) { lines[belt] = lineOf(outlook, belt); }, work);
    PurchaseList list;
    list.budget = budget;
    for (auto& line : lines) {
        list.wanted = list.wanted + line->each * line->wanted;
        list.lines.push_back(std::move(*line));
    }
    if (budget) fitToBudget(outlook, list);
    for (const PurchaseLine& line : list.lines)
        list.cost = list.cost + line.cost();
    return list;
}

} // namespace riband::shop
