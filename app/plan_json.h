#pragma once

#include "core/cutting/plan.h"

#include <QJsonObject>

#include <string>
#include <vector>

namespace riband::app {

/// The plan of one belt with what it was made of.
struct BeltPlan {
    std::string belt; ///< designation
    cutting::Problem problem;
    cutting::Plan plan;
};

/// docs/commands.md, "plan". Quantities of ribbed belts end in _ribs, of toothed belts in _mm; totals have
/// both where both are there.
QJsonObject jsonOf(const std::vector<BeltPlan>& plans);

/// The display at each belt of a mounting if it is not zeroed again.
std::vector<Extent> cumulativeStops(const cutting::Problem& problem, const cutting::Mounting& mounting);

} // namespace riband::app
