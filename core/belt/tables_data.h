#pragma once

#include "core/belt/tables.h"

#include <unordered_map>

namespace riband::belt {

/// A row of a tolerance table: a rule for a band of widths and a band of lengths.
struct ToleranceRule {
    std::vector<std::string> profiles; ///< "*": any rubber toothed belt
    std::string body;                  ///< only for this body; empty: any
    std::optional<Width> widthFrom, widthUpTo;
    std::optional<Length> lengthOver, lengthUpTo;
    Width plus = Width::micrometres(0), minus = Width::micrometres(0);
    std::string standard;
    Confidence confidence = Confidence::Confirmed;
};

/// A row of the sleeves table.
struct SleeveRule {
    std::optional<Length> lengthOver, lengthUpTo;
    Extent extent;
    bool usual;
};

/// What belongs to one profile.
struct ProfileRows {
    std::vector<StandardWidth> widths;
    std::vector<MadeLength> lengths;
    std::unordered_map<std::string, std::vector<std::size_t>> byCode; ///< into lengths
    std::vector<SleeveRule> sleeves;
    std::optional<ReferencePull> pull;
    std::vector<std::size_t> lookAlikes; ///< into Data::profiles
};

struct BodyLife {
    std::string body;
    Tables::ShelfLife life;
};

struct Tables::Data {
    std::vector<Profile> profiles;
    std::map<std::string, std::size_t, std::less<>> byName;
    std::vector<ProfileRows> rows; ///< beside profiles
    std::vector<ToleranceRule> widthRules;
    std::vector<ToleranceRule> lengthRules;
    std::vector<BodyLife> lives;
    std::map<std::string, TradeWord, std::less<>> words;

    const ProfileRows* find(std::string_view profile) const {
        const auto at = byName.find(profile);
        return at == byName.end() ? nullptr : &rows[at->second];
    }
    /// The rows of the profile, or of its single-sided one.
    const ProfileRows* findBase(std::string_view profile) const {
        const auto at = byName.find(profile);
        if (at == byName.end()) return nullptr;
        const std::string& base = profiles[at->second].base;
        return base.empty() ? &rows[at->second] : find(base);
    }
};

} // namespace riband::belt
