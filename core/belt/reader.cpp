#include "core/belt/reader.h"

#include "core/belt/reading/canonical.h"
#include "core/belt/reading/choice.h"

namespace riband::belt {

Understanding understand(std::string_view text, const Tables& tables) {
    const auto tokens = reading::tokensOf(text, tables);
    if (!tokens) return {{}, std::nullopt, tokens.reason()};
    const auto phrase = reading::phraseOf(*tokens, tables);
    if (!phrase) return {{}, std::nullopt, phrase.reason()};
    return reading::choose(*phrase, tables);
}

namespace {

ReadFault several(std::string_view text, const std::vector<Reading>& readings) {
    ReadFault fault{ReadFault::Kind::SeveralBelts, std::string{text}, {}, {}};
    for (const Reading& reading : readings)
        fault.nearest.push_back(reading.belt);
    return fault;
}

bool sameBelt(const std::vector<Reading>& readings) {
    for (const Reading& reading : readings)
        if (reading.belt != readings.front().belt) return false;
    return true;
}

} // namespace

Outcome<Belt, ReadFault> readBelt(std::string_view text, const Tables& tables) {
    if (auto belt = reading::readCanonical(text, tables)) return *belt;
    const Understanding understood = understand(text, tables);
    if (understood.fault) return *understood.fault;
    if (!sameBelt(understood.readings)) return several(text, understood.readings);
    const Reading& only = understood.readings.front();
    const bool moreThanABelt = only.width || only.quantity != 1;
    if (moreThanABelt) return ReadFault{ReadFault::Kind::NotUnderstood, std::string{text}, {}, {}};
    return only.belt;
}

std::optional<Belt> beltOfTeeth(std::string_view name, Teeth teeth, const Tables& tables) {
    const Profile* profile = tables.profile(name);
    if (!profile || profile->ribbed()) return std::nullopt;
    return Belt{profile->name, teeth, profile->pitch * teeth, {}};
}

} // namespace riband::belt
