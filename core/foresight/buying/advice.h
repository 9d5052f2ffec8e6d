#pragma once

#include "core/foresight/buying/consumption.h"
#include "core/foresight/buying/economics.h"

namespace riband::foresight {

/// A sleeve that can be bought. Money in minor units here and below: expectations.
struct SleeveChoice {
    Size width;
    double cost; ///< 0: not known
    int leadDays;
};

/// What is known of a belt when the purchase list is made.
struct BuyingCase {
    Setting setting;                   ///< its sleeve is that of the first choice; days are calendar days
    Record record;                     ///< up to today
    std::vector<Remnant> remnants;     ///< opened pieces, what is not promised of them
    int sleeves = 0;                   ///< whole ones on the rack
    std::vector<SleeveChoice> choices; ///< the present one first; at least one
    double price = 0;                  ///< of a unit of width sold, without tax; 0: not known
};

struct BuyingTerms {
    double service = 0.95; ///< of the times to the delivery after next that nobody should be sent away
    int reviewDays = 7;
    double orderCost = 500;
    double interest = 0.08; ///< a year
    int runs = 200;         ///< futures that are played
    std::uint64_t seed = 1;
};

/// A sleeve width with what a year of it would cost.
struct WidthAdvice {
    SleeveChoice sleeve;
    Consumption consumption;
    double sleevesPerYear = 0;
    YearlyCost year;
};

/// A width of which some should lie cut on the shelf.
struct ShelfAdvice {
    Size width;
    int belts;
};

/// Of a shorter record nothing is said against keeping a belt; common practice, no source.
inline constexpr int leastDaysToJudge = 90;

enum class Keeping {
    Keep,
    NotAskedFor, ///< not once in the whole record
    TooSlow,     ///< a sleeve would be past its age limit before half of it was sold
    CostsMoreThanItEarns,
};

struct BuyingAdvice {
    PatternFigures pattern;
    Forecast forecast; ///< of the width asked for in a week
    double ordersPerYear = 0;
    double widthPerYear = 0;         ///< asked for
    int horizonDays = 0;             ///< from today until what is ordered at the next look is there
    Need need;                       ///< over the horizon, from what is there today
    double risk = 0;                 ///< that somebody is sent away in the horizon if nothing is bought
    int reorderPoint = 0;            ///< whole sleeves that are enough with a rack as it usually is
    int lot = 1;                     ///< sleeves that are best bought at once
    int buy = 0;                     ///< now; of the present width
    std::vector<WidthAdvice> widths; ///< least cost a year first; those without a cost last
    Keeping keeping = Keeping::Keep;
    double earnsPerYear = 0; ///< price less all that the width costs; 0 if price or cost is not known
    std::vector<ShelfAdvice> preCut;

    const WidthAdvice& widthOf(Size sleeve) const; ///< throws std::out_of_range
};

/// Pure; the same case and terms, the same advice. Throws std::invalid_argument for a setting that is faulty
/// or a case without a choice of sleeve.
BuyingAdvice adviseBuying(const BuyingCase& belt, const BuyingTerms& terms);

/// Up to three belts of each listed width that is asked for at least once in 60 days, where the trim is more
/// than 3 % of what a mounting takes; elsewhere shelves backfire (docs/buying.md).
std::vector<ShelfAdvice> preCutOf(const Setting& setting, const Record& record, double ordersPerYear);

} // namespace riband::foresight
