#include "core/shop/buying/what_if.h"

#include "core/foresight/replay/years.h"

#include <algorithm>
#include <cmath>

namespace riband::shop {

namespace {

using foresight::Order;
using foresight::Played;
using foresight::ReplayRules;
using foresight::Size;

ReplayRules presentRules(const BuyingBelt& belt, const BuyingOutlook& outlook) {
    ReplayRules rules;
    rules.setting = belt.buying.setting;
    rules.sleeve = belt.buying.choices.front();
    rules.terms = outlook.terms;
    return rules;
}

/// True if it says something for belts of this unit.
bool take(const std::optional<Extent>& said, Unit unit, Size& into) {
    if (!said || said->unit() != unit) return false;
    into = static_cast<Size>(said->count());
    return true;
}

template <class T>
bool take(const std::optional<T>& said, T& into) {
    if (said) into = *said;
    return said.has_value();
}

/// All alternatives of one belt in every year: the first alternative is how it is now.
class BeltReplay {
public:
    BeltReplay(const BuyingBelt& belt, const BuyingOutlook& outlook, const std::vector<WhatIf>& whatIfs,
               const ReplayTerms& terms)
        : belt_{belt}, terms_{terms}, year_{foresight::lastYear(belt.buying.record)}, unit_{unitOf(belt)} {
        rules_.push_back(presentRules(belt, outlook));
        for (const WhatIf& what : whatIfs)
            rules_.push_back(rulesUnder(belt, outlook, what));
    }

    /// [alternative * years + year]
    std::vector<Played> play() const {
        std::vector<Played> played(rules_.size() * static_cast<std::size_t>(terms_.years));
        std::vector<foresight::StockRule> stock;
        for (const auto& rules : rules_)
            stock.push_back(rules ? foresight::stockRuleOf(*rules, year_) : foresight::StockRule{});
        for (int year = 0; year < terms_.years; ++year) {
            const std::vector<Order> orders = ordersOf(year);
            for (std::size_t i = 0; i < rules_.size(); ++i) {
                Played& into = played[at(i, year)];
                if (!rules_[i]) {
                    into = played[at(0, year)];
                    continue;
                }
                into = foresight::playYear(*rules_[i], stock[i], orders, year_.days);
                into.expense = foresight::expenseOf(into, *rules_[i], unit_);
            }
        }
        return played;
    }

private:
    /// By the present sleeve in every alternative: labour and a lost sale cost the same in each. Where no
    /// price is known a sale earns as much again as its rubber (docs/buying.md).
    static foresight::WidthMoney unitOf(const BuyingBelt& belt) {
        const foresight::SleeveChoice& sleeve = belt.buying.choices.front();
        const double rubber = sleeve.cost / sleeve.width;
        return {rubber, belt.buying.price > 0 ? std::max(belt.buying.price - rubber, 0.0) : rubber};
    }
    std::size_t at(std::size_t alternative, int year) const {
        return alternative * static_cast<std::size_t>(terms_.years) + static_cast<std::size_t>(year);
    }
    std::vector<Order> ordersOf(int year) const {
        const auto dice =
            foresight::Dice::of(terms_.seed + static_cast<std::uint64_t>(belt_.belt.id.value()) * 1000003,
                                static_cast<std::uint64_t>(year));
        return terms_.from == Years::History ? foresight::resampled(year_, dice)
                                             : foresight::expectedYear(belt_.buying.setting, year_, dice);
    }

