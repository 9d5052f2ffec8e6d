#include "core/belt/reading/scanner.h"

#include "core/belt/reading/letters.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Kind = ReadFault::Kind;
constexpr std::int64_t million = 1'000'000;
constexpr std::size_t mostDigits = 7, mostDecimals = 6;

std::int64_t valueOf(std::string_view digits) {
    std::int64_t value = 0;
    for (const char digit : digits)
        value = value * 10 + (digit - '0');
    return value;
}

/// Reads the characters one after the other.
class Scanner {
public:
    Scanner(std::string_view text, const Tables& tables) : text_{text}, tables_{tables} {}

    Tokens run() {
        while (at_ < text_.size())
            step();
        tokens_.end = gap_;
        return std::move(tokens_);
    }

private:
    char here(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
    char before() const { return at_ > 0 ? text_[at_ - 1] : ' '; }

    void step() {
        const char c = here();
        if (isDigit(c) || (isDecimalSign(c) && isDigit(here(1)) && !isDigit(before())))
            return takeNumber(false);
        if (isLetter(c)) return takeRun();
        if (isMinus()) {
            ++at_;
            return takeNumber(true);
        }
        takeSign(c);
    }

    static bool isDecimalSign(char c) { return c == '.' || c == ','; }

    /// A dash behind a space or a cross and right before a digit is a minus: "1200 -30".
    bool isMinus() const {
        if (here() != '-' || !isDigit(here(1))) return false;
        return at_ == 0 || before() == ' ' || before() == '-' || gap_ == Gap::Cross || gap_ == Gap::Slash;
    }

    void takeSign(char c) {
        if (c == '\0') throw WrongSign{{Kind::NotUnderstood, "\\0", {}, {}}};
        if (c == '"' && gap_ == Gap::None && !tokens_.all.empty() && tokens_.all.back().number)
            tokens_.all.back().number->unit = Measure::Inch;
        else
            widen(gapOf(c));
        ++at_;
    }

    Gap gapOf(char c) const {
        switch (c) {
        case '*':
            return Gap::Cross;
        case '/':
            return Gap::Slash;
        case '-':
        case '_':
            return Gap::Dash;
        case ',':
        case ';':
            return Gap::Comma;
        case '.':
        case ':':
        case '=':
        case '(':
        case ')':
        case '!':
        case '?':
        case '"':
        case '\'':
            return Gap::Space;
        default:
            if (static_cast<unsigned char>(c) <= ' ') return Gap::Space;
            throw WrongSign{{Kind::NotUnderstood, std::string(1, c), {}, {}}};
        }
    }

    void widen(Gap gap) { gap_ = std::max(gap_, gap); }

    std::string_view digitsFrom(std::size_t start) const {
        std::size_t end = start;
        while (end < text_.size() && isDigit(text_[end]))
            ++end;
        return text_.substr(start, end - start);
    }

    void takeNumber(bool negative) {
        const std::size_t start = at_;
        SaidNumber number;
        number.negative = negative;
        if (!takeFraction(number)) takeDecimal(number);
        if (negative) number.said = "-";
        number.said += text_.substr(start, at_ - start);
        push({gap_, number, {}, number.said});
    }

    void takeDecimal(SaidNumber& number) {
        const auto before = digitsFrom(at_);
        at_ += before.size();
        std::string decimals;
        if (isDecimalSign(here()) && isDigit(here(1))) {
            decimals = digitsFrom(at_ + 1);
            at_ += 1 + decimals.size();
        }
        if (before.size() > mostDigits || decimals.size() > mostDecimals)
            throw WrongSign{{Kind::NotUnderstood, std::string{before}, {}, {}}};
        number.decimals = static_cast<int>(decimals.size());
        number.leadingZero = before.size() > 1 && before.front() == '0' && decimals.empty();
        decimals.resize(mostDecimals, '0');
        number.millionths = valueOf(before) * million + valueOf(decimals);
    }

    /// "3/4" is a fraction of an inch, "500/10" is not: an odd part below 2, 4, 8, 16 or 32.
    bool takeFraction(SaidNumber& number) {
        const auto part = digitsFrom(at_);
        if (part.empty() || part.size() > 2 || here(part.size()) != '/' || isPitch()) return false;
        const auto whole = digitsFrom(at_ + part.size() + 1);
        if (whole.empty() || whole.size() > 2) return false;
        const auto n = valueOf(part), d = valueOf(whole);
        if ((d != 2 && d != 4 && d != 8 && d != 16 && d != 32) || n >= d || n % 2 == 0) return false;
        at_ += part.size() + 1 + whole.size();
        number.millionths = n * million / d;
        number.fraction = true;
        number.decimals = static_cast<int>(mostDecimals);
        number.unit = Measure::Inch;
        return true;
    }

    /// "AT5/16/750": the five is the pitch, not a part of 5/16.
    bool isPitch() const {
        if (gap_ != Gap::None || tokens_.all.empty() || tokens_.all.back().number) return false;
        return tokens_.all.back().is("T") || tokens_.all.back().is("AT") || tokens_.all.back().is("DT");
    }

    void takeRun() {
        const std::size_t start = at_;
        while (isLetter(here()))
            ++at_;
        const bool digitBefore = start > 0 && isDigit(text_[start - 1]);
        const auto run = text_.substr(start, at_ - start);
        for (const auto part : partsOfRun(run, digitBefore, text_.substr(at_), tables_)) {
            if (part == "*")
                widen(Gap::Cross);
            else
                push({gap_, std::nullopt, capitals(part), std::string{part}});
        }
    }

    void push(Token token) {
        tokens_.all.push_back(std::move(token));
        gap_ = Gap::None;
    }

    std::string_view text_;
    const Tables& tables_;
    std::size_t at_ = 0;
    Gap gap_ = Gap::None;
    Tokens tokens_;
};

} // namespace

Tokens scan(std::string_view text, const Tables& tables) { return Scanner{text, tables}.run(); }

} // namespace riband::belt::reading
