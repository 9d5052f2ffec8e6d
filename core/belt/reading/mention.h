#pragma once

#include "core/belt/reading/tokens.h"

namespace riband::belt::reading {

/// Where the words name a profile, and how surely.
struct Mention {
    enum class Kind : std::uint8_t {
        Profile,    ///< by its full name: `name`
        BarePitch,  ///< "8M": any tooth of that pitch; `name` is "8M"
        Letter,     ///< one letter that a ribbed belt may be written with, too: J, K, L, H, M
        Module,     ///< an old national size by three numbers, "3-63-16": `name` is "m3"
        NotAProfile ///< written like one, but there is none: `name`
    };
    Kind kind;
    std::string name;
    std::size_t first, last; ///< tokens first to last - 1
};

/// The first mention; nothing if no profile is named.
std::optional<Mention> mentionIn(const std::vector<Token>& tokens, const Tables& tables);

/// "2.5": the shortest decimal of a number.
std::string shortDecimal(const SaidNumber& number);

} // namespace riband::belt::reading
