#pragma once

#include "core/belt/identify/prior.h"
#include "core/store/connection.h"

#include <vector>

namespace riband::shop {

/// What the shop's customers wanted so far, one entry a belt: what was sold often is likelier to stand on the
/// counter. Reads on any connection, so that it may be done in another thread.
std::vector<belt::identify::Sale> wantedBefore(store::Connection& connection);

} // namespace riband::shop
