#pragma once

#include "core/shop/past.h"

#include <limits>

namespace riband::shop {

/// What is needed to fit a belt's worth table; made from the store at once, so that the fitting, some tenths
/// of a second, needs no store and may be done by another thread.
struct Lesson {
    store::BeltId belt;
    Past past;
    Moment now;
};

/// A worth table is due: there is none of today's setting, or the orders since are a tenth more, five at
/// least, or it is a month old and there were orders since.
bool isDue(const Lesson& lesson);
Lesson lessonOf(const Shop& shop, store::BeltId belt);
/// Of so many belts that are ordered most often those whose table is due, the most often ordered first.
std::vector<store::BeltId> dueBelts(const Shop& shop,
                                    std::size_t ofMost = std::numeric_limits<std::size_t>::max());

/// Fits the table, in slices of some milliseconds; before each `goOn` is told the share that is done and may
/// stop it: then, and if the belt can't be weighed, there is none. Pure: the same lesson gives the same
/// table.
std::optional<store::StoredWorth> learn(const Lesson& lesson, const std::function<bool(double)>& goOn);

/// Keeps it as the belt's next version. One transaction.
int keepWorth(const Shop& shop, store::BeltId belt, const store::StoredWorth& table);

} // namespace riband::shop
