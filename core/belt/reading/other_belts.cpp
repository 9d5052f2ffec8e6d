#include "core/belt/reading/other_belts.h"

namespace riband::belt::reading {
namespace {

using Fault = ReadFault::Kind;
using Word = TradeWord::Kind;

ReadFault fault(Fault kind, std::string part) { return {kind, std::move(part), {}, {}}; }

} // namespace

std::optional<ReadFault> vBeltIn(const std::vector<Token>& tokens, const Tables& tables) {
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        if (tokens[i].number) continue;
        const bool digitBefore = i > 0 && tokens[i - 1].number && tokens[i].gap == Gap::None;
        const std::string section = (digitBefore ? tokens[i - 1].said : std::string{}) + tokens[i].word;
        for (const std::string& word : {section, tokens[i].word}) {
            const TradeWord* known = tables.tradeWord(word);
            if (known && known->kind == Word::VBelt) return fault(Fault::VBelt, word);
        }
    }
    const bool twoNumbers = tokens.size() == 2 && tokens[0].number && tokens[1].number;
    if (!twoNumbers || tokens[1].gap != Gap::Cross) return std::nullopt;
    const auto top = tokens[0].number->wholePart(), length = tokens[1].number->wholePart();
    if (top < 5 || top > 40 || length < 200) return std::nullopt;
    return fault(Fault::VBelt, tokens[0].said + "x" + tokens[1].said);
}

bool isLightDuty(const std::vector<Token>& tokens, const Mention& mention, const Tables& tables) {
    if (mention.kind != Mention::Kind::Letter || mention.first != 1 || tokens[1].gap != Gap::None)
        return false;
    const TradeWord* word = tables.tradeWord(tokens[0].said + mention.name);
    return word && word->kind == Word::VBelt;
}

std::optional<ReadFault> openEnded(const std::vector<Token>& tokens, const Tables& tables) {
    for (const Token& token : tokens) {
        const TradeWord* word = token.number ? nullptr : tables.tradeWord(token.word);
        if (word && word->kind == Word::OpenEnded) return fault(Fault::OpenEnded, token.said);
    }
    return std::nullopt;
}

} // namespace riband::belt::reading
