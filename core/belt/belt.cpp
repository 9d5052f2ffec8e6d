#include "core/belt/belt.h"

#include "core/measure/text.h"

#include <array>

namespace riband::belt {
namespace {

bool isOneOf(const std::string& profile, std::initializer_list<std::string_view> names) {
    for (const auto name : names)
        if (profile == name || (profile.size() == name.size() + 1 && profile.front() == 'D' &&
                                std::string_view{profile}.substr(1) == name))
            return true;
    return false;
}

/// The length in whole tenths of an inch, a half cut off, as 322 for 32.25 in.
std::string inchCode(Length length) {
    constexpr std::int64_t tenth = 2'540'000;
    return std::to_string((length.inNanometres() + tenth / 2 - 1) / tenth);
}

/// MXL lengths are whole hundredths of an inch, written as tenths with one decimal: 80.0.
std::string mxlCode(Length length) {
    const std::int64_t hundredths = length.inNanometres() / 254'000;
    return std::to_string(hundredths / 10) + "." + std::to_string(hundredths % 10);
}

bool isModule(const std::string& profile) { return profile.front() == 'm'; }

} // namespace

std::string lengthCode(const Belt& belt) {
    if (belt.profile.empty()) return {};
    const std::string teeth = belt.teeth ? std::to_string(belt.teeth->count()) : std::string{};
    if (isOneOf(belt.profile, {"XL", "L", "H", "XH", "XXH"})) return inchCode(belt.length);
    if (isOneOf(belt.profile, {"MXL"})) return mxlCode(belt.length);
    if (belt.profile == "XXL") return 'B' + teeth;
    if (belt.profile == "40DP") return teeth + 'T';
    return isModule(belt.profile) ? teeth : printMillimetres(belt.length);
}

std::string designation(const Belt& belt) {
    std::string text = belt.profile;
    text += ' ';
    text += lengthCode(belt);
    if (!belt.construction.empty()) {
        text += ' ';
        text += belt.construction;
    }
    return text;
}

} // namespace riband::belt
