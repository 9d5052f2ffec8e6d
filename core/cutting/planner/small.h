#pragma once

#include "core/cutting/planner/state.h"

namespace riband::cutting::planner {

/// How many steps the table of `small` takes, or `unlimited` if it can't be made.
std::int64_t stepsOfSmall(const Model& model);

/// The best loads by dynamic programming over the pieces and over what has been served so far, all ties
/// included; nothing if it was stopped. Exact: each piece is offered every choice of belts from every state,
/// so each plan is one path.
std::optional<Loads> small(const Model& model, Stopper& stopper);

} // namespace riband::cutting::planner
