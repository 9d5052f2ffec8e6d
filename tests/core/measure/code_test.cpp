#include "core/measure/code.h"
#include "tests/catch.h"

#include <set>

using namespace riband;

TEST_CASE("The check character is that of ISO/IEC 7064 MOD 37-2", "[measure]") {
    // Donation numbers of ISBT 128 use the same system; the first is the example of a published
    // implementation (python-stdnum, module iso7064.mod_37_2); the rest were computed with it.
    CHECK(iso7064Mod37_2("G123489654321") == 'Y');
    CHECK(iso7064Mod37_2("A999914123456") == 'N');
    CHECK(iso7064Mod37_2("RIBAND2026") == 'L');
    CHECK(iso7064Mod37_2("7K2") == '9');
    CHECK(iso7064Mod37_2("ZZZZ9999") == 'P');
    CHECK_FALSE(iso7064Mod37_2("7k2").has_value());
}

TEST_CASE("Codes are short, of one kind each, and never twice the same", "[measure]") {
    std::set<std::string> seen;
    for (const CodeKind kind : {CodeKind::Piece, CodeKind::Ticket, CodeKind::Order}) {
        std::int64_t number = 0;
        for (int i = 0; i < 40'000; ++i) {
            const Code code = Code::next(kind, number);
            if (!seen.insert(code.text()).second) FAIL(code.text());
            const auto again = Code::read(code.text());
            if (!again || !(*again == code)) FAIL(code.text());
        }
    }
    std::int64_t first = 0;
    CHECK(Code::next(CodeKind::Piece, first).text().size() == 5);
    std::int64_t twentyThousandth = 20'000;
    CHECK(Code::next(CodeKind::Piece, twentyThousandth).text().size() == 6);
    CHECK(Code::read("T00-" + std::string(1, *iso7064Mod37_2("T00")))->kind() == CodeKind::Ticket);
}

TEST_CASE("Any one wrong character is refused", "[measure]") {
    std::int64_t number = 0;
    for (int i = 0; i < 300; ++i, number += 37) {
        const std::string text = Code::next(CodeKind::Piece, number).text();
        for (std::size_t at = 0; at < text.size(); ++at)
            for (const char c : std::string_view{"0123456789ABCDEFGHJKLMNPRSTVWXYZ"}) {
                if (c == text[at] || text[at] == '-') continue;
                std::string wrong = text;
                wrong[at] = c;
                if (Code::read(wrong)) FAIL(text + " and " + wrong);
            }
    }
}

TEST_CASE("Any two swapped characters are refused", "[measure]") {
    std::int64_t number = 11;
    for (int i = 0; i < 2000; ++i, number += 7) {
        const std::string text = Code::next(CodeKind::Piece, number).text();
        for (std::size_t a = 0; a < text.size(); ++a)
            for (std::size_t b = a + 1; b < text.size(); ++b) {
                if (text[a] == text[b] || text[a] == '-' || text[b] == '-') continue;
                std::string swapped = text;
                std::swap(swapped[a], swapped[b]);
                if (Code::read(swapped)) FAIL(text + " and " + swapped);
            }
    }
}

TEST_CASE("What is written by hand is read kindly", "[measure]") {
    std::int64_t number = 33;
    const Code code = Code::next(CodeKind::Piece, number); // 01x-...
    std::string byHand = " " + code.text() + " ";
    for (char& c : byHand) {
        if (c == '0') c = 'o';
        if (c == '1') c = 'I';
    }
    CHECK(Code::read(byHand) == code);
    CHECK_FALSE(Code::read("").has_value());
    CHECK_FALSE(Code::read("H8M 1200 30").has_value());
    CHECK_FALSE(Code::read("300L075").has_value());
    CHECK_FALSE(Code::read(std::string(1000, '7')).has_value());
}
