#pragma once

#include "core/belt/drive/choices.h"

#include <map>

namespace riband::belt::drive {

/// A length with what is known of it.
struct Existing {
    std::optional<Teeth> teeth;
    bool listed = false;
    std::vector<Stocked> stock; ///< wide enough
};

/// What the lists and the shop have of a profile, short first. A belt that the shop has too narrow exists all
/// the same if a maker lists it.
std::map<Length, Existing> existing(const Profile& profile, const std::optional<Extent>& width,
                                    const Tables& tables, const std::vector<Stocked>& stock);

} // namespace riband::belt::drive
