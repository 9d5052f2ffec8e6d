#include "core/shop/buying/reach.h"
#include "ui/review/report_view.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <cmath>

namespace riband::ui {

namespace {

using shop::BeltReach;
using shop::Reach;

constexpr std::size_t mostBars = 12;

QString unitWords(Unit unit) {
    return unit == Unit::Rib ? Words::tr("Ribbed belts") : Words::tr("Toothed belts");
}

BarRows yieldsOf(const Reach& reach) {
    BarRows bars{{}, unitWords(reach.unit), {}};
    bars.rows.push_back({Words::tr("sold of what was used"),
                         reach.had(),
                         shownPercent(reach.had()),
                         {},
                         BandPicture::Part::Belt});
    bars.rows.push_back({Words::tr("with all orders known"),
                         reach.reachable(),
                         shownPercent(reach.reachable()),
                         {},
                         BandPicture::Part::Belt});
    return bars;
}

/// A belt that lost less than hindsight, or nothing, is no bar.
BarRows beltsOf(const std::vector<BeltReach>& belts, Unit unit) {
    BarRows bars{{}, Words::tr("%1 that lost most beyond it").arg(unitWords(unit)), {}};
    for (const BeltReach& belt : belts) {
        if (belt.reach.unit != unit || !(belt.reach.beyond() >= 1) || bars.rows.size() == mostBars) continue;
        bars.rows.push_back({text(belt.designation), belt.reach.beyond(),
                             shownSum(unit, std::llround(belt.reach.beyond())),
                             Words::tr("%1 of %2")
                                 .arg(shownPercent(belt.reach.had()), shownPercent(belt.reach.reachable()))});
    }
    return bars;
}

} // namespace

ReportView hindsightView(const shop::Shop& shop, const shop::Period& period) {
    const auto belts = shop::reach(shop, period);
    ReportView view;
    view.table = shop::tableOf(belts);
    view.behind = behindReach(belts, period, view.table);
    view.headline = Words::tr("Nothing was ordered in this period");
    for (const Unit unit : {Unit::Rib, Unit::Micrometre}) {
        const auto sum = shop::totalOf(belts, unit);
        if (!sum) continue;
        view.headline = Words::tr("%1: %2 of what was used was sold; %3 could have been")
                            .arg(unitWords(unit), shownPercent(sum->had()), shownPercent(sum->reachable()));
        view.charts.push_back(chartOf(yieldsOf(*sum)));
        if (const BarRows bars = beltsOf(belts, unit); !bars.rows.empty())
            view.charts.push_back(chartOf(bars));
    }
    view.remarks << Words::tr("Of the belts ordered in the period. Nobody knows the orders of tomorrow: this "
                              "is the most that could be had "
                              "from new sleeves without ready belts, for comparison, not a target. Of few "
                              "orders the distance is mostly "
                              "chance.");
    return view;
}

} // namespace riband::ui
