#include "core/foresight/demand/fitted.h"
#include "core/measure/csv.h"
#include "tests/catch.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>

// The figures of the R package `forecast` 8.20 for the same series: r_forecast.R writes r_forecast.csv.

using namespace riband;
using namespace riband::foresight;

namespace {

const std::string folder = RIBAND_SOURCE_DIR "/tests/core/foresight/demand/";

struct Row {
    std::string name, figure;
    double weight, value;
    Series series;
};

Series seriesOf(const std::string& text) {
    Series series;
    std::istringstream numbers{text};
    for (double number = 0; numbers >> number;)
        series.push_back(number);
    return series;
}

std::vector<Row> rowsOf(const std::string& text) {
    const auto table = CsvTable::read(text);
    REQUIRE(table);
    std::vector<Row> rows;
    for (const auto& row : table->rows())
        rows.push_back({row.fields[0], row.fields[1], std::stod(row.fields[2]), std::stod(row.fields[3]),
                        seriesOf(row.fields[4])});
    return rows;
}

std::string contentOf(const std::string& path) {
    std::ifstream file{path};
    return {std::istreambuf_iterator<char>{file}, {}};
}

void compare(const Row& row) {
    INFO(row.name << " " << row.figure << " " << row.weight);
    const Weights weights{row.weight, row.weight};
    if (row.figure == "croston") {
        CHECK(expectedAfter(row.series, Method::Croston, weights) == Approx(row.value).epsilon(1e-10));
        CHECK(expectedAfter(row.series, Method::SyntetosBoylan, weights) ==
              Approx(row.value * (1 - row.weight / 2)).epsilon(1e-10));
    } else if (row.figure == "ses") {
        CHECK(expectedAfter(row.series, Method::Smoothing, weights) == Approx(row.value).epsilon(1e-10));
    } else { // R's own least squares: ours is no worse
        const auto errors =
            rollingErrors(row.series, Method::Smoothing, bestWeights(row.series, Method::Smoothing, 1), 1, 1);
        CHECK(errors.meanSquare * errors.origins <= row.value * 1.0005);
    }
}

} // namespace

TEST_CASE("Forecasts are those of R's forecast package", "[demand][r]") {
    const auto rows = rowsOf(contentOf(folder + "r_forecast.csv"));
    REQUIRE(rows.size() == 63);
    for (const Row& row : rows)
        compare(row);
}

TEST_CASE("Where R is there, its figures are made anew", "[demand][r]") {
    if (std::system("Rscript -e 'library(forecast)' >/dev/null 2>&1") != 0) {
        WARN("Rscript with the package forecast is not here: only the kept figures were compared");
        return;
    }
    std::FILE* pipe = popen(("Rscript '" + folder + "r_forecast.R'").c_str(), "r");
    REQUIRE(pipe);
    std::string text;
    std::array<char, 4096> part{};
    for (std::size_t got = 0; (got = std::fread(part.data(), 1, part.size(), pipe)) > 0;)
        text.append(part.data(), got);
    REQUIRE(pclose(pipe) == 0);
    const auto rows = rowsOf(text);
    REQUIRE(rows.size() == 63);
    for (const Row& row : rows)
        compare(row);
}
