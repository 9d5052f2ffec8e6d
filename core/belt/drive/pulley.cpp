#include "core/belt/drive/pulley.h"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace riband::belt::drive {

namespace {

using std::numbers::pi;

constexpr double ribbedBackOverCord = 1; // mm from the cords to the back; common practice, no source

void demandDiameter(double diameter) {
    if (!(diameter > 0)) throw std::invalid_argument{"the diameter of a pulley is positive"};
}

/// The whole number of teeth on this pitch circle, if it is one to `slack`.
std::optional<Teeth> wholeTeeth(double pitchDiameter, const Profile& profile, double slack) {
    const double teeth = pi * pitchDiameter / profile.pitch.inMillimetres();
    const double whole = std::round(teeth);
    if (whole < 1 || std::abs(teeth - whole) > slack) return std::nullopt;
    return Teeth{static_cast<std::int64_t>(whole)};
}

std::optional<double> tipsToCords(const Profile& profile) {
    const ToothForm& form = profile.form;
    if (profile.ribbed() && form.total) return *form.total - ribbedBackOverCord;
    if (!form.height || !form.pitchLine) return std::nullopt;
    return *form.height + *form.pitchLine;
}

std::optional<double> cordsToBack(const Profile& profile) {
    if (profile.ribbed()) return ribbedBackOverCord;
    const auto below = tipsToCords(profile);
    if (!below || !profile.form.total) return std::nullopt;
    return *profile.form.total - *below;
}

std::optional<Pulley> roller(double diameter, std::optional<double> offset) {
    demandDiameter(diameter);
    if (!offset) return std::nullopt;
    return Pulley{diameter + 2 * *offset};
}

} // namespace

Pulley pulleyOf(const Profile& profile, Teeth teeth) {
    if (profile.ribbed()) throw std::invalid_argument{"a ribbed pulley has no teeth"};
    return {static_cast<double>(teeth.count()) * profile.pitch.inMillimetres() / pi, teeth};
}

Pulley pulleyOf(const Profile* profile, double diameter) {
    demandDiameter(diameter);
    if (!profile) return {diameter};
    if (profile->ribbed()) return {diameter + 2 * profile->form.effectiveLine.value_or(0)};
    return {diameter, wholeTeeth(diameter, *profile, 0.05)};
}

std::optional<Teeth> teethOfOutside(const Profile& profile, double diameter) {
    if (profile.ribbed() || !profile.form.pitchLine) return std::nullopt;
    return wholeTeeth(diameter + 2 * *profile.form.pitchLine, profile, 0.125);
}

std::optional<Pulley> rollerUnderTeeth(const Profile& profile, double diameter) {
    return roller(diameter, tipsToCords(profile));
}

std::optional<Pulley> rollerOnBack(const Profile& profile, double diameter) {
    return roller(diameter, cordsToBack(profile));
}

} // namespace riband::belt::drive
