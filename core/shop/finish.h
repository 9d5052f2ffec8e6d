#pragma once

#include "core/cutting/problem.h"

#include <vector>

namespace riband::shop {

/// Finishing a dead end: the listed widths that should be cut for the shelf as well, in the same mounting,
/// from a rest that no listed width can be cut from once it is off the cutter (the trim is paid now). Uses up
/// most of the rest with at most three belts, fewer and wider ones first; widths of which three lie on the
/// shelf are left out. Nothing if the rest is of use or too narrow. Narrow first, as they are cut. `widest`:
/// of the mounting's own belts, cut before. Pure.
std::vector<Extent> finishOf(const cutting::Rules& rules, const std::vector<Extent>& listed,
                             const std::vector<Extent>& onShelf, Extent widest, Extent left);

} // namespace riband::shop
