#pragma once

#include "core/belt/tables.h"

namespace riband::belt::reading {

inline bool isDigit(char c) { return c >= '0' && c <= '9'; }
/// Bytes of other alphabets count as letters, so that a word of theirs is named whole when it means nothing.
inline bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (static_cast<unsigned char>(c) & 0x80) != 0;
}
std::string capitals(std::string_view text);

/// Signs of other keyboards as plain ones: the multiplication sign, fractions, dashes, inch marks, spaces.
std::string plainSigns(std::string_view text);

/// Words that belts are written with: the letters of a profile, or a trade word.
bool isKnownWord(std::string_view capitals, const Tables& tables);

/// Takes apart a run of letters that holds a cross: "Mx" of 8Mx20 is M and a cross. Each part is a word, or
/// "*" for the cross.
std::vector<std::string_view> partsOfRun(std::string_view run, bool digitBefore, std::string_view behind,
                                         const Tables& tables);

} // namespace riband::belt::reading
