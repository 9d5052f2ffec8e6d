#pragma once

#include "core/measure/date.h"
#include "core/measure/extent.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::store {

/// Where width is, or where it went (docs/ledger.md).
enum class Account : std::uint8_t {
    Bought, ///< source: from the maker
    Found,  ///< source: was on the rack and in no book
    Rack,   ///< sleeves and remnants; named by piece
    Ready,  ///< ready belts on the shelf; named by piece
    Sold,   ///< belts for customers; named by order line
    Trim,
    Kerf,
    End,        ///< ragged far edge thrown away at the cutter
    Scrap,      ///< thrown away, with a reason
    Difference, ///< book against what was measured
};

enum class ScrapReason : std::uint8_t { Stub, Miscut, Damaged, Aged };

/// What a movement was: the act of a person.
enum class Act : std::uint8_t { Receive, Cut, TakeReady, Miscut, Cancel, Scrap, Correct, Undo };

/// One side of a movement. `amount` is signed, in the unit of its belt; `cost` is the money that goes with
/// the width.
struct Posting {
    Account account;
    std::optional<PieceId> piece; ///< Rack and Ready always have one; the others name the piece it came from
    std::optional<LineId> line;   ///< Sold always has one
    std::int64_t amount;
    Money cost = Money::minor(0);
    std::optional<ScrapReason> reason; ///< Scrap always has one, and no other
};

/// One act: two or more postings of one belt that sum to zero in width and in money, each of which moves
/// something. `undoes` is set for Act::Undo and for no other. Can't be built otherwise: throws
/// std::invalid_argument.
class Movement {
public:
    struct About {
        Act act;
        Moment at;
        PersonId person;
        BeltId belt;
        std::string note;
        std::optional<MovementId> undoes;
        std::optional<CutterId> cutter{}; ///< of a cut that was made on one, and of what undoes it
    };
    Movement(About about, std::vector<Posting> postings);
    const About& about() const { return about_; }
    const std::vector<Posting>& postings() const { return postings_; }

private:
    About about_;
    std::vector<Posting> postings_;
};

struct RecordedMovement {
    MovementId id;
    Movement movement;
};

/// What undoes a mistake: the same postings with the signs turned. A movement is undone at most once.
Movement counterOf(const RecordedMovement& mistake, Moment at, PersonId person, std::string note);

/// The width ledger: append-only. The only code that names the tables `movement` and `posting`.
class Ledger {
public:
    explicit Ledger(Connection& connection) : connection_{connection} {}
    /// Inside the caller's transaction (else throws std::logic_error). Keeps the cached extent and cost of
    /// each piece on the rack or the shelf. Throws StoreError::Constraint if a piece would go below zero in
    /// width or cost, is of another belt, or a movement is undone twice; the transaction can't be committed
    /// then.
    MovementId record(const Movement& movement);
    std::optional<MovementId> last() const;   ///< the newest movement, none in an empty book
    RecordedMovement at(MovementId id) const; ///< throws StoreError if there is none
    std::vector<RecordedMovement> historyOf(PieceId piece) const; ///< oldest first
    std::optional<MovementId> undoneBy(MovementId id) const;      ///< the counter-entry, if there is one
    std::vector<RecordedMovement> ofLine(LineId line) const;      ///< that name the order line, oldest first
    /// from <= at < until, oldest first
    std::vector<RecordedMovement> between(Moment from, Moment until) const;
    /// Sums by account over all time; Extent is signed here, so plain counts.
    struct Balance {
        BeltId belt;
        Account account;
        std::int64_t amount;
        Money cost;
    };
    std::vector<Balance> balances() const;

private:
    Connection& connection_;
};

} // namespace riband::store
