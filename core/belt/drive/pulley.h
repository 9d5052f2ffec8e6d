#pragma once

#include "core/belt/profile.h"

#include <optional>

namespace riband::belt::drive {

/// A pulley as the cords see it.
struct Pulley {
    double pitchDiameter; ///< mm
    std::optional<Teeth> teeth{};
};

/// Teeth x pitch make its pitch circle. Throws std::invalid_argument for a ribbed profile.
Pulley pulleyOf(const Profile& profile, Teeth teeth);

/// By its diameter in mm: the pitch diameter of a toothed pulley, the effective diameter of a ribbed one (the
/// cords run `effectiveLine` above it); without a profile the diameter at the cords. A toothed pulley gets
/// its teeth where the diameter makes a whole number of them, to a twentieth of a tooth. Throws
/// std::invalid_argument unless the diameter is positive.
Pulley pulleyOf(const Profile* profile, double diameter);

/// Who measures with a calliper measures the outside, which is the pitch diameter less twice the pitch line.
/// The teeth that this diameter would then have; nothing if it would not be a whole number, to an eighth of a
/// tooth, for makers turn T pulleys up to 0.2 mm apart.
std::optional<Teeth> teethOfOutside(const Profile& profile, double diameter);

/// A smooth roller that runs under the teeth: their tips lie on it. Nothing where no source gives the form.
std::optional<Pulley> rollerUnderTeeth(const Profile& profile, double diameter);
/// A smooth roller on the back of the belt. Nothing where no source gives the form.
std::optional<Pulley> rollerOnBack(const Profile& profile, double diameter);

} // namespace riband::belt::drive
