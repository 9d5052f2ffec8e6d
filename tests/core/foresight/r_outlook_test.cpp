#include "core/foresight/outlook.h"
#include "core/measure/csv.h"
#include "tests/catch.h"
#include "tests/core/foresight/shops.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>

// The outlook's shares and rate against plain R: r_outlook.R writes r_outlook.csv.

using namespace riband;
using namespace riband::foresight;

namespace {

const std::string folder = RIBAND_SOURCE_DIR "/tests/core/foresight/";

std::string contentOf(const std::string& path) {
    std::ifstream file{path};
    return {std::istreambuf_iterator<char>{file}, {}};
}

double shareOf(const Outlook& outlook, Size width) {
    for (const auto& each : outlook.widths())
        if (each.width == width) return each.share;
    return 0;
}

/// Learns the orders as they stand in the table and compares after each.
void compare(const std::string& text) {
    const auto table = CsvTable::read(text);
    REQUIRE(table);
    REQUIRE(table->rows().size() == 60 + 6 * (4 + 5));
    auto setting = eightMillimetre();
    setting.ordersPerYear = 100;
    Outlook outlook{setting};
    for (const auto& row : table->rows()) {
        const auto& fields = row.fields;
        const int of = std::stoi(fields[2]);
        if (fields[1] == "rate")
            outlook.learn({std::stod(fields[4]), {{std::stoi(fields[5]), std::stoi(fields[6])}}});
        CAPTURE(fields[0], fields[1], of);
        const double ours = fields[1] == "rate"    ? outlook.ordersPerYear()
                            : fields[1] == "width" ? shareOf(outlook, of)
                                                   : outlook.shareOfQuantity(of);
        CHECK(ours == Approx(std::stod(fields[3])).epsilon(1e-6));
    }
}

} // namespace

TEST_CASE("Shares and rate are those that R integrates", "[foresight][r]") {
    compare(contentOf(folder + "r_outlook.csv"));
}

TEST_CASE("Where R is there, the outlook's figures are made anew", "[foresight][r]") {
    if (std::system("Rscript --version >/dev/null 2>&1") != 0) {
        WARN("Rscript is not here: only the kept figures were compared");
        return;
    }
    std::FILE* pipe = popen(("Rscript '" + folder + "r_outlook.R'").c_str(), "r");
    REQUIRE(pipe);
    std::string text;
    std::array<char, 4096> part{};
    for (std::size_t got = 0; (got = std::fread(part.data(), 1, part.size(), pipe)) > 0;)
        text.append(part.data(), got);
    REQUIRE(pclose(pipe) == 0);
    compare(text);
}
