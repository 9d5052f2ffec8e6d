#include "core/belt/identify/old_width.h"

#include "core/belt/identify/wear.h"

#include <algorithm>
#include <cmath>

namespace riband::belt::identify {
namespace {

constexpr double noTolerance = .8; ///< mm, where no standard gives one: the usual of its kind

double inMillimetres(Width width) { return static_cast<double>(width.inMicrometres()) / 1e3; }

Extent tenths(double width) { return Width::micrometres(std::llround(width * 10) * 100); }

/// A ribbed belt is its ribs, at least one.
OldWidth ofRibs(const Profile& profile, double width) {
    const auto ribs = std::max<long long>(1, std::llround(width / profile.pitch.inMillimetres()));
    return {Ribs{ribs}, {}, {}, {}, false};
}

/// By how much the measured width is over (or, negative, under) this one.
double overBy(const StandardWidth& standard, double width) {
    return width - inMillimetres(standard.extent.width());
}

void findNearest(const std::vector<StandardWidth>& widths, double width, OldWidth& old) {
    for (const StandardWidth& each : widths)
        if (!old.standard || std::abs(overBy(each, width)) < std::abs(overBy(*old.standard, width)))
            old.standard = each;
    if (!old.standard) return;
    const bool above = overBy(*old.standard, width) > 0;
    for (const StandardWidth& each : widths) {
        const double over = overBy(each, width);
        if (each.extent == old.standard->extent || (over < 0) != above) continue;
        if (!old.next || std::abs(over) < std::abs(overBy(*old.next, width))) old.next = each;
    }
}

bool fits(const OldWidth& old, double width, double error) {
    const double plus = old.tolerance ? inMillimetres(old.tolerance->plus) : noTolerance;
    const double minus = old.tolerance ? inMillimetres(old.tolerance->minus) : noTolerance;
    const double over = overBy(*old.standard, width);
    return over <= plus + error && over >= -minus - wear::edgeLoss - error;
}

} // namespace

std::optional<OldWidth> oldWidth(const Belt& belt, double width, double error, const Tables& tables) {
    const Profile* profile = tables.profile(belt.profile);
    if (!profile) return std::nullopt;
    if (profile->ribbed()) return ofRibs(*profile, width);
    OldWidth old{tenths(width), {}, {}, {}, false};
    findNearest(tables.widths(belt.profile), width, old);
    if (!old.standard) return old;
    old.tolerance = tables.widthTolerance(belt, old.standard->extent.width());
    old.fits = fits(old, width, error);
    return old;
}

} // namespace riband::belt::identify
