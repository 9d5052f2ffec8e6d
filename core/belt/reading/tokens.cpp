#include "core/belt/reading/tokens.h"

#include "core/belt/reading/letters.h"
#include "core/belt/reading/number_words.h"
#include "core/belt/reading/scanner.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Kind = ReadFault::Kind;

/// "1 1/2" and "1-1/2" are one number.
void joinMixedFractions(std::vector<Token>& tokens) {
    for (std::size_t i = 1; i < tokens.size(); ++i) {
        const auto& whole = tokens[i - 1].number;
        auto& part = tokens[i].number;
        if (!whole || !part || !part->fraction || !whole->isBare() || whole->wholePart() > 12) continue;
        if (tokens[i].gap != Gap::Space && tokens[i].gap != Gap::Dash) continue;
        part->millionths += whole->millionths;
        part->said = whole->said + " " + part->said;
        tokens[i].gap = tokens[i - 1].gap;
        tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(i - 1));
    }
}

Measure measureOf(const std::string& unit) {
    if (unit == "mm") return Measure::Millimetre;
    if (unit == "cm") return Measure::Centimetre;
    return unit == "m" ? Measure::Metre : Measure::Inch;
}

void joinUnits(std::vector<Token>& tokens, const Tables& tables) {
    for (std::size_t i = 1; i < tokens.size(); ++i) {
        auto& number = tokens[i - 1].number;
        if (!number || tokens[i].number || tokens[i].gap > Gap::Space) continue;
        const TradeWord* word = tables.tradeWord(tokens[i].word);
        if (!word || word->kind != TradeWord::Kind::Unit) continue;
        number->unit = measureOf(word->means);
        tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(i));
        --i;
    }
}

/// "POLY V", "open-ended": up to three words that the table has as one.
void joinWords(std::vector<Token>& tokens, const Tables& tables) {
    for (std::size_t i = 0; i + 1 < tokens.size(); ++i) {
        std::string joined = tokens[i].word, said = tokens[i].said;
        for (std::size_t j = i + 1; j < std::min(i + 3, tokens.size()); ++j) {
            if (tokens[i].number || tokens[j].number || tokens[j].gap > Gap::Dash) break;
            joined += tokens[j].word;
            said += (tokens[j].gap == Gap::Dash ? "-" : " ") + tokens[j].said;
            if (!tables.tradeWord(joined) || joined.size() < 4) continue;
            tokens[i].word = joined;
            tokens[i].said = said;
            tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                         tokens.begin() + static_cast<std::ptrdiff_t>(j) + 1);
            break;
        }
    }
}

bool allKnown(const std::vector<Token>& tokens, const Tables& tables) {
    return std::all_of(tokens.begin(), tokens.end(),
                       [&](const Token& token) { return token.number || isKnownWord(token.word, tables); });
}

bool isConstruction(const Token& token, const Tables& tables) {
    const TradeWord* word = token.number ? nullptr : tables.tradeWord(token.word);
    return word && word->kind == TradeWord::Kind::Construction;
}

/// Where the words behind a comma begin that can only be the construction; npos if there are none.
std::size_t constructionStart(std::string_view text, const Tables& tables) {
    for (auto comma = text.find(", "); comma != std::string_view::npos; comma = text.find(", ", comma + 1)) {
        const auto tail = text.substr(comma + 2);
        if (comma == 0 || tail.empty() || !isLetter(tail.front())) continue;
        const auto tokens = scan(tail, tables).all;
        if (tokens.empty()) continue;
        if (isConstruction(tokens.front(), tables) || !allKnown(tokens, tables)) return comma;
    }
    return std::string_view::npos;
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && static_cast<unsigned char>(text.front()) <= ' ' && text.front() != '\0')
        text.remove_prefix(1);
    while (!text.empty() && static_cast<unsigned char>(text.back()) <= ' ' && text.back() != '\0')
        text.remove_suffix(1);
    return text;
}

} // namespace

Length SaidNumber::millimetres() const {
    const std::int64_t value = negative ? 0 : millionths;
    switch (unit) {
    case Measure::Centimetre:
        return Length::nanometres(value * 10);
    case Measure::Metre:
        return Length::nanometres(value * 1000);
    case Measure::Inch:
        return Length::nanometres(value * 254 / 10);
    default:
        return Length::nanometres(value);
    }
}

Outcome<Tokens, ReadFault> tokensOf(std::string_view text, const Tables& tables) {
    constexpr std::size_t longest = 200;
    text = trimmed(text);
    if (text.empty()) return ReadFault{Kind::Empty, {}, {}, {}};
    if (text.size() > longest) return ReadFault{Kind::TooLong, {}, {}, {}};
    try {
        std::string plain = plainSigns(text);
        const auto comma = constructionStart(plain, tables);
        Tokens tokens = scan(std::string_view{plain}.substr(0, comma), tables);
        if (comma != std::string::npos) tokens.construction = trimmed(plain.substr(comma + 2));
        joinNumberWords(tokens.all, tables);
        joinMixedFractions(tokens.all);
        joinUnits(tokens.all, tables);
        joinWords(tokens.all, tables);
        if (tokens.all.empty()) return ReadFault{Kind::Empty, {}, {}, {}};
        return tokens;
    } catch (const WrongSign& wrong) {
        return wrong.fault;
    }
}

} // namespace riband::belt::reading
