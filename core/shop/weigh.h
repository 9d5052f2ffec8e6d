#pragma once

#include "core/shop/suggest.h"

namespace riband::shop {

/// The ways to serve what is wanted by worth table and look-ahead, the best first, at most so many. Ready
/// belts go first. None if all comes from the shelf, if the pieces that are here can't serve it, or if more
/// is wanted than can be weighed as a whole. Pure.
std::vector<Way> weigh(const Outlook& outlook, const Future& future, std::size_t most);

struct JointWay {
    Way way;          ///< priced by the worth table
    bool met = false; ///< by look-ahead
};
/// The one way to serve what several orders wait for: the best of what `weigh` would suggest and of these
/// plans, each met by the same futures. What is more than can be weighed as a whole is weighed group by
/// group, and the worth table says which is best. Nothing if all comes from the shelf, or nothing serves
/// everything. Pure.
std::optional<JointWay> weighTogether(const Outlook& outlook, const Future& future,
                                      const std::vector<cutting::Plan>& plans);

/// The worth table for the planner, to whole units.
std::shared_ptr<const cutting::Worth> curveOf(const foresight::WorthTable& table, Extent stub);

} // namespace riband::shop
