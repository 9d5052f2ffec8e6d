#include "core/belt/identify/next.h"

#include <algorithm>
#include <cmath>

namespace riband::belt::identify {
namespace {

constexpr int runs[] = {10, 20, 50, 100};
constexpr int longestUnasked = 50; ///< pitches, while nobody knows how long the belt is
constexpr int ribsToMeasure = 5;

/// A closed loop lies flat over half of its length at the most.
int longestRun(const Inquiry& inquiry) {
    double teeth = 0;
    for (const Answer& each : inquiry.answers)
        if (each.probability > .01) teeth = std::max(teeth, each.belt.teeth);
    return teeth == 0 ? longestUnasked : std::max(runs[0], static_cast<int>(teeth / 2));
}

void addRuns(const Inquiry& inquiry, const Sample& sample, double error, std::vector<Measurement>& all) {
    const int longest = longestRun(inquiry), taken = pitchesTaken(sample);
    for (const int run : runs)
        if (run > taken && run <= longest) all.push_back({Measure::PitchOver, 0, error, run});
}

bool wanted(Measure what, const Inquiry& inquiry, const Sample& sample) {
    if (sample.find(what)) return false;
    if (tellsLength(what) && (!inquiry.ofLength || sample.openEnded)) return false;
    // Second best beside the tape round the back.
    const bool second = what == Measure::Inside || what == Measure::HalfLoop;
    return !second || sample.find(Measure::Outside);
}

/// The reading that an answer foretells: wear as its mean, with its spread.
std::optional<Outlook::Normal> foretold(const Measurement& measurement, const Answer& answer,
                                        const Sample& sample) {
    const Sizes& sizes = *answer.sizes;
    std::optional<Way> way;
    if (tellsLength(measurement.what)) {
        way = lengthReading(measurement.what, sizes.figures, sizes.profile->ribbed(), answer.belt);
    } else {
        const Readings readings = readingsOf(measurement, sizes, sample);
        if (!readings.ways.empty()) way = readings.ways.front();
    }
    if (!way) return std::nullopt;
    const WearMoments worn = wearMoments(sample.condition);
    return Outlook::Normal{way->atNew + way->perWear * worn.mean,
                           std::sqrt(way->spread * way->spread + measurement.error * measurement.error +
                                     way->perWear * way->perWear * worn.variance)};
}

Information ofShape(const Inquiry& inquiry) {
    std::vector<double> probabilities;
    std::vector<std::vector<double>> chances;
    for (const Answer& answer : inquiry.answers) {
        probabilities.push_back(answer.probability);
        chances.emplace_back();
        for (std::size_t shape = 0; shape < shapeCount; ++shape)
            chances.back().push_back(chanceOfShape(static_cast<SeenShape>(shape), answer.sizes->shape));
    }
    return informationOf(probabilities, chances);
}

Next fewestPitches(const std::vector<Next>& pitches, double certain) {
    double best = 0;
    for (const Next& each : pitches)
        best = std::max(best, each.information.certainty);
    const double enough = certain * best;
    return *std::find_if(pitches.begin(), pitches.end(),
                         [enough](const Next& each) { return each.information.certainty >= enough; });
}

} // namespace

int pitchesTaken(const Sample& sample) {
    int taken = 0;
    for (const Measurement& each : sample.measured)
        if (each.what == Measure::PitchOver) taken = std::max(taken, each.over);
    return taken;
}

std::vector<Measurement> mayFollow(const Inquiry& inquiry, const Sample& sample, const Errors& errors) {
    std::vector<Measurement> all;
    addRuns(inquiry, sample, errors.of(Measure::PitchOver), all);
    for (const Measure what : {Measure::Teeth, Measure::Outside, Measure::Inside, Measure::HalfLoop,
                               Measure::Thickness, Measure::ToothHeight, Measure::ToothRoot})
        if (wanted(what, inquiry, sample)) all.push_back({what, 0, errors.of(what)});
    if (!sample.shape) all.push_back({Measure::Shape, 0, errors.of(Measure::Shape)});
    if (!sample.find(Measure::RibsOver))
        all.push_back({Measure::RibsOver, 0, errors.of(Measure::RibsOver), ribsToMeasure});
    return all;
}

Information informationOf(const Inquiry& inquiry, const Sample& sample, const Measurement& measurement) {
    if (measurement.what == Measure::Shape) return ofShape(inquiry);
    std::vector<Outlook> outlooks;
    for (const Answer& answer : inquiry.answers)
        outlooks.push_back({answer.probability, foretold(measurement, answer, sample)});
    return informationOf(outlooks,
                         measurement.what == Measure::Teeth ? Scale::WholeNumbers : Scale::Continuous);
}

std::optional<Next> nextMeasure(const Inquiry& inquiry, const Sample& sample, const Errors& errors,
                                double certain) {
    std::optional<Next> best;
    std::vector<Next> pitches;
    for (const Measurement& each : mayFollow(inquiry, sample, errors)) {
        const Next next{each.what, each.over, informationOf(inquiry, sample, each)};
        if (each.what == Measure::PitchOver) pitches.push_back(next);
        if (!best || next.information.bits > best->information.bits + 1e-9) best = next;
    }
    if (!best || best->information.bits < leastBits) return std::nullopt;
    return best->what == Measure::PitchOver ? fewestPitches(pitches, certain) : best;
}

} // namespace riband::belt::identify
