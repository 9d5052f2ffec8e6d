// Any text whatever: the reader neither crashes nor contradicts itself. Built by clang with libFuzzer.
#include "core/belt/reader.h"
#include "tests/core/belt/read_tables.h"

#include <cstdio>
#include <cstdlib>

using namespace riband;
using namespace riband::belt;

namespace {

void demand(bool holds, const char* rule) {
    if (holds) return;
    std::fprintf(stderr, "broken: %s\n", rule);
    std::abort();
}

void demandGoodReading(const Reading& reading, const Tables& tables) {
    const Profile* profile = tables.profile(reading.belt.profile);
    demand(profile, "a reading names a profile of the tables");
    demand(profile->ribbed() != reading.belt.teeth.has_value(), "toothed belts have teeth, ribbed ones none");
    if (reading.belt.teeth)
        demand(profile->pitch * *reading.belt.teeth == reading.belt.length, "the length is teeth x pitch");
    demand(reading.belt.length > Length::nanometres(0), "a belt has a length");
    demand(reading.quantity >= 1, "a quantity is at least one");
    if (!reading.width) return;
    demand(reading.width->unit() == profile->unit() && !reading.width->isNone(),
           "a width is more than nothing");
    demand(*reading.width <= tables.widestSleeve(profile->name), "no belt is wider than any sleeve");
}

/// What is printed of a reading is read back to the same belt.
void demandRoundTrip(const Reading& reading, const Tables& tables) {
    if (!reading.width || !reading.belt.construction.empty()) return;
    const bool usual = !reading.belt.teeth || reading.belt.teeth->count() >= 20;
    if (!usual) return;
    const auto again = understand(printed(reading.belt, *reading.width, tables), tables);
    for (const Reading& other : again.readings)
        if (other.belt == reading.belt && other.width == reading.width) return;
    demand(false, "what is printed is read back");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const Tables& tables = theTables();
    const std::string_view text{reinterpret_cast<const char*>(bytes), size};
    const Understanding understood = understand(text, tables);
    demand(understood.readings.empty() == understood.fault.has_value(), "readings or a fault, never both");
    demand(understood.readings.size() < 2 || understood.question, "several readings come with a question");
    for (const Reading& reading : understood.readings) {
        demandGoodReading(reading, tables);
        demandRoundTrip(reading, tables);
    }
    const auto belt = readBelt(text, tables);
    if (belt) demand(tables.profile(belt->profile), "a belt has a profile");
    return 0;
}
