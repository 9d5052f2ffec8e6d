#pragma once

#include "core/belt/identify/information.h"
#include "core/belt/identify/posterior.h"

namespace riband::belt::identify {

/// The one further measurement that is expected to tell most.
struct Next {
    Measure what;
    int over; ///< PitchOver: pitches; RibsOver: ribs; else 0
    Information information;
};

/// One of the answers that are still possible, and how likely.
struct Answer {
    double probability;
    const Sizes* sizes;
    Extension belt; ///< {0, 0} while only the profile is asked for
};

/// What is asked: which of these? All that a sample has measured is not asked again, but the pitch over more
/// teeth. The pitch is measured over the fewest teeth that are expected to give the share `certain` of the
/// certainty that it can give at all.
struct Inquiry {
    std::vector<Answer> answers; ///< probabilities sum to 1
    bool ofLength;               ///< a reading that tells a length is of use
};
std::optional<Next> nextMeasure(const Inquiry& inquiry, const Sample& sample, const Errors& errors,
                                double certain);

/// What one further measurement is expected to tell.
Information informationOf(const Inquiry& inquiry, const Sample& sample, const Measurement& measurement);

/// Measurements that may be asked for, pitches and ribs over each number.
std::vector<Measurement> mayFollow(const Inquiry& inquiry, const Sample& sample, const Errors& errors);

/// The most pitches that a distance was measured over; 0 if none was.
int pitchesTaken(const Sample& sample);

/// Under so many bits a measurement is not worth the work.
constexpr double leastBits = .05;

} // namespace riband::belt::identify
