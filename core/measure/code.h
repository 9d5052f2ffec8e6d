#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace riband {

/// What a written code names.
enum class CodeKind : std::uint8_t { Piece, Ticket, Order };

/// A short code with a check character by ISO/IEC 7064:2003, MOD 37-2, written by hand and scanned: "7K2-M".
/// The pure system MOD 37-2 finds every wrong character and every swap of two (next to each other or not the
/// same). Bodies use 0-9 and A-Z without I, O, Q, U; a number whose check character would be one of these or
/// `*` is skipped when codes are given out. Pieces begin with a digit, tickets with T, orders with N. Pieces
/// start with three body characters and grow when these run out.
class Code {
public:
    /// The code number `number` (0, 1, 2 ...) of its kind would have; nothing if that number must be skipped.
    static std::optional<Code> numbered(CodeKind kind, std::int64_t number);
    /// The code of the first number from `number` on that needs no skipping; `number` becomes the one after
    /// it.
    static Code next(CodeKind kind, std::int64_t& number);
    /// Reads "7K2-M", "7k2-m"; O is read as 0 and I as 1. The dash must be there, so that no belt's name is
    /// taken for a code. Nothing if a character is wrong or swapped.
    static std::optional<Code> read(std::string_view text);
    CodeKind kind() const { return kind_; }
    /// "7K2-M"
    const std::string& text() const { return text_; }
    friend bool operator==(const Code&, const Code&) = default;

private:
    Code(CodeKind kind, std::string text) : kind_{kind}, text_{std::move(text)} {}
    CodeKind kind_;
    std::string text_;
};

/// The ISO/IEC 7064 MOD 37-2 check character of `body` (0-9, A-Z): 0-9, A-Z or `*`. Nothing if `body` has
/// another character.
std::optional<char> iso7064Mod37_2(std::string_view body);

} // namespace riband
