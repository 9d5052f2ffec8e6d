#pragma once

#include "core/belt/drive/choices.h"

namespace riband::belt::drive {

// What can be offered when a belt is not here. Never another profile: its teeth would not fit.

/// The belts beside this one and what each would do to the distance of these pulleys. As beltsFor round the
/// distance that the belt itself has, without the belt.
Outcome<Choices, DriveFault> otherLengths(const TwoPulleys& drive, const Belt& belt,
                                          const std::optional<Range>& range,
                                          const std::optional<Extent>& width, const Tables& tables,
                                          const std::vector<Stocked>& stock = {});

/// A neighbouring length where the pulleys are not known.
struct Neighbour {
    Belt belt; ///< of the usual construction
    /// mm: the distance changes by so much at least, half of the difference in length. Exact for equal
    /// pulleys, hardly more where they are far apart.
    double shift;
    std::vector<Stocked> stock;
};
/// The three lengths next to it on either side that exist, and the next on either side that is in stock and
/// no more than a tenth longer or shorter (common practice, no source): those in stock first, then the
/// nearest.
std::vector<Neighbour> neighbours(const Belt& belt, const std::optional<Extent>& width, const Tables& tables,
                                  const std::vector<Stocked>& stock = {});

/// A wider or narrower belt of the same length.
struct OtherWidth {
    Extent width;
    std::string label; ///< as printed; the count of ribs
    double share;      ///< of the pull that the asked width carries
    Confidence how;    ///< of the share
};
/// Up to two listed widths narrower and two wider; of a ribbed belt so many ribs. The share goes by the
/// reference pull of the profile where the tables hold one (as its width factor does), else by width alone
/// (common practice), by ribs of a ribbed belt.
std::vector<OtherWidth> otherWidths(const Profile& profile, Extent asked, const Tables& tables);

} // namespace riband::belt::drive