    const BuyingBelt& belt_;
    const ReplayTerms& terms_;
    foresight::Record year_;
    foresight::WidthMoney unit_;
    std::vector<std::optional<ReplayRules>> rules_;
};

/// Of Student's t, 0.975: from a table, then by Cornish and Fisher's expansion (four digits from eleven
/// degrees on).
double quantileOf(double degrees) {
    constexpr double few[] = {12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228};
    if (degrees <= 10) return few[static_cast<std::size_t>(degrees) - 1];
    constexpr double z = 1.959964, z3 = z * z * z, z5 = z3 * z * z;
    return z + (z3 + z) / (4 * degrees) + (5 * z5 + 16 * z3 + 3 * z) / (96 * degrees * degrees);
}

Estimate figureOf(const std::vector<double>& values) {
    const auto n = static_cast<double>(values.size());
    Estimate figure;
    for (const double value : values)
        figure.mean += value / n;
    double squares = 0;
    for (const double value : values)
        squares += (value - figure.mean) * (value - figure.mean);
    figure.doubt = n > 1 ? quantileOf(n - 1) * std::sqrt(squares / (n - 1) / n) : std::abs(figure.mean);
    return figure;
}

using Value = double (*)(const Played&);
struct Column {
    Estimate ReplayFigures::*figure;
    Value value;
};
constexpr double daysOfYear = 365;
constexpr Column columns[] = {
    {&ReplayFigures::yield, [](const Played& p) { return p.yield(); }},
    {&ReplayFigures::sleeves, [](const Played& p) { return p.sleeves; }},
    {&ReplayFigures::mountings, [](const Played& p) { return p.mountings; }},
    {&ReplayFigures::lostOrders, [](const Played& p) { return p.lostOrders; }},
    {&ReplayFigures::lost, [](const Played& p) { return p.lost; }},
    {&ReplayFigures::rubber, [](const Played& p) { return p.rubber; }},
    {&ReplayFigures::stock, [](const Played& p) { return p.stockDays / daysOfYear; }},
    {&ReplayFigures::expense, [](const Played& p) { return p.expense; }},
};

ReplayFigures figuresOf(const std::vector<Played>& years) {
    ReplayFigures figures;
    for (const Column& column : columns) {
        std::vector<double> values;
        for (const Played& year : years)
            values.push_back(column.value(year));
        figures.*column.figure = figureOf(values);
    }
    return figures;
}

ReplayFigures differenceOf(const std::vector<Played>& years, const std::vector<Played>& now) {
    ReplayFigures figures;
    for (const Column& column : columns) {
        std::vector<double> values;
        for (std::size_t year = 0; year < years.size(); ++year)
            values.push_back(column.value(years[year]) - column.value(now[year]));
        figures.*column.figure = figureOf(values);
    }
    return figures;
}

} // namespace

bool Estimate::told() const { return std::abs(mean) > doubt + 1e-9; }

double Estimate::confidence() const {
    if (doubt <= 0) return mean == 0 ? 0.5 : 1;
    return 0.5 * std::erfc(-1.959964 * std::abs(mean) / doubt / std::sqrt(2.0));
}

std::optional<ReplayRules> rulesUnder(const BuyingBelt& belt, const BuyingOutlook& outlook,
                                      const WhatIf& what) {
    const Unit unit = belt.belt.unit;
    ReplayRules rules = presentRules(belt, outlook);
    const Size before = rules.setting.sleeve;
    bool any = take(what.trim, unit, rules.setting.rules.trim);
    any |= take(what.kerf, unit, rules.setting.rules.kerf);
    any |= take(what.leastRemnant, unit, rules.leastRemnant);
    any |= take(what.service, rules.terms.service);
    any |= take(what.reviewDays, rules.terms.reviewDays);
    any |= take(what.leadDays, rules.sleeve.leadDays);
    any |= take(what.remnants, rules.setting.rackLimit);
    if (take(what.sleeve, unit, rules.setting.sleeve)) {
        any = true;
        rules.sleeve.width = rules.setting.sleeve;
        if (!what.price) rules.sleeve.cost *= static_cast<double>(rules.setting.sleeve) / before;
    }
    if (what.price && (!what.sleeve || what.sleeve->unit() == unit)) {
        any = true;
        rules.sleeve.cost *= *what.price;
    }
    rules.together = what.together;
    if (!any && !what.together) return std::nullopt;
    std::erase_if(rules.setting.listed, [&](Size width) { return !canGive(rules.setting, width); });
    if (!rules.setting.fault().empty()) return std::nullopt;
    return rules;
}

ReplayResult replay(const BuyingOutlook& outlook, const std::vector<WhatIf>& whatIfs,
                    const ReplayTerms& terms, const foresight::Work& work) {
    std::vector<const BuyingBelt*> belts;
    for (const BuyingBelt& belt : outlook.belts)
        if ((terms.profile.empty() || belt.belt.belt.profile == terms.profile) &&
            !foresight::lastYear(belt.buying.record).orders.empty())
            belts.push_back(&belt);
    std::vector<std::vector<Played>> played(belts.size());
    foresight::onAllCores(
        belts.size(),
        [&](std::size_t i) {
            played[i] = BeltReplay{*belts[i], outlook, whatIfs, terms}.play();
        },
        work);

    const auto years = static_cast<std::size_t>(terms.years);
    std::vector<std::vector<Played>> sums(whatIfs.size() + 1, std::vector<Played>(years));
    for (std::size_t i = 0; i < belts.size(); ++i)
        for (std::size_t at = 0; at < played[i].size(); ++at)
            sums[at / years][at % years].add(played[i][at], belts[i]->millimetres);
    ReplayResult result{
        .alternatives = {}, .belts = belts.size(), .days = std::min(outlook.days * 1.0, daysOfYear)};
    for (std::size_t i = 0; i < sums.size(); ++i) {
        Alternative& alternative = result.alternatives.emplace_back();
        if (i > 0) alternative.what = whatIfs[i - 1];
        alternative.figures = figuresOf(sums[i]);
        alternative.difference = differenceOf(sums[i], sums[0]);
        for (const BuyingBelt* belt : belts)
            alternative.belts += i > 0 && rulesUnder(*belt, outlook, whatIfs[i - 1]) ? 1 : 0;
    }
    return result;
}

} // namespace riband::shop
