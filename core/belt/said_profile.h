#pragma once

#include "core/belt/tables.h"

#include <string_view>
#include <vector>

namespace riband::belt {

/// The profiles that may be meant by a name alone, capitals or not: the one that is written so, else those
/// that only lack their letter ("5M": H5M, R5M, S5M, G5M). None: it is no profile.
std::vector<const Profile*> profilesSaid(std::string_view name, const Tables& tables);

} // namespace riband::belt
