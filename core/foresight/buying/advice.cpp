#include "core/foresight/buying/advice.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <stdexcept>

namespace riband::foresight {

namespace {

constexpr double daysOfYear = 365;
constexpr int mostInLot = 20;
constexpr double shelfDays = 60;
constexpr int mostPreCut = 3;
constexpr double leastTrimShare = 0.03;
constexpr double leastSaving = 0.02; ///< of a year's cost: less is noise of the drawn orders

/// Belts of each listed width and orders in the record.
std::map<Size, double> beltsAsked(const Setting& setting, const Record& record) {
    std::map<Size, double> asked;
    for (const Order& order : record.orders)
        for (const Line& line : order.lines)
            if (std::binary_search(setting.listed.begin(), setting.listed.end(), line.width))
                asked[line.width] += line.quantity;
    return asked;
}

class Adviser {
public:
    Adviser(const BuyingCase& belt, const BuyingTerms& terms) : belt_{belt}, terms_{terms} {}

    BuyingAdvice advise() {
        const Series series = belt_.record.weekly();
        advice_.pattern = patternOf(series);
        advice_.horizonDays = present().leadDays + terms_.reviewDays;
        const int weeks = (advice_.horizonDays + daysOfPeriod - 1) / daysOfPeriod;
        advice_.forecast = choose(series, std::max(weeks, 1));
        const Futures futures{belt_.record, advice_.forecast};
        advice_.ordersPerYear = futures.ordersPerDay() * daysOfYear;
        advice_.widthPerYear = futures.widthPerDay() * daysOfYear;
        compareWidths(futures);
        reckonNeed(futures);
        decideKeeping();
        decideLot();
        advice_.preCut = preCutOf(belt_.setting, belt_.record, advice_.ordersPerYear);
        return std::move(advice_);
    }

private:
    const SleeveChoice& present() const { return belt_.choices.front(); }
    Dice dice(std::uint64_t use) const { return Dice::of(terms_.seed, use); }

    WidthAdvice widthAdvice(const SleeveChoice& sleeve, const Futures& futures) const {
        Setting setting = belt_.setting;
        setting.sleeve = sleeve.width;
        WidthAdvice advice{sleeve, consumptionOf(setting, futures, dice(1)), 0, {}};
        advice.sleevesPerYear = advice_.widthPerYear * advice.consumption.usedPerSold / sleeve.width;
        advice.year = yearOf(setting, advice);
        return advice;
    }

    YearlyCost yearOf(const Setting& setting, const WidthAdvice& width) const {
        const double sleeve = width.sleeve.cost, perWidth = sleeve / width.sleeve.width;
        const int lot = lotOf(width);
        YearlyCost year;
        year.rubber = width.sleevesPerYear * sleeve;
        year.holding = terms_.interest * (sleeve * lot / 2 + width.consumption.remnantsHeld * perWidth);
        year.ordering = terms_.orderCost * width.sleevesPerYear / lot;
        year.cutting = advice_.ordersPerYear * width.consumption.mountingsPerOrder *
                       setting.rules.mountingCost * perWidth;
        return year;
    }

    /// No more than is used up in half the time that a sleeve may lie.
    int lotOf(const WidthAdvice& width) const {
        const double used = width.sleevesPerYear * belt_.setting.ageLimitDays / daysOfYear / 2;
        const int most = std::clamp(static_cast<int>(std::min<double>(used, mostInLot)), 1, mostInLot);
        return economicLot(width.sleevesPerYear, terms_.orderCost, terms_.interest * width.sleeve.cost, most);
    }

    void compareWidths(const Futures& futures) {
        for (const SleeveChoice& sleeve : belt_.choices)
            advice_.widths.push_back(widthAdvice(sleeve, futures));
        const auto cost = [&](const WidthAdvice& width) {
            if (width.sleeve.cost <= 0) return std::numeric_limits<double>::infinity();
            const bool isPresent = width.sleeve.width == present().width;
            return width.year.total() * (isPresent ? 1 - leastSaving : 1);
        };
        std::stable_sort(advice_.widths.begin(), advice_.widths.end(),
                         [&](const WidthAdvice& a, const WidthAdvice& b) { return cost(a) < cost(b); });
    }

    void reckonNeed(const Futures& futures) {
        advice_.need =
            needOf(belt_.setting, belt_.remnants, futures, advice_.horizonDays, terms_.runs, dice(2));
        advice_.risk = 1 - advice_.need.enoughWith(belt_.sleeves);
        const auto& usual = advice_.widthOf(present().width).consumption.rack;
        advice_.reorderPoint =
            needOf(belt_.setting, usual, futures, advice_.horizonDays, terms_.runs, dice(2))
                .sleevesFor(terms_.service);
    }

    void decideKeeping() {
        const WidthAdvice& now = advice_.widthOf(present().width);
        const double year = now.year.total();
        if (belt_.price > 0 && present().cost > 0)
            advice_.earnsPerYear = advice_.widthPerYear * belt_.price - year;
        if (belt_.record.days < leastDaysToJudge) return;
        const double life = belt_.setting.ageLimitDays / daysOfYear;
        if (belt_.record.orders.empty())
            advice_.keeping = Keeping::NotAskedFor;
        else if (advice_.widthPerYear * life < present().width / 2.0)
            advice_.keeping = Keeping::TooSlow;
        else if (advice_.earnsPerYear < 0)
            advice_.keeping = Keeping::CostsMoreThanItEarns;
    }

    void decideLot() {
        advice_.lot = lotOf(advice_.widthOf(present().width));
        if (advice_.keeping != Keeping::Keep) return;
        const int lacking = advice_.need.sleevesFor(terms_.service) - belt_.sleeves;
        if (lacking > 0) advice_.buy = std::max(lacking, advice_.lot);
    }

    const BuyingCase& belt_;
    const BuyingTerms& terms_;
    BuyingAdvice advice_;
};

} // namespace

const WidthAdvice& BuyingAdvice::widthOf(Size sleeve) const {
    for (const WidthAdvice& width : widths)
        if (width.sleeve.width == sleeve) return width;
    throw std::out_of_range("no such sleeve was weighed");
}

std::vector<ShelfAdvice> preCutOf(const Setting& setting, const Record& record, double ordersPerYear) {
    std::vector<ShelfAdvice> preCut;
    const double mean = record.meanWidth(), trim = setting.rules.trim;
    if (mean <= 0 || trim / (trim + mean) <= leastTrimShare) return preCut;
    const double ofRecord =
        ordersPerYear * shelfDays / daysOfYear / static_cast<double>(record.orders.size());
    for (const auto& [width, belts] : beltsAsked(setting, record))
        if (const double expected = belts * ofRecord; expected >= 1)
            preCut.push_back({width, std::min(mostPreCut, static_cast<int>(std::lround(expected)))});
    return preCut;
}

BuyingAdvice adviseBuying(const BuyingCase& belt, const BuyingTerms& terms) {
    if (belt.choices.empty()) throw std::invalid_argument("a belt is bought as some sleeve");
    BuyingCase own = belt;
    own.setting.sleeve = belt.choices.front().width;
    own.setting.tidy();
    if (const auto fault = own.setting.fault(); !fault.empty()) throw std::invalid_argument(fault);
    return Adviser{own, terms}.advise();
}

} // namespace riband::foresight
