#pragma once

#include "core/shop/reports/table.h"
#include "core/store/counts.h"

namespace riband::shop {

enum class ShrinkageBy : std::uint8_t { Cause, Belt, Place };

/// What counting found and what became of it: the settlements of a period that nobody has countered. In the
/// belt's unit; each row holds: less = more + sold + lost.
struct ShrinkageRow {
    std::string group; ///< cause, designation or the place of the count
    Unit unit;
    std::int64_t settled = 0; ///< differences
    std::int64_t less = 0;    ///< the rack had less than the book
    std::int64_t more = 0;    ///< or more
    std::int64_t sold =
        0; ///< of that: was cut for customers and not recorded, and what such cuts put on the shelf
    std::int64_t lost = 0;        ///< the rest: trim, end and difference, less what was found
    Money cost = Money::minor(0); ///< of what was lost
};

/// The most money lost first.
std::vector<ShrinkageRow> shrinkage(const Shop& shop, const Period& period, ShrinkageBy by);
/// The sum of rows of one unit, under the name "".
ShrinkageRow totalOf(const std::vector<ShrinkageRow>& rows, Unit unit);

/// The cause of a settlement, as files name it: "unrecorded cut", "unexplained".
const char* causeOf(store::Explanation explanation);
ReportTable tableOf(const std::vector<ShrinkageRow>& rows, const Currency& currency, Sees sees);

} // namespace riband::shop
