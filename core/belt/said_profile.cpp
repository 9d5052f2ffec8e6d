#include "core/belt/said_profile.h"

#include <algorithm>
#include <cctype>

namespace riband::belt {

namespace {

bool isLetter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

std::string inCapitals(std::string_view words) {
    std::string capitals;
    for (const char c : words)
        if (c != ' ') capitals += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    return capitals;
}

} // namespace

std::vector<const Profile*> profilesSaid(std::string_view name, const Tables& tables) {
    const std::string said = inCapitals(name);
    if (said.empty()) return {};
    std::vector<const Profile*> likely;
    for (const Profile& profile : tables.profiles()) {
        const std::string written = inCapitals(profile.name);
        if (written == said) return {&profile};
        if (profile.doubleSided || !written.ends_with(said)) continue;
        if (std::all_of(written.begin(), written.end() - static_cast<std::ptrdiff_t>(said.size()), isLetter))
            likely.push_back(&profile);
    }
    return likely;
}

} // namespace riband::belt
