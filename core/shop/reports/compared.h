#pragma once

#include "core/shop/reports/table.h"

namespace riband::shop {

/// Of how much of a period the book can tell: it begins with its first movement.
enum class Told : std::uint8_t { Whole, Part, Nothing };
Told toldOf(const Shop& shop, const Period& period);

/// A line of the waste report beside the same group in the period before and on the same days a year earlier.
struct ComparedRow {
    /// What the group sold and lost then; nothing where the book begins later.
    struct Then {
        Balance<std::int64_t> width{}, money{};
    };
    WasteRow now;
    std::optional<Then> before, yearBefore;
};
struct Compared {
    Period period, before, yearBefore;
    Told beforeTold = Told::Nothing, yearBeforeTold = Told::Nothing;
    /// One list for each of the groups that were asked for.
    std::vector<std::vector<ComparedRow>> groups{};
};
/// `rows` are those of `waste` for each of `groups`. Reads sums only, and of earlier periods nothing but what
/// moved in them; by place it reads postings. A group that has no line now is not told.
Compared compared(const Shop& shop, const Period& period, const std::vector<GroupBy>& groups,
                  const std::vector<std::vector<WasteRow>>& rows);

/// The columns of the waste report, and after them those of the earlier periods.
ReportTable tableOf(const std::vector<ComparedRow>& rows, const Currency& currency, Sees sees);
/// Group, unit, and what was sold and lost now and then.
ReportTable shortTableOf(const std::vector<ComparedRow>& rows, const Currency& currency, Sees sees);

} // namespace riband::shop
