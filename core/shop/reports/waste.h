#pragma once

#include "core/shop/reports/balance.h"
#include "core/shop/shop.h"

#include <map>

namespace riband::shop {

/// from <= at < until
struct Period {
    Moment from, until;
    friend bool operator==(const Period&, const Period&) = default;
};
/// The period of the same length that ends where this one begins; of whole months the months before.
Period before(const Period& period);
/// The same days a year earlier; 29 February becomes 28.
Period yearBefore(const Period& period);
/// A period that is not over ends with today: what has not happened yet is neither told nor compared.
Period soFar(const Period& period, Date today);
/// Whether its last day is today, or not yet here.
bool isRunning(const Period& period, Date today);

enum class GroupBy : std::uint8_t { All, Belt, Profile, Family, Person, Place, Cause, Cutter };

/// One line of the waste report. Millimetres and ribs never stand in one: a group with both has two lines.
struct WasteRow {
    std::string group; ///< as in its file: "H8M 1200", "T5", the person's initials, "stub"; "" for all, by
                       ///< hand, no place
    Unit unit;
    Balance<std::int64_t> width{}; ///< µm or ribs
    Balance<std::int64_t> money{}; ///< minor units
    Balance<double> area{};        ///< m²
    Balance<double> weight{};      ///< kg of what has a known weight
    bool weightKnown = true;       ///< of all of it
    std::int64_t shelf = 0;        ///< ready belts on the shelf at the end
    store::Behind behind{};        ///< the movements that it sums
};

/// Where the width went. Groups that are no things on the rack (people, cutters, places, causes) hold, too:
/// their `opening` and `closing` are what they brought to the rack less what they took from it. The rows are
/// in falling order of the money that was lost. Reads sums only; by place it reads postings.
std::vector<WasteRow> waste(const Shop& shop, const Period& period, GroupBy by);
/// Several at once, which reads the sums once.
std::vector<std::vector<WasteRow>> waste(const Shop& shop, const Period& period,
                                         const std::vector<GroupBy>& groups);

/// The same without the rack before and after, which is read more quickly.
std::vector<std::vector<WasteRow>> moved(const Shop& shop, const Period& period,
                                         const std::vector<GroupBy>& groups);

/// What each belt was bought, sold and lost in the period: the figures of `waste` without the rack before and
/// after, which is read more quickly.
std::map<store::BeltId, Balance<std::int64_t>> movedByBelt(const Shop& shop, const Period& period);

/// All belts of a unit together, and what that had cost in minor units.
struct Moved {
    Balance<std::int64_t> width{}, money{};
};
std::map<Unit, Moved> movedByUnit(const Shop& shop, const Period& period);

/// What flows of one unit come to, as a row without a group.
WasteRow rowOf(const Shop& shop, Unit unit, const std::vector<store::Flow>& flows);
/// The sum of rows of one unit, under the name "".
WasteRow totalOf(const std::vector<WasteRow>& rows, Unit unit);

} // namespace riband::shop
