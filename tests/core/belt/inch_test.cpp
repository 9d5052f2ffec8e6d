// The inch lengths and widths worked out a second way: exact fractions of an inch, 1 in = 25.4 mm (ISO 5296
// gives the pitches as fractions).
#include "tests/catch.h"
#include "tests/core/belt/belt_words.h"

#include <numeric>

using namespace riband;
using namespace riband::belt;

namespace {

struct Fraction {
    std::int64_t over, under;

    Fraction operator*(Fraction other) const {
        const std::int64_t a = std::gcd(over, other.under), b = std::gcd(other.over, under);
        return {(over / a) * (other.over / b), (under / b) * (other.under / a)};
    }
    bool isWhole() const { return over % under == 0; }
    std::int64_t whole() const { return over / under; }
};

const Fraction nanometresAnInch{25'400'000, 1};

struct InchProfile {
    const char* name;
    Fraction pitch; ///< in inches
};
const InchProfile profiles[] = {{"MXL", {2, 25}}, {"XXL", {1, 8}}, {"XL", {1, 5}},  {"L", {3, 8}},
                                {"H", {1, 2}},    {"XH", {7, 8}},  {"XXH", {5, 4}}, {"40DP", {51, 625}}};

} // namespace

TEST_CASE("Each inch length is its teeth times the fraction of an inch", "[inch]") {
    int count = 0;
    for (const InchProfile& profile : profiles) {
        const Fraction pitch = profile.pitch * nanometresAnInch;
        REQUIRE(pitch.isWhole());
        CHECK(theTables().profile(profile.name)->pitch == Length::nanometres(pitch.whole()));
        for (const MadeLength& made : theTables().lengths(profile.name)) {
            const Fraction length = Fraction{made.teeth->count(), 1} * profile.pitch * nanometresAnInch;
            REQUIRE(length.isWhole());
            CHECK(made.length == Length::nanometres(length.whole()));
            ++count;
        }
    }
    CHECK(count == 646); // MXL 255, XXL 15, XL 186, L 80, H 82, XH 19, XXH 9
}

TEST_CASE("The code of each inch length is its tenths of an inch, rounded", "[inch]") {
    for (const InchProfile& profile : profiles) {
        if (std::string_view{"MXL XXL 40DP"}.find(profile.name) != std::string_view::npos) continue;
        for (const MadeLength& made : theTables().lengths(profile.name)) {
            // One maker codes 63.75 in as 640 and 191.25 in as 1915: a quarter inch off.
            if (made.code == "640" || made.code == "1915") continue;
            const Fraction tenths = Fraction{made.teeth->count() * 10, 1} * profile.pitch;
            INFO(profile.name << ' ' << made.code);
            CHECK(std::abs(std::stoll(made.code) * tenths.under - tenths.over) * 2 <= tenths.under);
            const auto read = readBelt(made.code + profile.name, theTables());
            if (read)
                CHECK(read->length == made.length); // else the letter may be ribbed, too
            else
                CHECK(read.reason().kind == ReadFault::Kind::SeveralBelts);
        }
    }
}

TEST_CASE("Each width code is its fraction of an inch, half a micrometre rounded up", "[inch]") {
    const std::pair<const char*, Fraction> codes[] = {
        {"012", {1, 8}}, {"019", {3, 16}}, {"025", {1, 4}}, {"031", {5, 16}}, {"037", {3, 8}},
        {"050", {1, 2}}, {"075", {3, 4}},  {"100", {1, 1}}, {"150", {3, 2}},  {"200", {2, 1}},
        {"300", {3, 1}}, {"400", {4, 1}},  {"500", {5, 1}}};
    int count = 0;
    for (const InchProfile& profile : profiles)
        for (const StandardWidth& width : theTables().widths(profile.name))
            for (const auto& [code, inches] : codes) {
                if (width.code != code) continue;
                const Fraction half = inches * Fraction{25'400 * 2, 1}; // half micrometres
                REQUIRE(half.isWhole());
                CHECK(width.extent.count() == (half.whole() + 1) / 2);
                ++count;
            }
    CHECK(count == 30); // all inch widths of the table
}
