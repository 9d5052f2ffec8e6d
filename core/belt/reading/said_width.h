#pragma once

#include "core/belt/reading/tokens.h"

namespace riband::belt::reading {

/// One width that a number may mean.
struct WidthRead {
    Width width = Width::micrometres(0);
    bool listed = false;    ///< sold of this profile
    bool plausible = false; ///< not much narrower than the narrowest that is sold
    bool fromLabel = false; ///< 19 said for 19.05
    bool byCode = false;    ///< a width code of an inch profile, or tenths of a millimetre of an S profile
};

/// All widths that the number may mean. `first`: it stands before the length and the profile, where makers of
/// S belts write tenths of a millimetre.
std::vector<WidthRead> saidWidths(const SaidNumber& number, const Profile& profile, bool first,
                                  const Tables& tables);

/// The inch width that a code names: 075 is 3/4 in, 019 is 3/16 in.
Width widthOfCode(std::int64_t hundredths);

} // namespace riband::belt::reading
