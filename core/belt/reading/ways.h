#pragma once

#include "core/belt/reading/candidate.h"

namespace riband::belt::reading {

/// One profile that the mention may mean, and how the phrase is then to be taken.
struct Way {
    const Profile* profile;
    Style style;
};

/// All profiles that a phrase may be about, likeliest first; the double-sided ones if it says so. Empty if
/// there is no such profile.
std::vector<Way> waysOf(const Phrase& phrase, const Tables& tables);

} // namespace riband::belt::reading
