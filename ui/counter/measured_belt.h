#pragma once

#include "core/belt/belt.h"
#include "core/measure/extent.h"

#include <QString>

#include <optional>
#include <string>

namespace riband::ui {

/// What the measurements on the customer's old belt came to.
struct MeasuredBelt {
    std::string profile;
    std::optional<belt::Belt> belt; ///< nothing while its length was not measured
    std::optional<Extent> width;    ///< to offer; nothing if it was not measured
    double probability;
    bool byTheMetre = false; ///< open-ended: no sleeve gives it
    std::string rival{};     ///< what it may be as well, where that is in doubt
};

/// What to type for it where a belt is asked for; only the profile while its length was not measured.
QString beltWords(const MeasuredBelt& measured);

} // namespace riband::ui
