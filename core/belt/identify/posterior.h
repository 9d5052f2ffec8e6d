#pragma once

#include "core/belt/identify/prior.h"
#include "core/belt/identify/readings.h"

namespace riband::belt::identify {

/// How likely each possible belt is after the measurements (Bayes): prior x chance of every reading, summed
/// over the degrees of wear, which all readings share.
struct Posterior {
    std::vector<double> belts;    ///< beside Prior::belts(); sums to 1
    std::vector<double> profiles; ///< beside Prior::sizes(); sums to 1
};
Posterior weigh(const Sample& sample, const Prior& prior);

/// The sizes of the profiles as this sample knows them: with its own thickness where that was measured.
std::vector<Sizes> sizesFor(const Sample& sample, const Prior& prior);

/// How far each reading is off what belts of this profile would give, in standard errors; the shape stands
/// last, where it was seen. Readings that tell a length are 0 until `fitLengths` has looked at one belt.
std::vector<double> misfitsOf(const Sample& sample, const Sizes& sizes);
void fitLengths(const Sample& sample, const Sizes& sizes, const Extension& belt,
                std::vector<double>& misfits);

/// The chance of what was seen and not measured: shape, and teeth on one side or both.
double chanceOfLooks(const Sample& sample, const Sizes& sizes);

Extension extensionOf(const Possible& belt);

} // namespace riband::belt::identify
