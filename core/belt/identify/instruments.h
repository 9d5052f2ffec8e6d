#pragma once

#include "core/belt/identify/measurement.h"

namespace riband::belt::identify {

/// What a measure is taken with.
enum class Instrument : std::uint8_t { Calliper, Rule, Tape };
constexpr std::size_t instrumentCount = 3;

/// Standard errors of reading in mm, as a shop knows them of its own tools and hands. Common practice, no
/// source; the facts of the trade say 2 to 3 mm for the tape.
struct Instruments {
    double calliper = .1;
    double rule = .5;
    double tape = 2;
    double worn = .2; ///< what a worn belt adds: rounded tips, frayed edges
    double of(Instrument instrument) const;
    friend bool operator==(const Instruments&, const Instruments&) = default;
};

/// What a measure is usually taken with. Of a count and of the shape: nothing to be read, so Calliper.
Instrument usualInstrument(Measure what);

/// The error of a measure: that of the instrument, that of holding it (a tape round a bend, where a round
/// flank begins), and of a used belt that of its wear, added as squares. A count is one off once in fifty,
/// whatever it is counted with.
double errorOf(Measure what, Instrument instrument, const Instruments& shop, Condition condition);

/// The errors of all measures taken with what is usual.
Errors errorsOf(const Instruments& shop, Condition condition);

} // namespace riband::belt::identify
