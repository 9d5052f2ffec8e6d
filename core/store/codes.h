#pragma once

#include "core/measure/code.h"
#include "core/store/connection.h"

namespace riband::store {

/// The next code of its kind that this shop has not given out. Inside the caller's transaction.
Code giveCode(Connection& connection, CodeKind kind);
/// Writes the counters that are waiting; Transaction::commit does it.
void writeCodes(Connection& connection);

} // namespace riband::store
