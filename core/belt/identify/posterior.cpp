#include "core/belt/identify/posterior.h"

#include <algorithm>
#include <cmath>
#include <numeric>

/// A profile's own readings (pitch, tooth, width) are weighed once for each degree of wear; then each belt of
/// it adds those that tell a length.
namespace riband::belt::identify {
namespace {

constexpr double leastChance = 1e-300; ///< so that a logarithm exists, whatever twenty readings say
constexpr double sideSeen = .9995; ///< how often a person sees rightly whether a belt has teeth on both sides
constexpr double sideUnsaid =
    .2; ///< how often nothing is said of teeth on both sides (common practice, no source)
constexpr double unheardOf = .004; ///< nobody takes one such shape for the other

double logOfSum(const std::vector<double>& logs) {
    const double most = *std::max_element(logs.begin(), logs.end());
    double sum = 0;
    for (const double each : logs)
        sum += std::exp(each - most);
    return most + std::log(sum);
}

/// For each degree of wear: its weight and the chances of all readings that don't depend on the length.
std::vector<double> weighProfile(const Sample& sample, const Sizes& sizes) {
    std::vector<double> chances;
    for (const WearNode& node : wearNodes(sample.condition)) {
        double product = node.weight * chanceOfLooks(sample, sizes);
        for (const Measurement& each : sample.measured)
            if (!tellsLength(each.what))
                product *= chance(readingsOf(each, sizes, sample), each.value, each.error, node.wear);
        chances.push_back(product);
    }
    return chances;
}

/// Readings that tell a length; of a piece by the metre there are none.
std::vector<Measurement> lengthsOf(const Sample& sample) {
    std::vector<Measurement> lengths;
    if (sample.openEnded) return lengths;
    for (const Measurement& each : sample.measured)
        if (tellsLength(each.what)) lengths.push_back(each);
    return lengths;
}

/// The chances of one belt, summed over the degrees of wear; `chances` are those of its profile.
double weighBelt(const std::vector<Measurement>& lengths, const Sizes& sizes, const Extension& belt,
                 const std::vector<WearNode>& nodes, const std::vector<double>& chances) {
    std::vector<Aim> aims;
    aims.reserve(lengths.size());
    double none = 1;
    for (const Measurement& each : lengths) {
        const auto way = lengthReading(each.what, sizes.figures, sizes.profile->ribbed(), belt);
        if (way)
            aims.emplace_back(*way, each.value, each.error);
        else
            none *= impossible;
    }
    double sum = 0;
    for (std::size_t k = 0; k < chances.size(); ++k) {
        double product = none * chances[k];
        for (const Aim& aim : aims)
            product *= aim.chance(nodes[k].wear);
        sum += product;
    }
    return sum;
}

void normalise(Posterior& posterior, const Prior& prior) {
    const double all = logOfSum(posterior.belts);
    for (std::size_t profile = 0; profile < prior.sizes().size(); ++profile) {
        double sum = 0;
        const auto [begin, end] = prior.rangeOf(profile);
        for (std::size_t i = begin; i < end; ++i)
            sum += posterior.belts[i] = std::exp(posterior.belts[i] - all);
        posterior.profiles.push_back(sum);
    }
}

} // namespace

double chanceOfLooks(const Sample& sample, const Sizes& sizes) {
    double product = 1;
    if (sample.shape) product *= chanceOfShape(*sample.shape, sizes.shape);
    if (sample.doubleSided)
        product *= *sample.doubleSided == sizes.profile->doubleSided ? sideSeen : 1 - sideSeen;
    else if (sizes.profile->doubleSided)
        product *= sideUnsaid;
    return product;
}

Extension extensionOf(const Possible& belt) {
    return {belt.length.inMillimetres(), static_cast<double>(belt.teeth)};
}

std::vector<Sizes> sizesFor(const Sample& sample, const Prior& prior) {
    std::vector<Sizes> sizes = prior.sizes();
    if (const Measurement* thickness = sample.find(Measure::Thickness))
        for (Sizes& each : sizes) {
            // What was read stands against the usual thickness once, in its own likelihood.
            const Figure usual = each.figures.thickness;
            each.figures = knowingThickness(each.figures, *thickness);
            each.figures.thickness = usual;
        }
    return sizes;
}

Posterior weigh(const Sample& sample, const Prior& prior) {
    const auto sizes = sizesFor(sample, prior);
    const auto lengths = lengthsOf(sample);
    const auto& nodes = wearNodes(sample.condition);
    Posterior posterior;
    posterior.belts.resize(prior.belts().size());
    for (std::size_t profile = 0; profile < sizes.size(); ++profile) {
        const auto chances = weighProfile(sample, sizes[profile]);
        const double whole = std::accumulate(chances.begin(), chances.end(), 0.0);
        const auto [begin, end] = prior.rangeOf(profile);
        for (std::size_t i = begin; i < end; ++i) {
            const Possible& belt = prior.belts()[i];
            const double given = lengths.empty()
                                     ? whole
                                     : weighBelt(lengths, sizes[profile], extensionOf(belt), nodes, chances);
            posterior.belts[i] = belt.logPrior + std::log(std::max(given, leastChance));
        }
    }
    normalise(posterior, prior);
    return posterior;
}

std::vector<double> misfitsOf(const Sample& sample, const Sizes& sizes) {
    const double most = mostWear(sample.condition);
    std::vector<double> misfits;
    for (const Measurement& each : sample.measured)
        misfits.push_back(tellsLength(each.what)
                              ? 0
                              : misfit(readingsOf(each, sizes, sample), each.value, each.error, most));
    if (sample.shape)
        misfits.push_back(chanceOfShape(*sample.shape, sizes.shape) < unheardOf ? misfitOfImpossible : 0);
    return misfits;
}

void fitLengths(const Sample& sample, const Sizes& sizes, const Extension& belt,
                std::vector<double>& misfits) {
    if (sample.openEnded) return;
    const double most = mostWear(sample.condition);
    for (std::size_t i = 0; i < sample.measured.size(); ++i) {
        const Measurement& each = sample.measured[i];
        if (!tellsLength(each.what)) continue;
        const auto way = lengthReading(each.what, sizes.figures, sizes.profile->ribbed(), belt);
        misfits[i] = way ? misfit(*way, each.value, each.error, most) : misfitOfImpossible;
    }
}

} // namespace riband::belt::identify
