#pragma once

#include "core/cutting/problem.h"
#include "core/store/counts.h"

#include <map>

namespace riband::shop::counting {

/// A difference that was found by counting, in the belt's unit (micrometres or ribs).
struct Difference {
    enum class Kind {
        Differs, ///< a labelled piece measures otherwise
        Missing, ///< a piece of the book that was not seen
        Find     ///< a piece that no label names
    };
    Kind kind;
    store::CountId count;
    std::optional<store::ScanId> scan;   ///< all but missing pieces
    std::optional<store::PieceId> piece; ///< all but finds
    store::BeltId belt;
    Unit unit;
    std::int64_t book;     ///< at the moment of the scan; of a missing piece now
    std::int64_t measured; ///< 0 of a missing piece
    std::int64_t gap;      ///< what still has to be explained: measured less book
    std::int64_t tolerance;
    bool ready = false;         ///< a ready belt: nothing is cut from it
    bool measuredSince = false; ///< another measurement was booked after the scan: nothing is left of it

    friend bool operator==(const Difference&, const Difference&) = default;
};

/// What is known of the belt of a difference.
struct Evidence {
    /// Planned mountings of the belt.
    struct Planned {
        store::MountingId mounting;
        store::PieceId piece;
        std::int64_t trim, belts; ///< `belts` with their kerf
    };
    /// Belts of open orders that are on no ticket.
    struct Line {
        store::LineId line;
        std::int64_t each, belts;
    };
    cutting::Rules rules;
    std::vector<std::int64_t> listed; ///< widths
    std::vector<Planned> planned;
    std::vector<Line> lines;
    std::vector<Difference> others;                ///< all open differences of the belt
    std::vector<std::int64_t> bookedSince;         ///< what cuts since the scan took from the piece
    std::optional<store::SettlementId> lostBefore; ///< the settlement that booked this piece as missing
};

/// What may have happened. `likelihood` sums to 1 over the proposals of a difference.
struct Proposal {
    store::Explanation what;
    double likelihood = 0;
    std::int64_t unexplained = 0; ///< of the gap, goes to the account Difference
    std::optional<store::MountingId> mounting{};
    std::optional<store::LineId> line{};
    std::int64_t belts = 0; ///< of the line, or of `each` wide
    std::int64_t each = 0;
    bool withTrim = false;
    std::optional<Difference> other{};               ///< settled together with it
    std::optional<store::SettlementId> settlement{}; ///< countered thereby
};

/// The same act on the same things.
bool sameAct(const Proposal& a, const Proposal& b);

/// The proposals, likeliest first; there is always one, Unexplained at the least. Pure: Bayes' rule over what
/// can happen in a shop, see docs/counting.md. The priors are common practice, no source.
std::vector<Proposal> explain(const Difference& difference, const Evidence& evidence);

} // namespace riband::shop::counting
