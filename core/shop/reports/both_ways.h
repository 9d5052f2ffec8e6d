#pragma once

#include "core/foresight/parallel.h"
#include "core/shop/reports/table.h"
#include "core/shop/suggest.h"

namespace riband::shop {

/// An order of one belt: what was wanted, suggested and taken, as the book kept it.
struct Deed {
    struct Mounting {
        store::PieceId piece;
        Extent before, left; ///< of the piece, what others were promised left out
        bool opensSleeve;
    };
    store::Advice advice;
    std::vector<Wish> wishes;
    std::vector<Mounting> mountings;
    std::vector<Extent> fromShelf, forShelf; ///< a belt each
    /// What was free when the order came; of departures only.
    std::vector<store::StockPiece> rack{};
};

/// The orders of one belt in a period from the first one on that was done otherwise than suggested: read
/// from the store at once, then replayed without it.
struct BeltDeeds {
    store::StockedBelt belt;
    store::ShopSettings settings;
    Past past; ///< before the first of them
    double millimetres;
    std::vector<Deed> deeds;
};

/// What the departures of a group came to, by replaying each belt's orders both ways. Plus: they cost; minus:
/// they saved. `doubt` is half of a 95 % interval.
struct BothWaysRow {
    std::string name;
    std::int64_t departures = 0;      ///< that were replayed
    double width = 0, widthDoubt = 0; ///< mm, ribs by their pitch
    double money = 0, moneyDoubt = 0; ///< minor units
    bool told() const;                ///< more than the doubt
};
struct BothWays {
    /// What one departure came to: the cost of its belt's orders from it on, done so and as suggested.
    struct Decision {
        store::AdviceId advice;
        std::string belt;
        double asDone, asSuggested; ///< mm
        double width, money;        ///< what it cost: mm and minor units
    };
    BothWaysRow all;
    std::vector<BothWaysRow> people, reasons, belts; ///< by falling cost
    std::int64_t left = 0; ///< departures that the book keeps too little of to be replayed
    /// Of all belts with a departure, mm: what their orders cost as they were done, and as they would have
    /// been with every suggestion followed. Their difference is `all.width`.
    double asDone = 0, asSuggested = 0;
    std::vector<Decision> decisions; ///< in the order in which the rows sum them
};

std::vector<BeltDeeds> deedsOf(const Shop& shop, const Period& period);

/// Each belt's orders are gone through again, from the rack as it was at the first override: once as they
/// were done, and once for each override, done as before up to it, as suggested there, and as the suggestions
/// would have gone on from the rack that this leaves: the same demand, the same code that advises the
/// counter. The cost of an override is what the history that ends its following there costs less. These add
/// up, exactly, to all done as it was less all as suggested. Width is priced by hindsight's prices of the
/// belt's own demand (docs/reports.md), on both sides. Pure; throws foresight::Stopped.
BothWays bothWays(const std::vector<BeltDeeds>& belts,
                  const std::function<std::string(store::PersonId)>& initials,
                  const foresight::Work& work = {});
BothWays bothWays(const Shop& shop, const Period& period, const foresight::Work& work = {});

/// Each departure with its reason and the person's own words, what was suggested and what was taken; with
/// `played` what it came to both ways.
ReportTable decisionsOf(const Shop& shop, const std::vector<store::Advice>& advices, const BothWays* played,
                        const Currency& currency, Sees sees);

/// What the overrides report says: how often the suggestion was followed, and what came of the others.
ReportTable tableOf(const OverrideReport& report, const BothWays& played, const Currency& currency,
                    Sees sees);

} // namespace riband::shop
