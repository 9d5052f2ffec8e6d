#pragma once

#include "core/belt/tables.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace riband::belt {

/// One belt that the words may mean.
struct Reading {
    Belt belt;
    std::optional<Extent> width{}; ///< nothing: not said, ask
    std::int64_t quantity = 1;
    bool doubleSided = false;
    /// How the code's number became this length, where that is not plain: the screen says which.
    enum class Remark {
        CodeRounded,     ///< inch code 124 is 33 teeth = 314.325 mm
        MatchedLength,   ///< a ribbed length within 6 mm of a made one: `said` was said
        WidthFromLabel,  ///< 19 said for 19.05
        ShortForBelt,    ///< under about 20 pitches: not made
        LengthNotListed, ///< a whole number of teeth, but in no maker's list
        HalfLost,        ///< T2.5-177 is 177.5
    };
    std::vector<Remark> remarks{};
    std::string said{};      ///< the number that a remark about the length is about, as typed
    std::string saidWidth{}; ///< the same for WidthFromLabel
    /// Made lengths around one that is LengthNotListed.
    std::vector<Belt> nearestMade{};
};

/// What to ask when there are several readings, or one without width or quantity known.
enum class Question {
    WhichToothShape,  ///< H, S, R or G of the same pitch
    ToothedOrRibbed,  ///< 390L: L or PL
    ToothedOrVBelt,   ///< 5M 280: toothed, or a narrow V-belt
    WhichMxlCode,     ///< teeth, tenths or hundredths of an inch
    MillimetreOrInch, ///< J457: 457 mm or 45.7 in; XL 25: 0.25 in or 25 mm
    WidthTimesTen,    ///< 50 S8M 800: 50 mm or 5.0 mm
    WhichIsLength,    ///< 100 T10 100
    HowWide,
    HowManyRibs,
    HowLong,
};

/// Why no belt can be meant, and the nearest that could.
struct ReadFault {
    enum class Kind {
        Empty,
        NotUnderstood, ///< `part` is the first word that means nothing here
        TooLong,       ///< over 200 characters
        NoProfile,
        LengthNotMultiple, ///< `part`: as said; `nearest`: made lengths around it
        LengthImpossible,
        WidthNotPositive,
        WidthOverSleeve, ///< `limit`: the widest sleeve
        HalfARib,
        NoRibs,
        QuantityImpossible,
        VBelt,     ///< a V-belt, not cut from a sleeve
        OpenEnded, ///< sold by the metre, not cut from a sleeve
        UnknownProfile,
        NoLength,     ///< a profile, but neither length nor teeth
        SeveralBelts, ///< readBelt only: `nearest` are the belts that may be meant
    };
    Kind kind;
    std::string part;
    std::vector<Belt> nearest;
    std::optional<Extent> limit;
};

/// What was understood of a text. Exactly one of: readings, or a fault. Several readings come with the
/// question that tells them apart; one reading has a question where its width is not said; the fault NoLength
/// has HowLong.
struct Understanding {
    std::vector<Reading> readings; ///< likeliest first
    std::optional<Question> question;
    std::optional<ReadFault> fault;
};

/// Reads what is printed on belts and what customers say (docs/designations.md has the grammar). Never
/// guesses silently. A trade word of resources/tables/trade_words.csv is understood but never printed. Width
/// is asked for (HowWide, HowManyRibs) where one reading has none.
Understanding understand(std::string_view text, const Tables& tables);

/// A belt without width: "H8M 1200", "L 322", "PJ 1194 steel cord". For stock lists and the command line.
Outcome<Belt, ReadFault> readBelt(std::string_view text, const Tables& tables);

/// The belt with so many teeth, or nothing if the profile is ribbed or unknown.
std::optional<Belt> beltOfTeeth(std::string_view profile, Teeth teeth, const Tables& tables);

/// The full printed form by the profile's standard: "1200H8M30", "322L075", "10 T5 / 500", "6PJ1194". An odd
/// width that the form can't say (27.3 mm of an inch family) is written after a dash in mm. understand()
/// reads it back.
std::string printed(const Belt& belt, Extent width, const Tables& tables);

} // namespace riband::belt
