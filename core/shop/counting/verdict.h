#pragma once

#include "core/store/counts.h"
#include "core/store/settings.h"

namespace riband::shop::counting {

/// One measurement against the book of its moment, in the belt's unit.
struct Look {
    std::int64_t gap; ///< measured less book
    store::Method method;
    bool outOfBook = false; ///< the book had nothing of the piece: no width is near enough to that
};

enum class Verdict {
    Agrees,
    Within, ///< no further from the book than the method can tell
    Again,  ///< measure a second time
    Differs ///< two measurements say the same, and it is not what the book says
};

/// What a method of measuring can't tell apart; ribs are counted, so nothing of them.
std::int64_t toleranceOf(const store::CountRules& rules, Unit unit, store::Method method);

/// Of all measurements of one piece in one count, in their order; at least one. The last decides; one that
/// differs is believed once the one before says the same. Sales in between don't matter, since each gap is
/// from the book of its own moment. Pure.
Verdict verdictOf(const std::vector<Look>& looks, const store::CountRules& rules, Unit unit);

} // namespace riband::shop::counting
