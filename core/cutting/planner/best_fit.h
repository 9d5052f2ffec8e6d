#pragma once

#include "core/cutting/planner/model.h"

namespace riband::cutting::planner {

/// What a person does by eye: all belts from the smallest piece that takes them; if none does, the widest
/// belt first, each from the mounted piece with the least room for it, else from the smallest piece that
/// fits. No search: this is the first answer, and the reference for every better one.
Loads bestFit(const Model& model);

/// The widest belts first, each into the mounted piece with the least room, else into the smallest piece.
Loads widestFirst(const Model& model);

/// The load of all belts on one piece of this kind, if it is allowed.
std::optional<Load> allFrom(const Model& model, std::size_t kind);

} // namespace riband::cutting::planner
