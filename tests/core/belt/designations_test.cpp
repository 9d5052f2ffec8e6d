// designations.csv: texts of the standards, of makers and of counters, with what they mean by the facts that
// were gathered before the reader was written.
#include "core/measure/csv.h"
#include "core/measure/text.h"
#include "tests/catch.h"
#include "tests/core/belt/belt_words.h"

#include <fstream>
#include <sstream>

using namespace riband;
using namespace riband::belt;

namespace {

struct Line {
    std::string text, kind, profile, teeth, length, width, ribs;
    bool doubleSided;
};

std::vector<Line> lines() {
    std::ifstream file{RIBAND_SOURCE_DIR "/tests/core/belt/designations.csv"};
    std::ostringstream whole;
    whole << file.rdbuf();
    const auto table = CsvTable::read(whole.str());
    REQUIRE(table.ok());
    const auto at = [&](const CsvTable::Row& row, const char* column) {
        return row.fields[*table->column(column)];
    };
    std::vector<Line> all;
    for (const auto& row : table->rows())
        all.push_back({at(row, "text"), at(row, "class"), at(row, "profile"), at(row, "teeth"),
                       at(row, "length_mm"), at(row, "width_mm"), at(row, "ribs"),
                       at(row, "double_sided") == "yes"});
    return all;
}

/// The table names the single-sided profile and says apart that it is double-sided.
std::string singleSided(const Reading& reading) {
    const Profile* profile = theTables().profile(reading.belt.profile);
    return profile->base.empty() ? profile->name : profile->base;
}

bool widthAgrees(const Reading& reading, const Line& line) {
    if (!reading.belt.teeth) {
        if (line.ribs.empty()) return !reading.width;
        return reading.width == Extent{*readRibs(line.ribs)};
    }
    if (line.width.empty()) return !reading.width;
    return reading.width == Extent{*readWidth(line.width)};
}

/// The table gives exact ribbed code lengths; the reader gives the made length within 6 mm of it.
bool lengthAgrees(const Reading& reading, const Line& line) {
    const auto said = readLength(line.length)->inNanometres();
    const auto off = std::abs(said - reading.belt.length.inNanometres());
    if (!reading.belt.teeth) return off <= 6'000'000;
    return off <= 5'000 && std::to_string(reading.belt.teeth->count()) == line.teeth;
}

bool agrees(const Reading& reading, const Line& line) {
    return singleSided(reading) == line.profile && reading.doubleSided == line.doubleSided &&
           lengthAgrees(reading, line) && widthAgrees(reading, line) && reading.quantity == 1;
}

bool anyAgrees(const Understanding& understanding, const Line& line) {
    for (const Reading& reading : understanding.readings)
        if (agrees(reading, line)) return true;
    return false;
}

} // namespace

TEST_CASE("Each form of the gathered designations is understood as the facts say", "[designations]") {
    const auto all = lines();
    REQUIRE(all.size() > 100);
    for (const Line& line : all) {
        const Understanding understanding = understand(line.text, theTables());
        INFO(line.text << " -> " << inWords(understanding));
        if (line.kind == "invalid") {
            CHECK(understanding.fault);
            continue;
        }
        REQUIRE_FALSE(understanding.fault);
        // A candidate without a profile stands for a V-belt, which the question names.
        if (!line.profile.empty()) CHECK(anyAgrees(understanding, line));
        if (line.kind == "ambiguous")
            CHECK(understanding.question);
        else
            CHECK((understanding.readings.size() == 1 && !understanding.question));
    }
}
