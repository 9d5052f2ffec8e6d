#pragma once

#include "core/shop/reports/waste.h"
#include "core/store/advices.h"

namespace riband::shop {

/// Something else was done than was suggested: other pieces were taken, or belts for the shelf refused.
bool departs(const store::Advice& advice);
/// Whether the day could tell what each way would cost: the belt had orders to judge by.
bool isExpected(const store::Advice& advice);

/// How often the suggestion was followed by somebody, or not for some reason, and what departing from it is
/// expected to have cost (plus) or saved (minus): by worth and labour at the moment of the decision, in
/// the money of that day. Half of a 95 % interval stands beside it; it tells how much the decisions differ,
/// not how wrong the outlook may be.
struct OverrideRow {
    std::string name; ///< initials, or the reason's word; "" for none given
    std::int64_t suggested = 0;
    std::int64_t departures = 0;                     ///< of them were not followed
    std::int64_t overridden = 0;                     ///< other pieces were taken
    std::int64_t shelfOffered = 0, shelfRefused = 0; ///< belts for the shelf suggested, and not wanted
    /// Departures of which the day had an expectation: the belt had orders to judge by.
    std::int64_t expected = 0;
    Money extra = Money::minor(0);
    Money uncertain = Money::minor(0);
    /// Whether the cost or gain is more than the decisions' own scatter.
    bool told() const;
};
struct OverrideReport {
    OverrideRow all;
    std::vector<OverrideRow> people;       ///< by falling extra
    std::vector<OverrideRow> reasons;      ///< of departures only; `suggested` equals `departures`
    std::vector<store::Advice> departures; ///< oldest first, with the people's own words
};

/// Pure: people as their initials by id.
OverrideReport overridesOf(const std::vector<store::Advice>& advices,
                           const std::function<std::string(store::PersonId)>& initials);
OverrideReport overrides(const Shop& shop, const Period& period);

const char* wordFor(store::OverrideKey key);
/// The reason of a departure as files write it; refused belts for the shelf are one, too. "" for none given.
std::string reasonOf(const store::Advice& advice);

} // namespace riband::shop
