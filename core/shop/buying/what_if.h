#pragma once

#include "core/foresight/parallel.h"
#include "core/foresight/replay/replay.h"
#include "core/shop/buying/cases.h"

#include <string>

namespace riband::shop {

/// What would be otherwise. What is not said stays as it is. Widths change the belts of their unit alone.
struct WhatIf {
    std::string name; ///< as it was asked for
    std::optional<Extent> trim, kerf, sleeve, leastRemnant;
    std::optional<double> price; ///< of a sleeve, times the present one's; without it by width
    std::optional<double> service;
    std::optional<int> leadDays, reviewDays, remnants;
    bool together = false; ///< orders of a day are cut together at closing time
};

/// Where the orders come from.
enum class Years {
    History, ///< the shop's own last year, its months drawn anew
    Outlook, ///< a year that is expected after the history
};

struct ReplayTerms {
    int years = 10; ///< that are drawn; alternatives meet the same ones
    Years from = Years::History;
    std::string profile{}; ///< only belts of it; empty: all
    std::uint64_t seed = 1;
};

/// A figure over the drawn years: its mean, and half of the 95 % interval of the mean (Student's t; of one
/// year alone all is doubt).
struct Estimate {
    double mean = 0, doubt = 0;
    bool told() const; ///< the mean is more than the doubt
    /// The chance that the mean has the right sign, 0.5 to 1.
    double confidence() const;
};

/// What all belts together come to in a year. Widths in mm (ribs by their pitch), money in minor units.
struct ReplayFigures {
    Estimate yield; ///< sold of used up, a share
    Estimate sleeves, mountings, lostOrders, lost, rubber, stock;
    /// All of it in money: rubber, labour, interest on sleeves held, and the margin of what was not sold.
    Estimate expense;
};

struct Alternative {
    WhatIf what;
    std::size_t belts = 0; ///< that it changes
    ReplayFigures figures;
    ReplayFigures difference; ///< to how it is now, year by year
};

struct ReplayResult {
    std::vector<Alternative> alternatives; ///< the first is how it is now
    std::size_t belts = 0;                 ///< that were asked for
    double days = 0;                       ///< of a year that was played
};

/// Replays on all cores. Throws foresight::Stopped.
ReplayResult replay(const BuyingOutlook& outlook, const std::vector<WhatIf>& whatIfs,
                    const ReplayTerms& terms, const foresight::Work& work = {});

/// The rules of one belt with what would be otherwise; nothing if it changes nothing of this belt or its
/// sleeve could not be cut then.
std::optional<foresight::ReplayRules> rulesUnder(const BuyingBelt& belt, const BuyingOutlook& outlook,
                                                 const WhatIf& what);

} // namespace riband::shop
