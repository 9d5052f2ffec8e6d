#pragma once

#include "core/measure/money.h"
#include "core/store/id.h"
#include "core/store/settings.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::shop::counting {

enum class Class : std::uint8_t { A, B, C };

/// A piece that could be counted today.
struct Candidate {
    store::PieceId piece;
    std::string place;
    Money value;             ///< what it cost, or could be sold for
    Money moved;             ///< its share of what its belt sold for in a year
    double doubt;            ///< that its book is wrong
    std::optional<int> days; ///< since it was last counted or measured as goods in; none: never
    bool ready;              ///< is looked at, not measured
    std::int64_t cuts = 0;   ///< recorded of it since it was last counted
    bool asItCame = false;   ///< not counted or cut yet: `days` since it was measured as goods in
};

/// Why a piece is worth counting today.
struct PieceTask {
    store::PieceId piece;
    Class of;
    double doubt;
    std::optional<int> days;
    bool overdue; ///< beyond the longest time of its class
    std::int64_t cuts;
    double gain;
    bool asItCame = false; ///< `days` since it was measured as goods in, not since a count
};

/// A place to be counted today.
struct PlaceTask {
    std::string place;
    int pieces = 0;
    int overdue = 0;               ///< pieces beyond the longest time of their class
    double wrong = 0;              ///< how many pieces of it are probably wrong
    Money value = Money::minor(0); ///< of all its pieces
    int seconds = 0;
    double gain = 0;              ///< what the plan is made by: value in doubt, more where it is overdue
    std::vector<PieceTask> why{}; ///< its pieces, those that gain most first
};

/// The classes by value and movement together: the first 80 % of their sum are A, up to 95 % B, the rest C.
std::vector<Class> classesOf(const std::vector<Candidate>& candidates);

/// The places whose counting gains most within the time: the exact best choice (knapsack over steps of five
/// seconds), the most worthwhile first. A place is counted whole, since only then is it known what is
/// missing. Where not even one place fits, the best one alone: a count can be left and taken up again. Pure.
std::vector<PlaceTask> planDay(const std::vector<Candidate>& candidates, const store::CountRules& rules,
                               int minutes);

} // namespace riband::shop::counting
