#pragma once

#include "core/belt/drive/route.h"

namespace riband::belt::drive {

/// A pulley as a person says it: by its teeth or by its diameter in mm.
struct SaidPulley {
    std::optional<Teeth> teeth{};
    std::optional<double> diameter{};
    Side side = Side::Inside;
};

enum class PulleyFault {
    NothingOrBoth,    ///< either teeth or a diameter is needed
    NotPositive,      ///< a diameter is more than nothing
    TeethNeedProfile, ///< without a profile nobody knows their pitch
    RibsHaveNoTeeth,
    BackHasNoTeeth, ///< of a single-sided belt
    NoThickness,    ///< no source gives the form of the profile, so where the cords run is not known
};

/// A pulley of two: teeth, or its pitch diameter (effective if ribbed).
Outcome<Pulley, PulleyFault> pulleyAsSaid(const Profile* profile, const SaidPulley& said);
/// A pulley of a layout: a toothed belt runs over a bare diameter as over a smooth roller.
Outcome<Pulley, PulleyFault> pulleyOfLayout(const Profile* profile, const SaidPulley& said);

} // namespace riband::belt::drive
