#include "core/belt/reading/canonical.h"

#include "core/belt/reading/letters.h"
#include "core/belt/reading/said_length.h"
#include "core/measure/text.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

/// Up to the next space; `text` becomes what is behind it.
std::string_view nextWord(std::string_view& text) {
    const auto space = text.find(' ');
    const auto word = text.substr(0, space);
    text = space == std::string_view::npos ? std::string_view{} : text.substr(space + 1);
    return word;
}

std::optional<SaidNumber> plainNumber(std::string_view text) {
    const auto length = readLength(text);
    if (!length || text.find_first_not_of("0123456789.") != std::string_view::npos) return std::nullopt;
    SaidNumber number;
    number.millionths = length->inNanometres();
    const auto point = text.find('.');
    number.decimals = point == std::string_view::npos ? 0 : static_cast<int>(text.size() - point - 1);
    number.said = text;
    return number;
}

std::optional<Length> toothedLength(std::string_view text, const Profile& profile, const Tables& tables) {
    const std::string& base = profile.base.empty() ? profile.name : profile.base;
    const bool counted = base == "XXL" || base == "40DP";
    if (base == "XXL" && text.starts_with("B")) text.remove_prefix(1);
    if (base == "40DP" && text.ends_with("T")) text.remove_suffix(1);
    const auto number = plainNumber(text);
    if (!number || number->millionths == 0) return std::nullopt;
    if (counted && !number->whole()) return std::nullopt;
    if (base == "MXL" && number->decimals != 1) return std::nullopt; // "MXL 80" may be 80 or 100 teeth
    const auto reads = toothedLengths(*number, profile, tables);
    if (reads.size() != 1) return std::nullopt;
    return reads.front().length;
}

/// A construction begins with a word that means nothing else: "x 30" and "3 pcs" are none.
bool isConstruction(std::string_view text, const Tables& tables) {
    const auto letters = std::find_if_not(text.begin(), text.end(), isLetter) - text.begin();
    const std::string first = capitals(text.substr(0, static_cast<std::size_t>(letters)));
    if (first.size() < 2) return false;
    const TradeWord* word = tables.tradeWord(first);
    return word ? word->kind == TradeWord::Kind::Construction : !isKnownWord(first, tables);
}

} // namespace

std::optional<Belt> readCanonical(std::string_view text, const Tables& tables) {
    const auto name = nextWord(text);
    const Profile* profile = tables.profile(name);
    if (!profile) return std::nullopt;
    const auto number = nextWord(text);
    const std::string construction{text};
    if (!construction.empty() && !isConstruction(text, tables)) return std::nullopt;
    if (profile->ribbed()) {
        // Its made length, or one that nobody lists; 1195 is left to be matched.
        const auto said = plainNumber(number);
        if (!said || !tables.made(profile->name, said->millimetres())) return std::nullopt;
        return Belt{profile->name, std::nullopt, said->millimetres(), construction};
    }
    const auto length = toothedLength(number, *profile, tables);
    if (!length) return std::nullopt;
    const Teeth teeth{length->inNanometres() / profile->pitch.inNanometres()};
    return Belt{profile->name, teeth, *length, construction};
}

} // namespace riband::belt::reading
