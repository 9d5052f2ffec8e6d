#pragma once

#include "core/measure/extent.h"
#include "core/store/connection.h"

#include <functional>
#include <string>
#include <vector>

namespace riband::store {

/// One thing in the book that does not agree with another.
struct Disagreement {
    enum class Kind {
        MovementNotZero, ///< width or money of a movement does not sum to zero
        PieceExtent,     ///< the cached extent is not the sum of its postings
        PieceCost,
        PieceNegative,
        FlowSum,      ///< the sums that reports read are not those of the postings
        PieceCode,    ///< wrong check character, or given twice
        OverReserved, ///< open mountings promise more than the piece has
        LineCount,    ///< belts cut of a line are not what the ledger sold
        OrderState,   ///< an order's state does not follow from its lines
        TicketState,
        CountBook,       ///< a scan has another width of the book than the ledger had at its moment
        CountSettlement, ///< a settlement and its movement do not go together
        UnitMixed,       ///< a posting or line in another unit than its belt
        ForeignKey,
        Database, ///< SQLite's own integrity check
    };
    Kind kind;
    std::string where; ///< piece, ticket or order code, or the movement's number
    std::int64_t book = 0, found = 0;
    std::string detail;
};

/// What a closed count has left open: the book is known to be doubtful there. No disagreement of the book.
struct CountHole {
    enum class Kind {
        Missing,    ///< not seen, and nobody said what became of it
        Differs,    ///< measured otherwise than the book says, not settled
        Unlabelled, ///< a find that is in no book
    };
    Kind kind;
    std::string place;
    std::string where; ///< code of the piece, or the belt of a find
    Unit unit = Unit::Micrometre;
    std::int64_t book = 0, found = 0;
};

struct Verification {
    std::vector<Disagreement> disagreements;
    std::vector<CountHole> holes;
    std::int64_t pieces = 0, movements = 0, postings = 0; ///< all that the book ever had
    std::int64_t onRack = 0;                              ///< pieces that are there now
    bool finished = true;                                 ///< not stopped by `goOn`
    bool agrees() const { return finished && disagreements.empty(); }
};

/// Recomputes everything from the postings. `goOn` is told a share from 0 to 1 and may stop it.
Verification verify(Connection& connection, const std::function<bool(double)>& goOn = nullptr);

} // namespace riband::store
