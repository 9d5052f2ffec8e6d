#pragma once

#include "core/cutting/planner/model.h"

namespace riband::cutting::planner {

/// The best loads by dynamic programming over the pieces and over what has been served so far, all ties
/// included; nothing if the order is too large for that (the table would have too many transitions).
/// Exact: each piece is offered every choice of belts from every state, so each plan is one path.
std::optional<Loads> small(const Model& model);

} // namespace riband::cutting::planner
