#pragma once

#include <vector>

namespace riband::foresight {

/// What was asked for in each of a row of equal periods, oldest first; none is negative. An expectation, not
/// stock: any unit, and fractions may come up.
using Series = std::vector<double>;

/// How a series behaves (docs/buying.md).
enum class Pattern {
    None,         ///< nothing was asked for
    Smooth,       ///< often and evenly
    Erratic,      ///< often, sizes differ
    Intermittent, ///< seldom, sizes alike
    Lumpy,        ///< seldom, sizes differ
};

struct PatternFigures {
    Pattern pattern = Pattern::None;
    double interval = 0;  ///< ADI: periods for one with demand
    double variation = 0; ///< CV2: squared coefficient of variation (population) of the sizes above nothing
};

/// The cut-offs 1.32 and 0.49 of Syntetos, Boylan, Croston: On the categorization of demand patterns, J.
/// Oper. Res. Soc. 56 (2005) 495-503; both belong to the upper class.
PatternFigures patternOf(const Series& series);

} // namespace riband::foresight
