#pragma once

#include "core/shop/reports/waste.h"
#include "core/store/advices.h"

namespace riband::shop {

/// How often the suggestion was followed by somebody, or not for some reason, and what that is expected to
/// have cost (plus) or saved (minus) over following it: by worth and labour at the moment of the decision, in
/// the money of that day. Half of a 95 % interval stands beside it; it tells how much the decisions differ,
/// not how wrong the outlook may be.
struct OverrideRow {
    std::string name; ///< initials, or the reason's word; "" for none given
    std::int64_t suggested = 0;
    std::int64_t overridden = 0;
    Money extra = Money::minor(0);
    Money uncertain = Money::minor(0);
    /// Whether the cost or gain is more than the decisions' own scatter.
    bool told() const;
};
struct OverrideReport {
    OverrideRow all;
    std::int64_t shelfDeclined = 0;
    std::vector<OverrideRow> people;  ///< by falling extra
    std::vector<OverrideRow> reasons; ///< overridden ones only; `suggested` equals `overridden`
};

/// Pure: people as their initials by id.
OverrideReport overridesOf(const std::vector<store::Advice>& advices,
                           const std::function<std::string(store::PersonId)>& initials);
OverrideReport overrides(const Shop& shop, const Period& period);

const char* wordFor(store::OverrideKey key);

} // namespace riband::shop
