#pragma once

#include "core/belt/identify/figures.h"
#include "core/belt/identify/wear.h"

#include <vector>

namespace riband::belt::identify {

/// One way in which a belt gives a reading: `atNew + perWear x wear`, spread by what belts of the profile
/// differ in (not by the error of reading).
struct Way {
    double weight;
    double atNew;
    double perWear;
    double spread;
};

/// All ways of one belt. No way at all: the measure can't be taken on it (the pitch of a belt without teeth).
struct Readings {
    std::vector<Way> ways;
    double elsewhere = 0; ///< chance per mm of a reading anywhere else: a width cut to order
    bool possible() const { return !ways.empty() || elsewhere > 0; }
};

/// For what does not depend on the length of the belt: all measures but tellsLength() and Shape.
Readings readingsOf(const Measurement& measurement, const Sizes& sizes, const Sample& sample);

/// How long a belt is.
struct Extension {
    double length; ///< mm: pitch length, or effective length
    double teeth;  ///< 0 of a ribbed belt
};
/// For the measures that tell a length. Nothing: can't be taken (teeth of a ribbed belt).
std::optional<Way> lengthReading(Measure what, const Figures& figures, bool ribbed, const Extension& belt);

/// The chance per mm of a reading from a belt so far worn. Now and then (1 in 200) a reading is a slip,
/// anywhere about its place; so no chance is ever nothing.
double chance(const Way& way, double value, double error, double wear);
/// The same, for a reading that many degrees of wear are asked about.
class Aim {
public:
    Aim(const Way& way, double value, double error);
    double chance(double wear) const;

private:
    double off_, perWear_, sharpness_;
};
double chance(const Readings& readings, double value, double error, double wear);
/// What stands in its place for a measure that can't be taken on the belt.
constexpr double impossible = 1e-17;

/// How many standard errors the reading is away from the nearest that a belt, new or worn, would give.
double misfit(const Way& way, double value, double error, double mostWear);
double misfit(const Readings& readings, double value, double error, double mostWear);
constexpr double misfitOfImpossible = 9;

/// The chance that a person names the shape `seen` for `is`. Common practice, no source: T for AT and AT for
/// T, H for G and G for H are confused most.
double chanceOfShape(SeenShape seen, SeenShape is);

} // namespace riband::belt::identify
