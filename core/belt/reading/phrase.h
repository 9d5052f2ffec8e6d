#pragma once

#include "core/belt/reading/mention.h"

namespace riband::belt::reading {

/// What a text says, sorted: the profile, the numbers whose role was said, and those whose role is open.
struct Phrase {
    Mention mention{};
    std::vector<SaidNumber> open; ///< in the order said
    std::size_t before = 0;       ///< how many of the open numbers stand before the profile
    bool gluedBefore = false;     ///< the number before the profile touches it: 6PJ, 960H8M50
    bool gluedAfter = false;
    bool slashAfter = false; ///< a slash between the profile and the number behind it: 16 T5 / 480
    std::optional<SaidNumber> teeth, ribs, quantity, width, length;
    bool crossFirst = false; ///< "3 x ...": perhaps a quantity
    bool crossLast = false;  ///< "... x3"
    bool doubleSided = false;
    bool saidRibbed = false, saidToothed = false;
    char tooth = 0; ///< H, R, S, G said apart from the pitch
    std::string construction;
};

/// Nothing of the text is left out: a word that means nothing is a fault.
Outcome<Phrase, ReadFault> phraseOf(const Tokens& tokens, const Tables& tables);

} // namespace riband::belt::reading
