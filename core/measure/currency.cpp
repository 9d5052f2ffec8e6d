#include "core/measure/currency.h"

#include <algorithm>
#include <array>
#include <string>

namespace riband {

namespace {

constexpr std::array<std::string_view, 16> withoutCents{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY",
                                                        "KMF", "KRW", "PYG", "RWF", "UGX", "VND",
                                                        "VUV", "XAF", "XOF", "XPF"};
constexpr std::array<std::string_view, 7> withThree{"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"};

template <std::size_t N>
bool contains(const std::array<std::string_view, N>& codes, std::string_view code) {
    return std::find(codes.begin(), codes.end(), code) != codes.end();
}

int decimalsOf(std::string_view code) {
    return contains(withoutCents, code) ? 0 : contains(withThree, code) ? 3 : 2;
}

} // namespace

std::optional<Currency> currencyNamed(std::string_view code) {
    if (code.size() != 3) return std::nullopt;
    std::string capital;
    for (const char letter : code) {
        const char large = letter >= 'a' && letter <= 'z' ? static_cast<char>(letter - 'a' + 'A') : letter;
        if (large < 'A' || large > 'Z') return std::nullopt;
        capital += large;
    }
    return Currency{capital, decimalsOf(capital)};
}

} // namespace riband
