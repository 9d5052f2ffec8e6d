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
/// "shelf_life".
using TableTexts = std::map<std::string, std::string, std::less<>>;

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
    const std::vector<StandardWidth>& widths(std::string_view profile) const; ///< narrow first
    const std::vector<MadeLength>& lengths(std::string_view profile) const;   ///< short first
    /// By the standard of the profile; nothing for ribbed belts (count ribs) and where no source gives one.
    std::optional<WidthTolerance> widthTolerance(const Belt& belt, Width width) const;
    struct LengthTolerance {
        Width plus, minus;
        std::string standard;
        Confidence confidence;
    };
    std::optional<LengthTolerance> lengthTolerance(const Belt& belt) const;
    /// The usual width of a new sleeve of this belt (practice of makers); the widest known of the profile.
    Extent usualSleeve(const Belt& belt) const;
    Extent widestSleeve(std::string_view profile) const;
    /// Profiles of the same or nearly the same pitch that look alike and must not be interchanged.
    std::vector<const Profile*> lookAlikes(std::string_view profile) const;
    /// Whole years that a body may lie: first period and extension after inspection (ISO 2230:2002).
    struct ShelfLife {
        int years;
        int extension;
    };
    ShelfLife shelfLife(std::string_view profile) const;

private:
    struct Data;
    explicit Tables(std::unique_ptr<Data> data);
    std::unique_ptr<Data> data_;
};

} // namespace riband::belt
