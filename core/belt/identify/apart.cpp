#include "core/belt/identify/apart.h"

#include <cmath>

namespace riband::belt::identify {

Apart apart(const Sizes& first, const Sizes& second) {
    const Figures &a = first.figures, &b = second.figures;
    const bool comparable = first.profile->ribbed() == second.profile->ribbed();
    return {first.profile,
            second.profile,
            comparable ? std::abs(a.pitch - b.pitch) : 0,
            std::abs(a.thickness.mean - b.thickness.mean),
            std::abs(a.height.mean - b.height.mean),
            std::abs(a.root.mean - b.root.mean),
            first.shape == second.shape};
}

int pitchesFor(const Apart& apart, double millimetres) {
    if (apart.perPitch <= 0) return 0;
    // A hair less, so that 0.8 mm over 10 pitches of 0.08 is 10 and not 11.
    return static_cast<int>(std::ceil(millimetres / apart.perPitch - 1e-9));
}

} // namespace riband::belt::identify
