#pragma once

#include "core/measure/date.h"
#include "core/measure/extent.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::store {

/// How a width was found while counting. Each has its tolerance (ShopSettings::counting).
enum class Method : std::uint8_t { Calliper, Tape, Eye };

/// What a difference turned out to be (docs/counting.md). Landed values never change.
enum class Explanation : std::uint8_t {
    Measuring,        ///< within the tolerance of measuring
    CutNotRecorded,   ///< a planned mounting of this piece was cut and not recorded
    CutFromOther,     ///< a planned mounting of another piece was cut from this one, and not recorded
    LineNotTicketed,  ///< a line of an open order was cut without a ticket
    SaleWithoutOrder, ///< short by a trim and belts of a listed width, and no order says so
    Swapped,          ///< this piece is short by what another is long
    LostLabel,        ///< a missing piece and a find without label are one
    Transposed,       ///< two digits of the book's figure changed places
    TrimForgotten,    ///< short by a trim that was not booked
    EdgeWaste,        ///< short by no more than the ragged end
    BookedLate,       ///< what was missing has been booked since the scan
    Found,            ///< was in no book
    Unexplained,      ///< theft, or nobody knows
};

/// One person looking through one place.
struct Count {
    CountId id;
    std::string place; ///< as it was called then
    PersonId person;   ///< who began
    Moment started;
    std::optional<Moment> closed;
};

/// What somebody saw.
struct Scan {
    ScanId id;
    CountId count;
    Moment at;
    PersonId person;
    std::optional<PieceId> piece; ///< none: a find without label
    BeltId belt;
    Extent book; ///< what the book had at that moment
    Extent measured;
    Method method;
    std::optional<MovementId> after; ///< the last movement before it
    std::string placeWas;            ///< where the book had it
    std::string remark;
    std::int64_t gap() const { return measured.count() - book.count(); }
};

/// How a difference was settled: of a scan, or of a missing piece.
struct Settlement {
    SettlementId id;
    CountId count;
    std::optional<ScanId> scan;
    std::optional<PieceId> piece;
    Explanation explanation;
    std::optional<MovementId> movement; ///< none: nothing had to be booked
    PersonId person;
    Moment at;
    std::optional<PersonId> approved;   ///< who approved it, if it was above the limit
    std::optional<SettlementId> undoes; ///< the one that it counters
};

/// A piece that was not seen in a closed count.
struct MissingPiece {
    CountId count;
    PieceId piece;
};

/// Counts, scans and settlements: append-only but for the closing of a count. The only code that names the
/// tables `count_…`. All that writes does so inside the caller's transaction.
class Counts {
public:
    explicit Counts(Connection& connection) : connection_{connection} {}
    /// Throws StoreError::Constraint if a count of the place is open.
    CountId begin(const std::string& place, PersonId person, Moment at, const std::vector<PieceId>& expected);
    void close(CountId count, Moment at, const std::vector<PieceId>& missing);
    ScanId add(const Scan& scan);                   ///< the id is given here
    SettlementId add(const Settlement& settlement); ///< the id is given here

    std::optional<Count> find(CountId count) const;
    std::optional<Count> openAt(const std::string& place) const;
    std::vector<Count> open() const; ///< oldest first
    std::vector<Count> all() const;  ///< oldest first
    std::vector<PieceId> expected(CountId count) const;
    std::vector<Scan> scansOf(CountId count) const; ///< in their order
    std::vector<Scan> scansOf(PieceId piece) const; ///< in their order
    std::optional<Scan> scan(ScanId scan) const;
    std::vector<Scan> allScans() const; ///< in their order

    /// The last scan of each piece, and every find, that differs from the book and is not settled.
    std::vector<Scan> unsettled() const;
    /// Missing pieces of closed counts that are not settled, were not scanned since and are not used up.
    std::vector<MissingPiece> unsettledMissing() const;
    std::vector<MissingPiece> missing() const;   ///< all that closed counts did not see, by count
    std::vector<Settlement> settlements() const; ///< all, in their order
    std::optional<Settlement> settlement(SettlementId id) const;
    std::vector<Settlement> settlementsOf(MovementId movement) const;
    bool isCountered(SettlementId id) const;
    std::optional<SettlementId> settlementOf(ScanId scan) const; ///< that stands
    std::optional<SettlementId> settlementOfMissing(CountId count, PieceId piece) const;

private:
    Connection& connection_;
};

} // namespace riband::store
