#pragma once

#include "core/cutting/planner/model.h"

namespace riband::cutting::planner {

/// The same loads on older pieces, where one piece is as good as another for them: each load in turn goes to
/// the piece that makes the whole plan best by its score, until none does better.
Loads olderPieces(const Model& model, Loads loads);

} // namespace riband::cutting::planner
