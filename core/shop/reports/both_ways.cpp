#include "core/shop/reports/both_ways.h"

#include "core/shop/reports/belt_replay.h"
#include "core/shop/reports/names.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <mutex>
#include <numeric>

namespace riband::shop {

namespace {

double meanOf(const BeltReplay::Term& term) {
    return std::accumulate(term.extra.begin(), term.extra.end(), 0.0) /
           static_cast<double>(term.extra.size());
}

/// Sums the overrides of one group, in mm and in minor units.
class Sum {
public:
    void add(const BeltReplay::Term& term, double millimetres, double money) {
        const auto n = static_cast<double>(term.extra.size());
        const double mean = meanOf(term);
        double dice = 0;
        for (const double extra : term.extra)
            dice += (extra - mean) * (extra - mean) / std::max(1.0, n - 1) / n;
        ++row_.departures;
        width_.add(mean * millimetres, dice * millimetres * millimetres);
        money_.add(mean * money, dice * money * money);
    }
    BothWaysRow finish(const std::string& name) const {
        BothWaysRow row = row_;
        row.name = name;
        const auto n = static_cast<double>(row.departures);
        row.width = width_.sum;
        row.widthDoubt = width_.doubt(n);
        row.money = money_.sum;
        row.moneyDoubt = money_.doubt(n);
        return row;
    }

private:
    struct Figure {
        double sum = 0, squares = 0, dice = 0;
        void add(double mean, double variance) {
            sum += mean;
            squares += mean * mean;
            dice += variance;
        }
        /// How much like decisions differ, and the dice. One decision tells nothing of the first: it may be
        /// all chance.
        double doubt(double n) const {
            if (n < 1) return 0;
            if (n < 2) return std::max(std::abs(sum), 1.96 * std::sqrt(dice));
            const double variance = std::max(0.0, (squares - sum * sum / n) / (n - 1));
            return 1.96 * std::sqrt(n * variance + dice);
        }
    };
    BothWaysRow row_;
    Figure width_, money_;
};

std::vector<BothWaysRow> rowsOf(const std::map<std::string, Sum>& sums) {
    std::vector<BothWaysRow> rows;
    for (const auto& [name, sum] : sums)
        rows.push_back(sum.finish(name));
    std::stable_sort(rows.begin(), rows.end(), [](const BothWaysRow& a, const BothWaysRow& b) {
        return a.money != b.money ? a.money > b.money : a.width > b.width;
    });
    return rows;
}

/// Minor units for one unit of width.
double priceOf(const store::StockedBelt& belt) {
    if (belt.newSleeve.isNone()) return 0;
    return static_cast<double>(belt.sleeveCost.inMinor()) / static_cast<double>(belt.newSleeve.count());
}

BothWays summed(const std::vector<BeltDeeds>& belts, const std::vector<BeltReplay::Result>& results,
                const std::function<std::string(store::PersonId)>& initials) {
    BothWays both;
    Sum all;
    std::map<std::string, Sum> people, reasons, byBelt;
    for (std::size_t i = 0; i < belts.size(); ++i) {
        const double millimetres = belts[i].millimetres, money = priceOf(belts[i].belt);
        for (const auto& term : results[i].terms) {
            const store::Advice& advice = term.deed->advice;
            for (Sum* sum : {&all, &people[initials(advice.person)], &reasons[reasonOf(advice)],
                             &byBelt[belts[i].belt.designation]})
                sum->add(term, millimetres, money);
            both.decisions.push_back({advice.id, belts[i].belt.designation, term.asDone * millimetres,
                                      term.asSuggested * millimetres, meanOf(term) * millimetres,
                                      meanOf(term) * money});
        }
        both.left += results[i].left;
        both.asDone += results[i].asDone * millimetres;
        both.asSuggested += results[i].asSuggested * millimetres;
    }
    both.all = all.finish("");
    both.people = rowsOf(people);
    both.reasons = rowsOf(reasons);
    both.belts = rowsOf(byBelt);
    return both;
}

} // namespace

bool BothWaysRow::told() const { return std::abs(width) > widthDoubt; }

BothWays bothWays(const std::vector<BeltDeeds>& belts,
                  const std::function<std::string(store::PersonId)>& initials, const foresight::Work& work) {
    std::mutex guard;
    const auto stopped = [&guard, &work] {
        const std::lock_guard lock{guard};
        return work.stopped && work.stopped();
    };
    const std::function<void()> breathe = [&stopped] {
        if (stopped()) throw foresight::Stopped{};
    };
    const foresight::Work guarded{[&guard, &work](double done) {
                                      const std::lock_guard lock{guard};
                                      if (work.told) work.told(done);
                                  },
                                  stopped};
    std::vector<BeltReplay::Result> results(belts.size());
    foresight::onAllCores(
        belts.size(),
        [&](std::size_t i) {
            if (belts[i].past.setting.fault().empty())
                results[i] = BeltReplay{belts[i], breathe}.play();
            else
                results[i].left = std::count_if(belts[i].deeds.begin(), belts[i].deeds.end(),
                                                [](const Deed& deed) { return departs(deed.advice); });
        },
        guarded);
    return summed(belts, results, initials);
}

BothWays bothWays(const Shop& shop, const Period& period, const foresight::Work& work) {
    const ReportNames names{shop};
    return bothWays(
        deedsOf(shop, period), [&names](store::PersonId person) { return names.person(person); }, work);
}

} // namespace riband::shop
