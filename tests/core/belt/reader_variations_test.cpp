// The same belt written in every order, with every separator, in capitals and small letters: one meaning.
#include "tests/catch.h"
#include "tests/core/belt/belt_words.h"

#include <algorithm>

using namespace riband;
using namespace riband::belt;

namespace {

struct Belts {
    const char* meaning;
    std::vector<std::string> parts; ///< profile, length, width: no two of them alike
};

const Belts belts[] = {
    {"H8M 1200 @30", {"H8M", "1200", "30"}},    {"H14M 1400 @55", {"H14M", "1400", "55"}},
    {"H5M 500 @15", {"H5M", "500", "15"}},      {"R8M 1280 @30", {"R8M", "1280", "30"}},
    {"G8M 1600 @21", {"G8M", "1600", "21"}},    {"G14M 1190 @37", {"G14M", "1190", "37"}},
    {"T5 500 @10", {"T5", "500", "10"}},        {"T10 1250 @27", {"T10", "1250", "27"}},
    {"T2.5 177.5 @6", {"T2.5", "177.5", "6"}},  {"AT10 1000 @50", {"AT10", "1000", "50"}},
    {"AT5 750 @16", {"AT5", "750", "16"}},      {"AT20 1500 @75", {"AT20", "1500", "75"}},
    {"DH8M 960 @50", {"DH8M", "960", "50"}},    {"S8M 1200 @25", {"S8M", "1200", "25mm"}},
    {"XL 70 @6.35", {"XL", "70", "025"}},       {"L 300 @19.05", {"L", "300", "075"}},
    {"H 480 @38.1", {"H", "480", "1 1/2 in"}},  {"XH 560 @101.6", {"XH", "560", "400"}},
    {"MXL 80.0 @6.35", {"MXL", "80.0", "025"}}, {"PJ 1194 @6", {"PJ", "1194", "6"}},
    {"PK 1200 @7", {"PK", "1200", "7"}},        {"PL 1270 @12", {"PL", "1270", "12"}},
};

std::string joined(const std::vector<std::string>& parts, const std::string& separator) {
    std::string text;
    for (const auto& part : parts)
        text += (text.empty() ? "" : separator) + part;
    return text;
}

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return text;
}

std::string withCommas(std::string text) {
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if (text[i] == '.') text[i] = ',';
    return text;
}

/// A cross glued to L makes XL, one glued to XH makes XXH: no way to write these.
bool isOtherProfile(std::string_view separator, const std::string& profile) {
    return separator == "x" && (profile == "L" || profile == "H" || profile == "XL" || profile == "XH");
}

} // namespace

TEST_CASE("Order, separators and case do not change what is meant", "[reader]") {
    int count = 0;
    for (const Belts& belt : belts) {
        std::vector<std::string> parts = belt.parts;
        std::sort(parts.begin(), parts.end());
        do {
            for (const char* separator :
                 {" ", "  ", "-", " - ", "/", " / ", " x ", "x", "*", "\u00d7", " \u2013 ", "\t"}) {
                const std::string text = joined(parts, separator);
                for (const auto& way : {text, lower(text), withCommas(text)}) {
                    if (isOtherProfile(separator, belt.parts[0])) continue;
                    INFO(way);
                    CHECK(understood(way) == belt.meaning);
                    ++count;
                }
            }
        } while (std::next_permutation(parts.begin(), parts.end()));
    }
    CHECK(count > 4000);
}

TEST_CASE("How many is said the same for every profile", "[reader]") {
    for (const Belts& belt : belts) {
        const std::string text = joined(belt.parts, " "), three = belt.meaning + std::string{" x3"};
        for (const std::string& way :
             {"3 x " + text, text + " 3x", text + " x3", text + " 3 pcs", "qty 3 " + text, text + " x 3",
              "three pieces " + text, text + ", 3 off"}) {
            INFO(way);
            CHECK(understood(way) == three);
        }
    }
}
