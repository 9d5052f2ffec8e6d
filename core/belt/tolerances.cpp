#include "core/belt/tables_data.h"

#include <algorithm>

namespace riband::belt {
namespace {

constexpr std::string_view anyRubber = "*";

bool lengthFits(const ToleranceRule& rule, Length length) {
    return (!rule.lengthOver || length > *rule.lengthOver) &&
           (!rule.lengthUpTo || length <= *rule.lengthUpTo);
}

bool widthFits(const ToleranceRule& rule, Width width) {
    return (!rule.widthFrom || width >= *rule.widthFrom) && (!rule.widthUpTo || width <= *rule.widthUpTo);
}

/// The bands are printed to a tenth of a millimetre: 19.05 belongs to the band that begins at 19.1.
Width toTenths(Width width) { return Width::micrometres((width.inMicrometres() + 50) / 100 * 100); }

bool names(const ToleranceRule& rule, std::string_view profile) {
    return std::find(rule.profiles.begin(), rule.profiles.end(), profile) != rule.profiles.end();
}

std::string bodyOf(const Belt& belt, const Profile& profile) {
    const bool said = belt.construction.find("polyurethane") != std::string::npos;
    return said || profile.body.starts_with("polyurethane") ? "polyurethane" : "rubber";
}

bool isForBody(const ToleranceRule& rule, const std::string& body) {
    return rule.body.empty() || rule.body == body;
}

/// A rule of the profile itself.
bool isOwn(const ToleranceRule& rule, const Profile& profile, const std::string& body) {
    return isForBody(rule, body) && names(rule, profile.base.empty() ? profile.name : profile.base);
}

/// The rule for any rubber toothed belt does not reach old national sizes and V-ribbed belts.
bool isGeneral(const ToleranceRule& rule, const Profile& profile, const std::string& body) {
    return isForBody(rule, body) && names(rule, anyRubber) && body == "rubber" && !profile.ribbed() &&
           profile.family != Family::ModuleTrapezoidal;
}

} // namespace

std::optional<WidthTolerance> Tables::widthTolerance(const Belt& belt, Width width) const {
    const Profile* known = profile(belt.profile);
    if (!known) return std::nullopt;
    const std::string body = bodyOf(belt, *known);
    for (const auto reaches : {isOwn, isGeneral})
        for (const Width asked : {width, toTenths(width)})
            for (const auto& rule : data_->widthRules)
                if (reaches(rule, *known, body) && lengthFits(rule, belt.length) && widthFits(rule, asked))
                    return WidthTolerance{rule.plus, rule.minus, rule.standard, rule.confidence};
    return std::nullopt;
}

std::optional<Tables::LengthTolerance> Tables::lengthTolerance(const Belt& belt) const {
    const Profile* known = profile(belt.profile);
    if (!known) return std::nullopt;
    const std::string body = bodyOf(belt, *known);
    for (const auto reaches : {isOwn, isGeneral})
        for (const auto& rule : data_->lengthRules)
            if (reaches(rule, *known, body) && lengthFits(rule, belt.length))
                return LengthTolerance{rule.plus, rule.minus, rule.standard, rule.confidence};
    return std::nullopt;
}

} // namespace riband::belt
