#pragma once

#include "core/measure/date.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <utility>
#include <vector>

namespace riband::store {

// What planning a count reads of the ledger: who cut which piece when, and what each belt sold.

/// A cut or miscut of a piece that is on the rack or was ever counted.
struct CutOf {
    PieceId piece;
    PersonId person;
    Moment at;
};
/// Oldest first.
std::vector<CutOf> cutsOfPieces(Connection& connection);
/// Width sold of each belt since then, in its unit.
std::vector<std::pair<BeltId, std::int64_t>> soldSince(Connection& connection, Moment from);

} // namespace riband::store
