#pragma once

#include "core/belt/belt.h"
#include "core/belt/profile.h"
#include "core/measure/csv.h"

#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace riband::belt {

/// The texts of the tables in resources/tables, by file name without ending: "profiles", "widths", "lengths",
/// "width_tolerances", "length_tolerances", "tooth_shapes", "sleeves", "min_pulleys", "trade_words",
/// "shelf_life", "pulls".
using TableTexts = std::map<std::string, std::string, std::less<>>;

/// A word that customers say or type.
struct TradeWord {
    enum class Kind : std::uint8_t {
        Tooth, ///< `means` is the letter of a tooth shape
        Ribbed,
        Toothed,
        VBelt,    ///< no belt that is cut from a sleeve
        VBeltToo, ///< a pitch that narrow V-belts are named by, too
        OpenEnded,
        Teeth,          ///< counts teeth, beside a number
        RibCount,       ///< counts ribs, behind a number
        Quantity,       ///< counts belts, behind a number
        QuantityBefore, ///< counts belts, before a number
        Width,          ///< the number beside it is a width
        LengthWord,     ///< the number beside it is a length
        Unit,           ///< `means` is mm, cm, m or in
        DoubleSided,
        Filler,
        Construction, ///< body, cord, cover
        Number,       ///< `means` is its value
    };
    Kind kind;
    std::string means;
};

/// What a belt of one width may pull, by a standard.
struct ReferencePull {
    Width width;
    double newtons;           ///< allowed
    double kilogramsPerMetre; ///< of the belt, which takes of the pull as it runs round
    double exponent;          ///< another width carries (width / this width)^exponent of it
    std::string standard;
    Confidence confidence;
};

/// Why the tables can't be used: which file, and where in it.
struct TableFault {
    std::string file;
    std::size_t line = 0;
    std::string what;
};

/// The standards tables, read once at start. Immutable; may be shared between threads.
class Tables {
public:
    static Outcome<std::shared_ptr<const Tables>, TableFault> load(const TableTexts& texts);
    ~Tables();

    const std::vector<Profile>& profiles() const;
    const Profile* profile(std::string_view name) const; ///< exactly as written; nullptr if unknown
    /// Narrow first; of a double-sided profile those of its single-sided one; none of an unknown or ribbed
    /// one.
    const std::vector<StandardWidth>& widths(std::string_view profile) const;
    /// Short first, each length once. No list of double-sided lengths was found: those of the single-sided
    /// profile are given.
    const std::vector<MadeLength>& lengths(std::string_view profile) const;
    /// The length in the list that is exactly this, or nullptr.
    const MadeLength* made(std::string_view profile, Length length) const;
    /// The lengths that carry this code, first or among the others seen: two makers may mean two belts by one
    /// code.
    std::vector<const MadeLength*> coded(std::string_view profile, std::string_view code) const;
    /// Up to two made lengths around this one: the next shorter or equal and the next longer.
    std::vector<const MadeLength*> around(std::string_view profile, Length length) const;
    /// By the standard of the profile; nothing for ribbed belts (count ribs) and where no source gives one.
    std::optional<WidthTolerance> widthTolerance(const Belt& belt, Width width) const;
    struct LengthTolerance {
        Width plus, minus;
        std::string standard;
        Confidence confidence;
    };
    std::optional<LengthTolerance> lengthTolerance(const Belt& belt) const;
    /// nullptr where no standard that the tables hold gives one; power is the belt maker's data.
    const ReferencePull* referencePull(std::string_view profile) const;
    /// The usual width of a new sleeve of this belt (practice of makers); the widest known of the profile.
    Extent usualSleeve(const Belt& belt) const;
    Extent widestSleeve(std::string_view profile) const;
    /// All widths in which sleeves of this belt are met, narrow first.
    std::vector<Extent> sleeves(const Belt& belt) const;
    /// Profiles of the same or nearly the same pitch that look alike and must not be interchanged.
    std::vector<const Profile*> lookAlikes(std::string_view profile) const;
    /// Whole years that a body may lie: first period and extension after inspection (ISO 2230:2002).
    struct ShelfLife {
        int years;
        int extension;
    };
    ShelfLife shelfLife(std::string_view profile) const;
    /// What a word of trade_words.csv is good for; nullptr if it is not there. Capitals, without dashes.
    const TradeWord* tradeWord(std::string_view word) const;

    struct Data; ///< core/belt/tables_data.h
private:
    explicit Tables(std::unique_ptr<Data> data);
    std::unique_ptr<Data> data_;
};

} // namespace riband::belt
