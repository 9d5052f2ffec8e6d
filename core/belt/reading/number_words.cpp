#include "core/belt/reading/number_words.h"

namespace riband::belt::reading {
namespace {

std::optional<std::int64_t> valueOf(const Token& token, const Tables& tables) {
    if (token.number) return std::nullopt;
    const TradeWord* word = tables.tradeWord(token.word);
    if (!word || word->kind != TradeWord::Kind::Number) return std::nullopt;
    return std::stoll(word->means);
}

/// A number that grows by words as long as they fit.
class Spoken {
public:
    bool take(std::int64_t word) {
        if (word == 1000) return multiply(1000, 999);
        if (word == 100) return multiply(100, 99);
        if (!fits(word)) return false;
        below_ += word;
        started_ = true;
        return true;
    }
    std::int64_t value() const { return thousands_ + below_; }

private:
    /// Twenty takes seven, a hundred takes anything below it, three takes nothing.
    bool fits(std::int64_t word) const {
        if (!started_) return true;
        const std::int64_t rest = below_ % 100;
        return (rest == 0 && (below_ > 0 || thousands_ > 0)) || (rest >= 20 && rest % 10 == 0 && word < 10);
    }
    bool multiply(std::int64_t by, std::int64_t most) {
        if (!started_ || below_ == 0 || below_ > most) return false;
        if (by == 1000) {
            if (thousands_ > 0) return false;
            thousands_ = below_ * by;
            below_ = 0;
        } else
            below_ *= by;
        return true;
    }
    bool started_ = false;
    std::int64_t thousands_ = 0, below_ = 0;
};

/// How many tokens from `first` on make one number; its value in `spoken`.
std::size_t spokenFrom(const std::vector<Token>& tokens, std::size_t first, const Tables& tables,
                       Spoken& spoken) {
    std::size_t count = 0;
    while (first + count < tokens.size()) {
        const Token& token = tokens[first + count];
        const auto value = valueOf(token, tables);
        if (!value || (count > 0 && token.gap > Gap::Space && token.gap != Gap::Dash)) break;
        if (!spoken.take(*value)) break;
        ++count;
    }
    return count;
}

} // namespace

void joinNumberWords(std::vector<Token>& tokens, const Tables& tables) {
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        Spoken spoken;
        const std::size_t count = spokenFrom(tokens, i, tables, spoken);
        if (count == 0) continue;
        SaidNumber number;
        number.millionths = spoken.value() * 1'000'000;
        number.said = std::to_string(spoken.value());
        tokens[i].number = number;
        tokens[i].word.clear();
        tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                     tokens.begin() + static_cast<std::ptrdiff_t>(i + count));
    }
}

} // namespace riband::belt::reading
