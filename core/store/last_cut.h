#pragma once

#include "core/store/orders.h"

namespace riband::store {

/// What was cut last, of the mountings made lately: its shaft is still on the cutter. Nothing if none was.
std::optional<MountingId> lastCut(Connection& connection);

} // namespace riband::store
