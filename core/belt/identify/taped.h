#pragma once

#include "core/belt/identify/measurement.h"
#include "core/belt/tables.h"

#include <vector>

namespace riband::belt::identify {

/// How a length that was measured by tape goes with the belt that is wanted.
struct Taped {
    /// The way of measuring that it fits: Flat (the length that the belt is named by), Outside or Inside; the
    /// one that it comes nearest to, if it fits none.
    Measure how;
    bool fits;
    double measured; ///< mm
    double expected; ///< of a new belt, measured that way
    double allowed;  ///< mm by which it may be off: two errors of the tape, stretch, and what belts differ in
    /// Made lengths of the profile that it fits, nearest first; without the wanted one. Of a reading that
    /// fits the wanted one: those that fit the same way of measuring, too, so that the tape can't tell them
    /// apart.
    std::vector<Belt> others;
    double by() const { return measured - expected; }
};

/// Flat is tried first, since a length is told by it. Nothing if the profile is not known. `measured` and
/// `error` (standard error of the tape) in mm, more than nothing.
std::optional<Taped> taped(const Belt& belt, double measured, double error, const Tables& tables);

} // namespace riband::belt::identify
