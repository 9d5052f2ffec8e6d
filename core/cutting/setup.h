#pragma once

#include "core/belt/tables.h"
#include "core/cutting/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::cutting {

/// A pair of cutting shafts of a cutter and the sleeves that it suits. Millimetres; geometry only.
struct Shaft {
    std::string name;
    double diameterDriven;    ///< mm
    double diameterTension;   ///< mm
    double usable;            ///< mm of shaft that a sleeve may lie on
    double closest, farthest; ///< mm between centres
};

struct Cutter {
    std::string name;
    std::vector<Shaft> shafts{};
    bool cutsSteelCord = false;
    bool cutsAramidCord = false;
    bool cutsPolyurethane = true;
    double gap = 10; ///< mm kept between sleeve and shaft edge (common practice, no source)
};

/// How to set the cutter up for one mounting.
struct SetUp {
    std::size_t shaft;     ///< index into Cutter::shafts
    double centreDistance; ///< mm, just taut, no tension
    double doubt;          ///< mm, of the centre distance
    bool approximate;      ///< ribbed: to 1 mm only
    enum class Remark {
        LittleTension, ///< short sleeve
        NearSmallestShaft,
        ShaftUnderSmallest, ///< thinner than the profile's smallest pulley: do not
        SteelCord,          ///< the cutter is not made for it
        AramidCord,
        Polyurethane,
        CutInTheGroove, ///< ribbed
    };
    std::vector<Remark> remarks;
};

/// Why no shaft of the cutter can take the piece.
enum class SetUpFault { TooWide, TooShort, TooLong, NoShaft };

/// The best shaft for a piece of this belt: it fits, is not under the smallest pulley, and is the thickest
/// such.
Outcome<SetUp, SetUpFault> setUp(const belt::Belt& belt, Extent piece, const belt::Tables& tables,
                                 const Cutter& cutter);

} // namespace riband::cutting
