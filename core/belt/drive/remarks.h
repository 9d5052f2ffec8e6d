#pragma once

#include "core/belt/drive/two_pulleys.h"

#include <vector>

namespace riband::belt::drive {

/// What a person should know of a drive before the belt is sold. None of it forbids: the belt maker's data
/// do.
struct Remark {
    enum class Kind {
        FewTeeth,            ///< under six in mesh with the smaller pulley: each one missing takes a fifth
        PulleyUnderSmallest, ///< `pulley` has fewer teeth than the smallest of the profile, `teeth`
        TooClose,            ///< nearer than half of both diameters and 15 mm: flanges may touch (one source)
        VeryFar,             ///< over twice both diameters: long runs flutter (one source)
        NoWholeTeeth,        ///< the diameter of `pulley` is no pitch circle of whole teeth
        LooksLikeOutside,    ///< but it would be one of `teeth`, were it the outside
    };
    Kind kind;
    int pulley = 0;               ///< 1 or 2; 0: the drive
    std::optional<Teeth> teeth{}; ///< where the kind names them
};
std::vector<Remark> remarksOn(const TwoPulleys& drive, const Run& run);

} // namespace riband::belt::drive
