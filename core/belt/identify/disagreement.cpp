#include "core/belt/identify/disagreement.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace riband::belt::identify {
namespace {

/// The best belt found so far for one question: the best fit by prior and squares, among those that fit.
struct Best {
    double score = -std::numeric_limits<double>::infinity();
    std::size_t belt = 0;
    void take(double other, std::size_t index) {
        if (other > score) {
            score = other;
            belt = index;
        }
    }
    bool found() const { return std::isfinite(score); }
};

struct Search {
    bool allFit = false;
    std::vector<Best> without; ///< beside the misfits: all others fit
    Best nearest;              ///< least squares over all readings
};

double squares(const std::vector<double>& misfits) {
    double sum = 0;
    for (const double each : misfits)
        sum += each * each;
    return sum;
}

/// A belt on which a measure can't be taken at all is farther off than any figure: teeth are not looked for
/// on a ribbed belt while there is a toothed one.
double farOff(const std::vector<double>& misfits) {
    constexpr double farther = 1e15;
    return squares(misfits) +
           farther * static_cast<double>(std::count(misfits.begin(), misfits.end(), misfitOfImpossible));
}

/// `likely`: logarithm of prior and looks.
void look(const std::vector<double>& misfits, double likely, std::size_t index, Search& search) {
    const auto off = std::count_if(misfits.begin(), misfits.end(), [](double z) { return z > mostMisfit; });
    const double all = squares(misfits);
    search.nearest.take(likely - farOff(misfits) / 2, index);
    if (off == 0) search.allFit = true;
    if (off != 1) return;
    for (std::size_t i = 0; i < misfits.size(); ++i)
        if (misfits[i] > mostMisfit)
            search.without[i].take(likely - (all - misfits[i] * misfits[i]) / 2, index);
}

Search searchAll(const Sample& sample, const Prior& prior) {
    Search search;
    search.without.resize(sample.measured.size() + 1);
    const auto sizes = sizesFor(sample, prior);
    for (std::size_t profile = 0; profile < sizes.size(); ++profile) {
        const auto [begin, end] = prior.rangeOf(profile);
        auto misfits = misfitsOf(sample, sizes[profile]);
        const double looks = std::log(chanceOfLooks(sample, sizes[profile]));
        for (std::size_t i = begin; i < end && !search.allFit; ++i) {
            fitLengths(sample, sizes[profile], extensionOf(prior.belts()[i]), misfits);
            look(misfits, prior.belts()[i].logPrior + looks, i, search);
        }
    }
    return search;
}

/// What this belt would read, new.
double expectedOf(const Measurement& measurement, const Sample& sample, const Sizes& sizes,
                  const Possible& belt) {
    if (tellsLength(measurement.what)) {
        const auto way =
            lengthReading(measurement.what, sizes.figures, sizes.profile->ribbed(), extensionOf(belt));
        return way ? way->atNew : 0;
    }
    const Readings readings = readingsOf(measurement, sizes, sample);
    return readings.ways.empty() ? 0 : readings.ways.front().atNew;
}

Disagreement told(const Sample& sample, const Prior& prior, std::size_t reading, std::size_t belt,
                  bool fitsOtherwise) {
    if (reading == sample.measured.size()) return {Measure::Shape, 0, 0, 0, prior.belt(belt), fitsOtherwise};
    const Measurement& measurement = sample.measured[reading];
    const Sizes sizes = sizesFor(sample, prior)[prior.profileOf(belt)];
    return {measurement.what,  measurement.over,
            measurement.value, expectedOf(measurement, sample, sizes, prior.belts()[belt]),
            prior.belt(belt),  fitsOtherwise};
}

std::vector<Disagreement> ofNearest(const Sample& sample, const Prior& prior, std::size_t nearest) {
    const Sizes sizes = sizesFor(sample, prior)[prior.profileOf(nearest)];
    auto misfits = misfitsOf(sample, sizes);
    fitLengths(sample, sizes, extensionOf(prior.belts()[nearest]), misfits);
    std::vector<Disagreement> all;
    for (std::size_t i = 0; i < misfits.size(); ++i)
        if (misfits[i] > mostMisfit) all.push_back(told(sample, prior, i, nearest, false));
    return all;
}

} // namespace

std::vector<Disagreement> disagreementsOf(const Sample& sample, const Prior& prior) {
    const Search search = searchAll(sample, prior);
    if (search.allFit) return {};
    // A single reading has no others to agree with: the nearest belt says how far it is off.
    const bool alone = sample.measured.size() + (sample.shape ? 1 : 0) == 1;
    std::vector<Disagreement> all;
    for (std::size_t i = 0; i < search.without.size() && !alone; ++i)
        if (search.without[i].found()) all.push_back(told(sample, prior, i, search.without[i].belt, true));
    return all.empty() ? ofNearest(sample, prior, search.nearest.belt) : all;
}

} // namespace riband::belt::identify
