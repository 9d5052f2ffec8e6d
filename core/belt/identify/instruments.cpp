#include "core/belt/identify/instruments.h"

#include <cmath>

namespace riband::belt::identify {
namespace {

constexpr double countError = .33;

bool isCount(Measure what) { return what == Measure::Teeth || what == Measure::RibCount; }

/// Squares of mm (common practice, no source): so that calliper, rule and tape give 0.15 for the height of a
/// tooth, 0.2 for its root and ribs, 0.3 for a width, 3 for a tape round the belt.
double holding(Measure what) {
    switch (what) {
    case Measure::Outside:
    case Measure::Inside:
        return 5;
    case Measure::ToothHeight:
        return .0125;
    case Measure::ToothRoot: // where a round flank begins is a matter of taste
    case Measure::RibsOver:
        return .03;
    case Measure::Width:
        return .08;
    default:
        return 0;
    }
}

double square(double x) { return x * x; }

} // namespace

double Instruments::of(Instrument instrument) const {
    switch (instrument) {
    case Instrument::Calliper:
        return calliper;
    case Instrument::Rule:
        return rule;
    case Instrument::Tape:
        return tape;
    }
    return calliper;
}

Instrument usualInstrument(Measure what) {
    switch (what) {
    case Measure::PitchOver:
        return Instrument::Rule;
    case Measure::Outside:
    case Measure::Inside:
    case Measure::Flat:
    case Measure::HalfLoop:
        return Instrument::Tape;
    default:
        return Instrument::Calliper;
    }
}

double errorOf(Measure what, Instrument instrument, const Instruments& shop, Condition condition) {
    if (isCount(what)) return countError;
    const double worn = condition == Condition::Used ? shop.worn : 0;
    return std::sqrt(square(shop.of(instrument)) + holding(what) + square(worn));
}

Errors errorsOf(const Instruments& shop, Condition condition) {
    Errors errors;
    for (std::size_t i = 0; i < measureCount; ++i) {
        const auto what = static_cast<Measure>(i);
        errors.set(what, errorOf(what, usualInstrument(what), shop, condition));
    }
    return errors;
}

} // namespace riband::belt::identify
