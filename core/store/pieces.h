#pragma once

#include "core/cutting/problem.h"
#include "core/measure/date.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::store {

/// One thing on the rack.
struct StockPiece {
    PieceId id;
    std::string code;
    BeltId belt;
    cutting::PieceKind kind;
    Extent extent;   ///< by the ledger
    Extent reserved; ///< by open mountings (trim, kerf and belts), or all of a ready belt that is promised
    Money cost;
    std::optional<PieceId> parent; ///< the piece that it was cut from
    std::string place;             ///< "B3-2", "" nowhere yet
    Date received;
    std::optional<Date> made;
    std::string batch;

    Date born() const { return made.value_or(received); }
    bool gone() const { return extent.isNone(); }
};

/// What is needed to book a new piece; its extent comes from the movement.
struct NewPiece {
    BeltId belt;
    cutting::PieceKind kind;
    std::optional<PieceId> parent;
    std::string place;
    Date received;
    std::optional<Date> made;
    std::string batch;
};

/// The pieces. The only code that writes `piece`, but for the figures that the ledger keeps
/// there.
class Pieces {
public:
    explicit Pieces(Connection& connection) : connection_{connection} {}
    /// Gives the next code with its check character. The piece is empty until a movement fills it.
    PieceId add(const NewPiece& piece);
    StockPiece at(PieceId id) const;
    std::optional<StockPiece> byCode(const std::string& code) const;
    std::vector<StockPiece> ofBelt(BeltId belt) const; ///< not gone; oldest first
    std::vector<StockPiece> all() const;               ///< not gone; in no order
    /// Upkeep::relocate does so for a person.
    void move(PieceId piece, const std::string& place);
    /// A sleeve that was cut is a remnant from then on, under its own code.
    void becomeRemnant(PieceId piece);
    /// What opened it was undone.
    void becomeSleeve(PieceId piece);
    std::vector<StockPiece> cutFrom(PieceId piece) const; ///< gone ones too; in the order in which they came
    std::vector<std::string> places() const;

private:
    Connection& connection_;
};

} // namespace riband::store
