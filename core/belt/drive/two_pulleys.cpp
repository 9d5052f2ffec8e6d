#include "core/belt/drive/two_pulleys.h"

#include "core/belt/drive/open_belt.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace riband::belt::drive {

namespace {

using std::numbers::pi;

// Twenty exact teeth must not become nineteen by the last digit of a double.
constexpr double lastDigit = 1e-9;

double degrees(double radians) { return radians * 180 / pi; }

double ratioOf(const TwoPulleys& drive) {
    if (!drive.first.teeth || !drive.second.teeth)
        return drive.second.pitchDiameter / drive.first.pitchDiameter;
    return static_cast<double>(drive.second.teeth->count()) / static_cast<double>(drive.first.teeth->count());
}

std::optional<double> meshOf(const TwoPulleys& drive, double arcSmall) {
    if (!drive.profile || drive.profile->ribbed()) return std::nullopt;
    const double small = std::min(drive.first.pitchDiameter, drive.second.pitchDiameter);
    return arcSmall * small / 2 / drive.profile->pitch.inMillimetres();
}

/// Of a distance at which the circles do not overlap.
Run runAt(const TwoPulleys& drive, double centre) {
    const OpenBelt belt = openBelt(drive.first.pitchDiameter, drive.second.pitchDiameter, centre);
    return {centre,    belt.length - overTold(drive.profile), degrees(belt.arcSmall), degrees(belt.arcLarge),
            belt.span, meshOf(drive, belt.arcSmall),          ratioOf(drive)};
}

} // namespace

std::optional<int> Run::teethInMesh() const {
    if (!mesh) return std::nullopt;
    return static_cast<int>(std::floor(*mesh + lastDigit));
}

double overTold(const Profile* profile) {
    return profile && profile->ribbed() ? 2 * pi * profile->form.effectiveLine.value_or(0) : 0;
}

double leastCentre(const TwoPulleys& drive) {
    return (drive.first.pitchDiameter + drive.second.pitchDiameter) / 2;
}

Outcome<Run, DriveFault> atDistance(const TwoPulleys& drive, double centre) {
    const double least = leastCentre(drive);
    if (!(centre >= least)) return DriveFault{DriveFault::Kind::PulleysOverlap, centre, least};
    return runAt(drive, centre);
}

Outcome<Run, DriveFault> withLength(const TwoPulleys& drive, double length) {
    const double least = leastCentre(drive);
    const auto centre = centreDistance(drive.first.pitchDiameter, drive.second.pitchDiameter,
                                       length + overTold(drive.profile));
    if (!centre || *centre < least)
        return DriveFault{DriveFault::Kind::BeltTooShort, length, runAt(drive, least).length};
    Run run = runAt(drive, *centre);
    run.length = length; // the distance gives it back to the last digit but one
    return run;
}

} // namespace riband::belt::drive
