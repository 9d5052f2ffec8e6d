#pragma once

#include "core/belt/identify/measurement.h"
#include "core/belt/tables.h"

#include <vector>

namespace riband::belt::identify {

/// A size in mm and how far makers differ in it (standard deviation).
struct Figure {
    double mean;
    double spread;
};

/// The sizes of a new belt of one profile.
struct Figures {
    double pitch;
    Figure thickness;
    Figure height; ///< of the tooth
    Figure root;   ///< width of the tooth at the land
    /// From the line along which the length is told (pitch line; effective line of a ribbed belt) out to the
    /// back and in to the tips.
    Figure toBack;
    Figure toTips;
    double cords; ///< mm from the effective line of a ribbed belt out to its cords; 0 of a toothed one
};

/// A width in which the profile is sold.
struct SoldWidth {
    double mean;
    double spread; ///< half of its tolerance
};

/// A profile with all that the weighing needs of it.
struct Sizes {
    const Profile* profile;
    Figures figures;
    SeenShape shape;
    std::vector<SoldWidth> widths; ///< empty of a ribbed one
};

/// One for each profile, in the order of the tables. Where no table has a size (old national and a few small
/// profiles) it is taken from the profiles of the same shape by the pitch, and its spread is that of theirs,
/// at least 15 %.
std::vector<Sizes> sizesOf(const Tables& tables);

/// The sizes when this belt's own thickness is measured: then the way from the line to the back is known
/// better, too.
Figures knowingThickness(const Figures& figures, const Measurement& thickness);

/// As a person would name the shape of this profile.
SeenShape seenShape(const Profile& profile);

} // namespace riband::belt::identify
