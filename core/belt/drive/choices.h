#pragma once

#include "core/belt/drive/two_pulleys.h"
#include "core/belt/tables.h"

#include <vector>

namespace riband::belt::drive {

/// What the shop has of a belt; handed in, one entry a belt and construction.
struct Stocked {
    Belt belt;
    Extent widest; ///< the widest belt that one sleeve or remnant still gives; none: nothing does
    std::vector<Extent> ready{}; ///< widths of belts that lie ready
};

/// Whether it gives a belt of this width; of any, if none is said. A ready belt is not cut again.
bool wideEnough(const Stocked& stocked, const std::optional<Extent>& width);

/// How far the drive can be set nearer or farther than wanted; mm, not negative.
struct Range {
    double nearer, farther;
};

/// What the customer has in mind.
struct Wanted {
    double centre;                 ///< mm
    std::optional<Range> range{};  ///< none: not said
    std::optional<Extent> width{}; ///< none: any will do
};

/// A belt that exists, on this drive.
struct Choice {
    Belt belt;                  ///< of the usual construction
    bool listed;                ///< by a maker; else only the shop has it
    std::vector<Stocked> stock; ///< of this length and wide enough, any construction
    Run run;
    double shift;   ///< mm, of the wanted distance: more is farther
    bool reachable; ///< within the range; true if there is none

    bool inStock() const { return !stock.empty(); }
};

struct Choices {
    Run wanted; ///< the belt that would be exactly right, whether it exists or not
    /// First what the drive can take, of that first what is in stock, of that the nearest to the wanted
    /// distance. All within the range; the three next on either side; the next on either side that is in
    /// stock and moves the distance by no more than a tenth (common practice, no source).
    std::vector<Choice> belts;
    /// The distances of the shortest and the longest belt that exists; none if none does.
    std::optional<double> least, greatest;

    /// A belt is within the range; without one, the wanted distance is between least and greatest.
    bool any;
};

/// The drive must have a profile of the tables: throws std::invalid_argument else.
Outcome<Choices, DriveFault> beltsFor(const TwoPulleys& drive, const Wanted& wanted, const Tables& tables,
                                      const std::vector<Stocked>& stock = {});

} // namespace riband::belt::drive
