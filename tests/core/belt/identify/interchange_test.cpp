#include "tests/catch.h"

#include "core/belt/identify/interchange.h"
#include "core/belt/reader.h"
#include "tests/core/belt/read_tables.h"

#include <stdexcept>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::identify;

namespace {

using Verdict = Interchange::Verdict;

Interchange between(const char* first, const char* second) {
    return interchange(*theTables().profile(first), *theTables().profile(second));
}

Belt named(const char* text) {
    const auto read = readBelt(text, theTables());
    REQUIRE(read.ok());
    return *read;
}

} // namespace

TEST_CASE("One pitch but another tooth never interchanges", "[identify]") {
    for (const auto& [first, second] : std::vector<std::pair<const char*, const char*>>{
             {"H8M", "S8M"}, {"H8M", "R8M"}, {"H8M", "G8M"}, {"T5", "AT5"}, {"T10", "AT10"}, {"H5M", "T5"}}) {
        INFO(first << " and " << second);
        CHECK(between(first, second).verdict == Verdict::SamePitchNo);
        CHECK_FALSE(between(first, second).interchanges());
    }
    CHECK(between("T5", "AT5").thickness == Approx(.5)); // 2.2 and 2.7
    CHECK(between("H8M", "S8M").height == Approx(-.33)); // 3.38 and 3.05
}

TEST_CASE("Nearly one pitch never interchanges and deceives the eye", "[identify]") {
    CHECK(between("T5", "XL").verdict == Verdict::NearlyPitchNo);
    CHECK(between("T5", "XL").perPitch == Approx(.08));
    CHECK(between("L", "m3").verdict == Verdict::NearlyPitchNo);
    CHECK(between("MXL", "G2M").verdict == Verdict::NearlyPitchNo);
}

TEST_CASE("Other pitches, and ribs beside teeth, never interchange", "[identify]") {
    CHECK(between("H8M", "H14M").verdict == Verdict::Never);
    CHECK(between("L", "T10").verdict == Verdict::Never); // 5 % apart
    CHECK(between("PL", "S4.5M").verdict == Verdict::Never);
    CHECK(between("PJ", "PK").verdict == Verdict::Never);
}

TEST_CASE("A double-sided belt has the tooth of its single-sided one but not its back", "[identify]") {
    CHECK(between("DH8M", "H8M").verdict == Verdict::SameTooth);
    CHECK(between("T5", "T5-DL").verdict == Verdict::SameTooth);
    CHECK(between("DH8M", "S8M").verdict == Verdict::SamePitchNo);
    CHECK(between("DH8M", "DS8M").verdict == Verdict::SamePitchNo);
}

TEST_CASE("A belt is the same under the standards that state it, whatever its code", "[identify]") {
    const Interchange same = interchange(named("322 L"), named("L 819.15"), theTables());
    CHECK(same.verdict == Verdict::Same);
    CHECK(same.interchanges());
    CHECK(same.standards == std::vector<std::string>{"ISO 5296:2012", "ISO 5296-1:1989", "ARPM IP-24"});
    // 470J: 47.0 in, printed as 1194 mm.
    CHECK(interchange(named("470J"), named("PJ 1194"), theTables()).verdict == Verdict::Same);
    CHECK(interchange(named("H8M 1200"), named("H8M 150 teeth"), theTables()).verdict == Verdict::Same);
}

TEST_CASE("One profile of another length is another belt", "[identify]") {
    const Interchange other = interchange(named("H8M 1200"), named("H8M 1208"), theTables());
    CHECK(other.verdict == Verdict::OtherLength);
    CHECK(other.standards.empty());
}

TEST_CASE("Whatever pair, the verdict is the same both ways and only a profile stands for itself",
          "[identify]") {
    for (const Profile& first : theTables().profiles())
        for (const Profile& second : theTables().profiles()) {
            CHECK(interchange(first, second).verdict == interchange(second, first).verdict);
            CHECK(interchange(first, second).interchanges() == (first.name == second.name));
        }
}

TEST_CASE("Look-alikes of the tables are exactly the pairs of one or nearly one pitch, both on as many sides",
          "[identify]") {
    for (const Profile& first : theTables().profiles())
        for (const Profile* second : theTables().lookAlikes(first.name)) {
            const Verdict verdict = interchange(first, *second).verdict;
            INFO(first.name << " and " << second->name);
            CHECK((verdict == Verdict::SamePitchNo || verdict == Verdict::NearlyPitchNo));
        }
}

TEST_CASE("A profile that is in no table is a mistake of the caller", "[identify]") {
    CHECK_THROWS_AS(interchange(Belt{"X9", {}, Length::millimetres(9), ""}, named("H8M 1200"), theTables()),
                    std::invalid_argument);
}
