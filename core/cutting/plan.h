#pragma once

#include "core/cutting/problem.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::cutting {

/// So many belts for one line, cut one after the other.
struct Cut {
    std::size_t line; ///< index into Problem::lines
    std::int64_t count;
    friend bool operator==(const Cut&, const Cut&) = default;
};

/// What a left-over becomes.
enum class Rest : std::uint8_t { Remnant, Scrap, Nothing };

/// One piece put on the cutter once: one trim, then the cuts, narrow first, the widest last.
struct Mounting {
    std::size_t piece; ///< index into Problem::pieces
    std::vector<Cut> cuts;
    Extent left;
    Rest rest;
    friend bool operator==(const Mounting&, const Mounting&) = default;
};

/// A ready belt taken from the shelf for a line: no mounting.
struct Taken {
    std::size_t piece;
    std::size_t line;
    friend bool operator==(const Taken&, const Taken&) = default;
};

struct Unserved {
    enum class Why : std::uint8_t {
        NoPiece,   ///< there is no piece of this belt
        TooNarrow, ///< no single piece is wide enough
        NotEnough, ///< the pieces are used up by the other belts
    };
    std::size_t line;
    std::int64_t count;
    Why why;
    friend bool operator==(const Unserved&, const Unserved&) = default;
};

/// What to do, what it costs, and how sure it is that nothing is better.
struct Plan {
    std::vector<Taken> taken;
    std::vector<Mounting> mountings;
    std::vector<Unserved> unserved;
    Extent sold, trim, kerf, scrapped;
    std::int64_t newSleeves = 0;
    std::int64_t worthSpent = 0; ///< sum over mountings of worth(piece) - worth(left) + mounting cost
    std::int64_t bound = 0;      ///< no plan that serves as much spends less
    bool proven = false;         ///< worthSpent == bound, and no plan serves more width
};

/// Where the blade stands for each belt of a mounting, from the trimmed edge where the display was zeroed.
struct Stop {
    std::size_t line;
    Extent each;       ///< the belt's own width
    Extent cumulative; ///< display if it is not zeroed again (with kerf)
};
std::vector<Stop> stopsOf(const Problem& problem, const Mounting& mounting);

/// What is wrong with a plan: empty if it keeps every rule and its figures are right. Written without the
/// planner's code.
std::vector<std::string> check(const Problem& problem, const Plan& plan);

} // namespace riband::cutting
