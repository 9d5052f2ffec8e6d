#pragma once

#include "core/belt/tables.h"
#include "core/measure/date.h"
#include "core/store/catalogue.h"
#include "core/store/ledger.h"
#include "core/store/orders.h"
#include "core/store/people.h"
#include "core/store/pieces.h"
#include "core/store/settings.h"

#include <functional>
#include <memory>
#include <stdexcept>

namespace riband::shop {

/// One open shop: its store, the standards tables, who acts, and what time it is (handed in). The verbs of
/// this folder take it; each is one transaction: it is done and durable when it returns, or nothing happened.
struct Shop {
    store::Connection& connection;
    std::shared_ptr<const belt::Tables> tables;
    store::PersonId person;
    std::function<Moment()> now;
};

/// A person asked for what can't be done as things stand; nothing was changed. The screen finds the words.
class Refusal : public std::runtime_error {
public:
    enum class Why {
        NoSuchPiece,
        NoSuchTicket,
        NoSuchOrder,
        NoSuchBelt,
        NoSuchCutter, ///< of those in use
        AlreadyCut,   ///< of the mounting or line: what was cut stays cut
        AlreadyDone,  ///< handed over, cancelled, void
        NothingToCut,
        WidthTaken, ///< another order got the width in between: suggest again
        PieceGone,
        PieceReserved, ///< open tickets promise its width: `detail` their codes
        MoreThanThere, ///< more was left than there was
        TooNarrow,
        UnitMixed, ///< ribs for a toothed belt or the reverse
        NotAllCut, ///< can't be handed over yet
        BadQuantity,
        BadWidth,
        CodeTaken,
        CountClosed,     ///< the count of a place, or there is none
        MeasureAgain,    ///< a piece of the count waits for its second measurement
        NeedsApproval,   ///< a difference worth more than the limit
        SettledByCut,    ///< a settlement that is undone with its cut only
        NotTheirs,       ///< the role of who acts does not reach: `detail` the role that does
        InitialsTaken,   ///< or none
        LastOwner,       ///< somebody must be able to see and set everything
        BadNumber,       ///< to lock with
        UndoneAlready,   ///< `detail` is the number of the counter-entry
        ActStays,        ///< a counter-entry can't make it undone
        ExtendedAlready, ///< an aged piece was passed once: no second time
        NotAged,         ///< there is nothing to extend yet
        HasArrived,      ///< of what is expected: `detail` is the belt of which something came
    };
    Refusal(Why why, std::string detail)
        : std::runtime_error{detail}, why_{why}, detail_{std::move(detail)} {}
    Why why() const { return why_; }
    const std::string& detail() const { return detail_; }

private:
    Why why_;
    std::string detail_;
};

} // namespace riband::shop
