#pragma once

#include "core/belt/reader.h"

namespace riband::belt::reading {

enum class Measure : std::uint8_t { None, Millimetre, Centimetre, Metre, Inch };

/// A number as it was said, exact.
struct SaidNumber {
    std::int64_t millionths = 0;
    int decimals = 0;
    bool negative = false;
    bool leadingZero = false; ///< "075": a width code, never a length
    bool fraction = false;    ///< "3/4": inches
    Measure unit = Measure::None;
    std::string said;

    /// Written without decimals; "25.0" is not, for it is said to a tenth.
    bool whole() const { return decimals == 0 && !fraction; }
    std::int64_t wholePart() const { return millionths / 1'000'000; }
    bool isBare() const { return whole() && !leadingZero && unit == Measure::None && !negative; }
    /// The value as millimetres; a bare number is millimetres.
    Length millimetres() const;
};

/// What stands before a token, strongest last.
enum class Gap : std::uint8_t { None, Space, Comma, Dash, Slash, Cross };

struct Token {
    Gap gap = Gap::None;
    std::optional<SaidNumber> number; ///< else a word
    std::string word;                 ///< in capitals
    std::string said;                 ///< as typed

    bool is(std::string_view capitals) const { return !number && word == capitals; }
};

struct Tokens {
    std::vector<Token> all;
    Gap end = Gap::None;      ///< what stands after the last one: "3x" ends in a cross
    std::string construction; ///< what was written behind a comma and means nothing else
};

/// Takes the text apart into numbers and words. Number words are joined ("twelve-hundred"), fractions and
/// units are part of their number.
Outcome<Tokens, ReadFault> tokensOf(std::string_view text, const Tables& tables);

} // namespace riband::belt::reading
