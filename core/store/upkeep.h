#pragma once

#include "core/measure/date.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace riband::store {

/// A piece was put elsewhere.
struct Relocation {
    std::int64_t number; ///< rising in time
    PieceId piece;
    Moment at;
    PersonId person;
    std::string from, to; ///< places; "" none
};

/// An aged piece was looked at.
struct Inspection {
    PieceId piece;
    Moment at;
    PersonId person;
    std::optional<Date> until; ///< sound: to be used until then; none: not to be sold any more
    std::string note;
    std::optional<Moment> takenBack{}; ///< it was booked by mistake
};

/// What is done with a piece that moves no width. The only code that names the tables `relocation`,
/// `inspection` and `scrap_weight`.
class Upkeep {
public:
    explicit Upkeep(Connection& connection) : connection_{connection} {}
    /// Puts the piece there and keeps where it was.
    void relocate(PieceId piece, const std::string& place, PersonId person, Moment at);
    std::vector<Relocation> relocationsOf(PieceId piece) const; ///< oldest first

    void record(const Inspection& inspection);
    std::vector<Inspection> inspectionsOf(PieceId piece) const; ///< oldest first
    /// Of those that were not taken back.
    std::map<PieceId, Inspection> lastInspections() const;
    /// The last of the piece that stands; false if there is none.
    bool takeBackInspection(PieceId piece, PersonId person, Moment at);

    void weigh(MovementId movement, std::int64_t grams);
    std::optional<std::int64_t> gramsOf(MovementId movement) const;

private:
    Connection& connection_;
};

} // namespace riband::store
