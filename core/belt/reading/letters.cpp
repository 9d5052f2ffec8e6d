#include "core/belt/reading/letters.h"

#include <array>
#include <optional>
#include <utility>

namespace riband::belt::reading {
namespace {

constexpr std::string_view cross = "*";

constexpr std::array<std::pair<std::string_view, std::string_view>, 18> signs{{{"\u00d7", "*"},
                                                                               {"\u00bd", " 1/2"},
                                                                               {"\u00bc", " 1/4"},
                                                                               {"\u00be", " 3/4"},
                                                                               {"\u00a0", " "},
                                                                               {"\u2009", " "},
                                                                               {"\u202f", " "},
                                                                               {"\u2010", "-"},
                                                                               {"\u2011", "-"},
                                                                               {"\u2012", "-"},
                                                                               {"\u2013", "-"},
                                                                               {"\u2014", "-"},
                                                                               {"\u2212", "-"},
                                                                               {"\u2033", "\""},
                                                                               {"\u201d", "\""},
                                                                               {"\u201c", "\""},
                                                                               {"\u2044", "/"},
                                                                               {"''", "\""}}};

/// Letter groups that belts are written with and that are no name of a profile and no trade word by
/// themselves.
constexpr std::array<std::string_view, 14> groups{"AT", "M",  "R",  "S",  "G",  "J",  "K",
                                                  "P",  "DR", "DS", "DG", "DP", "DT", "B"};

bool isLowerX(char c) { return c == 'x'; }
bool isUpper(char c) { return c >= 'A' && c <= 'Z'; }
bool isX(char c) { return c == 'x' || c == 'X'; }

/// "xh8m" after a number is a cross and H8M, though XH is a profile too.
bool isCrossedPitch(std::string_view run, std::string_view behind) {
    if (capitals(run) != "XH") return false;
    const auto digits = behind.find_first_not_of("0123456789.,");
    return digits != 0 && digits != std::string_view::npos &&
           (behind[digits] == 'm' || behind[digits] == 'M');
}

bool endsWithCross(std::string_view run, std::string_view behind, const Tables& tables) {
    if (run.size() < 2 || !isX(run.back()) || behind.empty() || !isDigit(behind.front())) return false;
    const auto rest = run.substr(0, run.size() - 1);
    if (isLowerX(run.back()) && isUpper(rest.back()) && isKnownWord(capitals(rest), tables)) return true;
    return !isKnownWord(capitals(run), tables) && isKnownWord(capitals(rest), tables);
}

bool beginsWithCross(std::string_view run, bool digitBefore, std::string_view behind, const Tables& tables) {
    if (run.size() < 2 || !isX(run.front())) return false;
    if (digitBefore && isLowerX(run.front()) && isUpper(run[1])) return true;
    if (digitBefore && isCrossedPitch(run, behind)) return true;
    if (isKnownWord(capitals(run), tables)) return false;
    const auto rest = run.substr(1);
    return isKnownWord(capitals(rest), tables) || endsWithCross(rest, behind, tables);
}

/// Where a cross stands between two words, as in "mmxS" of 25mmxS8M.
std::optional<std::size_t> innerCross(std::string_view run, const Tables& tables) {
    if (isKnownWord(capitals(run), tables)) return std::nullopt;
    for (std::size_t i = 1; i + 1 < run.size(); ++i)
        if (isX(run[i]) && isKnownWord(capitals(run.substr(0, i)), tables) &&
            isKnownWord(capitals(run.substr(i + 1)), tables))
            return i;
    return std::nullopt;
}

} // namespace

std::string capitals(std::string_view text) {
    std::string result{text};
    for (char& c : result)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return result;
}

std::string plainSigns(std::string_view text) {
    std::string plain;
    plain.reserve(text.size());
    while (!text.empty()) {
        bool replaced = false;
        for (const auto& [sign, by] : signs) {
            if (!text.starts_with(sign)) continue;
            plain += by;
            text.remove_prefix(sign.size());
            replaced = true;
            break;
        }
        if (replaced) continue;
        plain += text.front();
        text.remove_prefix(1);
    }
    return plain;
}

bool isKnownWord(std::string_view word, const Tables& tables) {
    if (tables.tradeWord(word) || tables.profile(word)) return true;
    for (const auto group : groups)
        if (group == word) return true;
    return false;
}

std::vector<std::string_view> partsOfRun(std::string_view run, bool digitBefore, std::string_view behind,
                                         const Tables& tables) {
    if (run == "x" || run == "X") return {cross};
    std::vector<std::string_view> parts;
    if (beginsWithCross(run, digitBefore, behind, tables)) {
        parts.push_back(cross);
        run.remove_prefix(1);
    }
    const bool crossBehind = endsWithCross(run, behind, tables);
    if (crossBehind) run.remove_suffix(1);
    if (const auto inner = innerCross(run, tables)) {
        parts.push_back(run.substr(0, *inner));
        parts.push_back(cross);
        run.remove_prefix(*inner + 1);
    }
    parts.push_back(run);
    if (crossBehind) parts.push_back(cross);
    return parts;
}

} // namespace riband::belt::reading
