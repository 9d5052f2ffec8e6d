#include "core/belt/drive/load.h"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace riband::belt::drive {

namespace {

using std::numbers::pi;

double mm(Width width) { return static_cast<double>(width.inMicrometres()) / 1000; }

/// ISO 5295: the allowed pull less what the belt's own mass takes at this speed (m/s), as power.
double referencePower(const ReferencePull& pull, double speed) {
    return (pull.newtons - pull.kilogramsPerMetre * speed * speed) * speed / 1000;
}

double widthFactor(const ReferencePull& pull, double millimetres) {
    return std::pow(millimetres / mm(pull.width), pull.exponent);
}

double leastWidth(const ReferencePull& pull, double powerOverReference) {
    return mm(pull.width) * std::pow(powerOverReference, 1 / pull.exponent);
}

std::optional<StandardWidth> nextListed(const std::string& profile, double least, const Tables& tables) {
    for (const StandardWidth& width : tables.widths(profile))
        if (static_cast<double>(width.extent.count()) / 1000 >= least) return width;
    return std::nullopt;
}

} // namespace

Duty dutyOfTorque(double newtonMetres, double revolutions, double serviceFactor) {
    return {newtonMetres * 2 * pi * revolutions / 60'000, revolutions, serviceFactor};
}

Pull pullOf(const TwoPulleys& drive, const Duty& duty) {
    if (!(duty.revolutions > 0)) throw std::invalid_argument{"a drive that carries power turns"};
    const double speed = pi * drive.first.pitchDiameter * duty.revolutions / 60'000;
    const double effective = 1000 * duty.kilowatts / speed;
    return {speed, effective, effective * drive.first.pitchDiameter / 2000,
            effective * drive.second.pitchDiameter / 2000};
}

double meshFactor(int teethInMesh) {
    if (teethInMesh >= 6) return 1;
    return teethInMesh <= 1 ? 0 : 1 - 0.2 * (6 - teethInMesh);
}

std::optional<Carry> carry(const TwoPulleys& drive, const Run& run, const Duty& duty,
                           const std::optional<Extent>& width, const Tables& tables) {
    const ReferencePull* pull = drive.profile ? tables.referencePull(drive.profile->name) : nullptr;
    if (!pull || !run.mesh) return std::nullopt;
    const double reference = referencePower(*pull, pullOf(drive, duty).beltSpeed);
    Carry carry{reference, meshFactor(*run.teethInMesh()), {}, {}, {}, {}, pull->standard, pull->confidence};
    const double full = reference * carry.meshFactor; // of the reference width on these pulleys
    if (width) carry.kilowatts = full * widthFactor(*pull, static_cast<double>(width->count()) / 1000);
    if (full <= 0) return carry;
    if (width) carry.share = duty.designKilowatts() / *carry.kilowatts;
    carry.leastWidth = leastWidth(*pull, duty.designKilowatts() / full);
    carry.nextListed = nextListed(drive.profile->name, *carry.leastWidth, tables);
    return carry;
}

} // namespace riband::belt::drive
