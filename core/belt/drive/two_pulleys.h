#pragma once

#include "core/belt/drive/pulley.h"
#include "core/measure/outcome.h"

namespace riband::belt::drive {

/// Two pulleys and an open belt round them. The first one drives.
struct TwoPulleys {
    const Profile* profile; ///< of the tables; nullptr: plain diameters
    Pulley first, second;
};

/// A belt running on them.
struct Run {
    double centre; ///< mm
    double length; ///< mm, as the belt's length is told: at the cords, or the effective length if ribbed
    double arcSmallDegrees, arcLargeDegrees;
    double span;                ///< mm, of each free run
    std::optional<double> mesh; ///< teeth in mesh with the smaller pulley, exactly; none without teeth
    double ratio;               ///< turns of the first pulley for one of the second

    /// The whole part of `mesh`: only whole teeth carry.
    std::optional<int> teethInMesh() const;
};

/// Why the drive can't be.
struct DriveFault {
    enum class Kind {
        PulleysOverlap, ///< the pitch circles do, at this distance (mm)
        BeltTooShort,   ///< the pitch circles would overlap with a belt of this length (mm, as told)
    };
    Kind kind;
    double given;
    double least; ///< that works
};

/// The distance at which the pitch circles touch. Flanges need more.
double leastCentre(const TwoPulleys& drive);
Outcome<Run, DriveFault> atDistance(const TwoPulleys& drive, double centre);
/// `length` as the belt's length is told.
Outcome<Run, DriveFault> withLength(const TwoPulleys& drive, double length);

/// From the length as it is told to that of the cords: 2 pi times the effective line of a ribbed profile.
double overTold(const Profile* profile);

} // namespace riband::belt::drive
