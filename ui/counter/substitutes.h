#pragma once

#include "core/belt/drive/choices.h"
#include "ui/counter/choices.h"

namespace riband::ui {

/// What could be sold in place of a belt that is not here, never of another profile, what changes least
/// first: a wider belt of this length that lies ready; the lengths beside it that are here, with what the
/// pulleys would have to do; narrower belts, which carry less; lengths that are not here either; and the
/// drive, to see whether it can take another length. `stock`: of this profile (shop::cuttable).
Choices substituteChoices(const belt::Reading& reading, const std::vector<belt::drive::Stocked>& stock,
                          const belt::Tables& tables);

} // namespace riband::ui
