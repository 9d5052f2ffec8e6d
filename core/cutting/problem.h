#pragma once

#include "core/measure/date.h"
#include "core/measure/extent.h"

#include <memory>
#include <string>
#include <vector>

namespace riband::cutting {

/// The rules of a cutter, in the unit of the belt (docs/mathematics.md, "Cutting rules").
struct Rules {
    Extent trim; ///< lost every time a piece is mounted
    Extent kerf; ///< turned to nothing at every belt
    Extent end;  ///< at least this much is left beyond the last cut
    Extent stub; ///< least width that can be held and steered

    /// 2.5 mm trim, no kerf, 5 mm end, 15 mm stub; ribbed: 1, 0, 1, 3 ribs (common practice, no source).
    static Rules usual(Unit unit);
    Unit unit() const { return trim.unit(); }
    /// What must stay on the shaft when the widest belt of a mounting is cut last.
    Extent reserve(Extent widest) const;
};

enum class PieceKind : std::uint8_t { Sleeve, Remnant, Ready };

/// One thing on the rack that could be used.
struct Piece {
    std::string code;
    PieceKind kind;
    Extent extent;
    Date born; ///< of its sleeve: the older goes first
};

/// So many belts of one width.
struct Line {
    std::string id;
    Extent extent;
    std::int64_t quantity;
};

/// What a width on the rack is expected to be good for. Non-decreasing, zero below the stub. Immutable.
class Worth {
public:
    virtual ~Worth() = default;
    virtual std::int64_t of(std::int64_t extent) const = 0; ///< both in the problem's unit
    /// The worth of every multiple of `widths` is a multiple of this: bounds can be rounded up to it. 1 is
    /// always right.
    virtual std::int64_t grain([[maybe_unused]] std::int64_t widths) const { return 1; }
    /// of(r) = r from the stub on.
    static std::shared_ptr<const Worth> plain(Extent stub);
    /// Steps: of(r) = value of the last point at or below r, 0 before the first. Throws std::invalid_argument
    /// if the points fall or are unsorted.
    struct Point {
        std::int64_t extent, worth;
    };
    static std::shared_ptr<const Worth> steps(Extent stub, std::vector<Point> points);
};

/// The lines of one belt and the pieces that could give them. Checks itself: throws std::invalid_argument on
/// mixed units, double codes or ids, a line of no width or no belts.
struct Problem {
    Problem(Rules rules, std::vector<Piece> pieces, std::vector<Line> lines,
            std::shared_ptr<const Worth> worth = nullptr, Extent mountingCost = Width::millimetres(0));

    Rules rules;
    std::vector<Piece> pieces;
    std::vector<Line> lines;
    std::shared_ptr<const Worth> worth; ///< plain if none was given
    Extent mountingCost;                ///< none in the rules' unit if it was given in another
};

} // namespace riband::cutting
