#pragma once

#include "core/belt/drive/choices.h"
#include "core/shop/shop.h"

namespace riband::shop {

/// What the shop could give of each belt of a profile now: the widest belt that one of its sleeves or
/// remnants gives after trim and end, promises left out, and the ready belts that nobody waits for. Belts of
/// which there is nothing are left out.
std::vector<belt::drive::Stocked> cuttable(const Shop& shop, const std::string& profile);

} // namespace riband::shop
