#include "core/measure/code.h"

#include <array>

namespace riband {
namespace {

// Without I, O (read as 1, 0), Q and U (by hand too like 0 and V): 10 digits first, so that pieces can begin
// with one.
constexpr std::string_view alphabet = "0123456789ABCDEFGHJKLMNPRSTVWXYZ";
constexpr std::size_t leastBody = 3;
constexpr std::size_t longestCode = 14;

std::optional<int> valueOf(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'A' && c <= 'Z') return c - 'A' + 10;
    return std::nullopt;
}

bool inAlphabet(char c) { return alphabet.find(c) != std::string_view::npos; }

/// How many codes there are with one body character more than the first.
constexpr std::int64_t firstCharacters(CodeKind kind) { return kind == CodeKind::Piece ? 10 : 1; }

char firstCharacter(CodeKind kind, std::int64_t index) {
    switch (kind) {
    case CodeKind::Ticket:
        return 'T';
    case CodeKind::Order:
        return 'N';
    case CodeKind::Piece:
        break;
    }
    return alphabet[static_cast<std::size_t>(index)];
}

std::string bodyOf(CodeKind kind, std::int64_t number) {
    const auto base = static_cast<std::int64_t>(alphabet.size());
    std::int64_t behindFirst = base * base; // bodies of three characters
    std::size_t length = leastBody;
    while (number >= firstCharacters(kind) * behindFirst) {
        number -= firstCharacters(kind) * behindFirst;
        behindFirst *= base;
        ++length;
    }
    std::string body(length, '0');
    for (std::size_t i = length - 1; i > 0; --i, number /= base)
        body[i] = alphabet[static_cast<std::size_t>(number % base)];
    body[0] = firstCharacter(kind, number);
    return body;
}

std::optional<CodeKind> kindOf(char first) {
    if (first >= '0' && first <= '9') return CodeKind::Piece;
    if (first == 'T') return CodeKind::Ticket;
    if (first == 'N') return CodeKind::Order;
    return std::nullopt;
}

/// Capitals; O and I as the digits that they are taken for. Nothing unless it is body, dash, check character.
std::optional<std::string> tidied(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    if (text.size() < leastBody + 2 || text.size() > longestCode || text[text.size() - 2] != '-')
        return std::nullopt;
    std::string result;
    for (char c : text) {
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
        if (c == 'O') c = '0';
        if (c == 'I') c = '1';
        result += c;
    }
    return result;
}

} // namespace

std::optional<char> iso7064Mod37_2(std::string_view body) {
    int sum = 0;
    for (const char c : body) {
        const auto value = valueOf(c);
        if (!value) return std::nullopt;
        sum = (sum + *value) * 2 % 37;
    }
    const int check = (38 - sum) % 37;
    constexpr std::string_view characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
    return characters[static_cast<std::size_t>(check)];
}

std::optional<Code> Code::numbered(CodeKind kind, std::int64_t number) {
    const std::string body = bodyOf(kind, number);
    const char check = *iso7064Mod37_2(body);
    if (!inAlphabet(check)) return std::nullopt;
    return Code{kind, body + '-' + check};
}

Code Code::next(CodeKind kind, std::int64_t& number) {
    for (;;)
        if (auto code = numbered(kind, number++)) return *std::move(code);
}

std::optional<Code> Code::read(std::string_view text) {
    const auto tidy = tidied(text);
    if (!tidy) return std::nullopt;
    const std::string body = tidy->substr(0, tidy->size() - 2);
    for (const char c : body)
        if (!inAlphabet(c)) return std::nullopt;
    const auto kind = kindOf(body.front());
    if (!kind || iso7064Mod37_2(body) != tidy->back() || !inAlphabet(tidy->back())) return std::nullopt;
    return Code{*kind, *tidy};
}

} // namespace riband
