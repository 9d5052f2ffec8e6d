#pragma once

#include "core/belt/identify/instruments.h"
#include "core/store/connection.h"

namespace riband::store {

/// How well the shop measures an old belt: a part of its settings of its own, for only identification needs
/// it. The usual errors where nothing was written. Kept to the micrometre.
belt::identify::Instruments readMeasuring(Connection& connection);
void writeMeasuring(Connection& connection, const belt::identify::Instruments& measuring);

} // namespace riband::store
