#pragma once

#include "core/belt/drive/two_pulleys.h"
#include "core/belt/tables.h"

namespace riband::belt::drive {

/// What the drive has to do. The service factor is the customer's: how rough the work is.
struct Duty {
    double kilowatts;
    double revolutions; ///< of the first pulley, 1/min
    double serviceFactor = 1;

    double designKilowatts() const { return kilowatts * serviceFactor; }
};
/// By the torque on the first pulley, Nm.
Duty dutyOfTorque(double newtonMetres, double revolutions, double serviceFactor = 1);

/// Plain mechanics, of any belt.
struct Pull {
    double beltSpeed;                 ///< m/s
    double effective;                 ///< N, of the power without the service factor
    double torqueFirst, torqueSecond; ///< Nm, losses left out
};
/// Throws std::invalid_argument unless the revolutions are positive.
Pull pullOf(const TwoPulleys& drive, const Duty& duty);

/// Six teeth carry fully, each one missing takes a fifth (ISO 5295:1987, from memory). Not under zero.
double meshFactor(int teethInMesh);

/// What a width carries by ISO 5295:1987 (constants from memory; the confidence says so). The belt maker's
/// data decide.
struct Carry {
    double referenceKilowatts; ///< of the reference width at this speed; not positive if it runs too fast
    double meshFactor;
    std::optional<double> kilowatts;         ///< that the asked width carries; none if no width was asked
    std::optional<double> share;             ///< of that which the design power takes; over 1: too narrow
    std::optional<double> leastWidth;        ///< mm; none if no width would do
    std::optional<StandardWidth> nextListed; ///< the least listed width that will do, if one does
    std::string standard;
    Confidence confidence;
};
/// Nothing where the tables hold no figures of the profile: then only the belt maker's data tell.
std::optional<Carry> carry(const TwoPulleys& drive, const Run& run, const Duty& duty,
                           const std::optional<Extent>& width, const Tables& tables);

} // namespace riband::belt::drive
