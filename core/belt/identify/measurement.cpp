#include "core/belt/identify/measurement.h"

#include "core/belt/identify/instruments.h"

#include <algorithm>
#include <cmath>

namespace riband::belt::identify {
namespace {

using Kind = SampleFault::Kind;

double most(Measure what) {
    switch (what) {
    case Measure::Teeth:
        return 20'000;
    case Measure::RibCount:
        return 10'000;
    default:
        return 100'000;
    }
}

bool isCount(Measure what) { return what == Measure::Teeth || what == Measure::RibCount; }

/// Written so that a NaN fails, too.
bool isPositive(double value) { return value > 0; }

std::optional<Kind> faultOf(const Measurement& measurement) {
    const auto& [what, value, error, over] = measurement;
    if (!isPositive(value) || !isPositive(error)) return Kind::NotPositive;
    if (value > most(what) || error > most(what)) return Kind::TooLarge;
    if (isCount(what) && value != std::floor(value)) return Kind::NotWhole;
    if (what == Measure::PitchOver && over < 1) return Kind::TooFew;
    if (what == Measure::RibsOver && over < 2) return Kind::TooFew;
    if (over > most(Measure::Teeth)) return Kind::TooLarge;
    return std::nullopt;
}

} // namespace

Errors::Errors() {
    for (std::size_t i = 0; i < measureCount; ++i) {
        const auto what = static_cast<Measure>(i);
        of_[i] = errorOf(what, usualInstrument(what), {}, Condition::Unknown);
    }
}

const Measurement* Sample::find(Measure what) const {
    const auto at = std::find_if(measured.begin(), measured.end(),
                                 [what](const Measurement& each) { return each.what == what; });
    return at == measured.end() ? nullptr : &*at;
}

std::optional<SampleFault> faultOf(const Sample& sample) {
    if (sample.measured.empty() && !sample.shape) return SampleFault{Kind::Nothing, Measure::PitchOver};
    for (const Measurement& each : sample.measured)
        if (const auto kind = faultOf(each)) return SampleFault{*kind, each.what, each.over};
    return std::nullopt;
}

bool tellsLength(Measure what) {
    return what == Measure::Teeth || what == Measure::Outside || what == Measure::Inside ||
           what == Measure::Flat || what == Measure::HalfLoop;
}

} // namespace riband::belt::identify
