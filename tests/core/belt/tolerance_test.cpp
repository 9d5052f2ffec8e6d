#include "tests/catch.h"
#include "tests/core/belt/read_tables.h"

using namespace riband;
using namespace riband::belt;

namespace {

Belt beltOf(const std::string& profile, std::int64_t nanometres, std::string construction = "") {
    return {profile, std::nullopt, Length::nanometres(nanometres), std::move(construction)};
}

struct Row {
    const char* rule;
    const char* profile;
    std::int64_t lengthUm;
    std::int64_t widthUm;
    std::int64_t plusUm;
    std::int64_t minusUm;
    const char* standard;
};

// Printed rows of the standards as those who apply them quote them; see docs/sources.md.
const Row rows[] = {
    {"ISO 5296, L to 838.2 mm", "L", 819'150, 19'050, 800, 800, "ISO 5296"},
    {"ISO 5296, L to 1676.4 mm", "L", 952'500, 19'050, 800, 1300, "ISO 5296"},
    {"ISO 5296, H 2 in over 1676.4 mm", "H", 2'540'000, 50'800, 1300, 1500, "ISO 5296"},
    {"ISO 5296, H 3/4 in: 19.05 is the band of 19.1", "H", 1'066'800, 19'050, 800, 1300, "ISO 5296"},
    {"ISO 5296, H 3 in", "H", 1'066'800, 76'200, 1500, 1500, "ISO 5296"},
    {"ISO 5296, XL 3/8 in", "XL", 177'800, 9'525, 500, 800, "ISO 5296"},
    {"ISO 5296, XXH", "XXH", 1'778'000, 50'800, 4800, 4800, "ISO 5296"},
    {"ISO 13050, H8M 30 to 840 mm", "H8M", 840'000, 30'000, 800, 800, "ISO 13050"},
    {"ISO 13050, H8M 30 over 840 mm", "H8M", 1'200'000, 30'000, 800, 1200, "ISO 13050"},
    {"ISO 13050, H8M 85 over 1680 mm", "H8M", 2'400'000, 85'000, 2000, 2000, "ISO 13050"},
    {"ISO 13050, H5M 9", "H5M", 500'000, 9'000, 400, 800, "ISO 13050"},
    {"ISO 13050, H14M 115", "H14M", 1'400'000, 115'000, 2400, 2800, "ISO 13050"},
    {"ISO 13050, H20M 340 over 1680 mm", "H20M", 2'000'000, 340'000, 4800, 6400, "ISO 13050"},
    {"ISO 13050, taken for S8M 30", "S8M", 960'000, 30'000, 800, 1200, "ISO 13050"},
    {"a width between two bands goes by the general rule", "H8M", 1'200'000, 40'000, 1200, 1200,
     "ARPM IP-24 / IP-27"},
    {"IP-24/27, G8M 36 to 838.2 mm", "G8M", 640'000, 36'000, 800, 800, "ARPM IP-24 / IP-27"},
    {"DIN 7721, T5", "T5", 500'000, 10'000, 500, 500, "DIN 7721 / ISO 17396"},
    {"DIN 7721, T2.5", "T2.5", 177'500, 6'000, 300, 300, "DIN 7721 / ISO 17396"},
    {"DIN 7721, AT20", "AT20", 1'500'000, 75'000, 1000, 1000, "DIN 7721 / ISO 17396"},
    {"DIN 7721, T10 of both sides", "T10-DL", 1'500'000, 27'000, 500, 500, "DIN 7721 / ISO 17396"},
    {"ISO 5296, L of both sides", "DL", 762'000, 19'050, 800, 800, "ISO 5296"},
};

} // namespace

TEST_CASE("A cut width may differ by what the standard of its profile says", "[tolerance]") {
    for (const Row& row : rows) {
        INFO(row.rule);
        const auto tolerance = theTables().widthTolerance(beltOf(row.profile, row.lengthUm * 1000),
                                                          Width::micrometres(row.widthUm));
        REQUIRE(tolerance.has_value());
        CHECK(tolerance->plus.inMicrometres() == row.plusUm);
        CHECK(tolerance->minus.inMicrometres() == row.minusUm);
        CHECK(tolerance->standard == row.standard);
    }
}

TEST_CASE("Where no source gives a width tolerance there is none", "[tolerance]") {
    CHECK_FALSE(theTables().widthTolerance(beltOf("PJ", 1'194'000'000), Width::micrometres(14'040)));
    CHECK_FALSE(theTables().widthTolerance(beltOf("AT3", 450'000'000), Width::millimetres(10)));
    CHECK_FALSE(theTables().widthTolerance(beltOf("m3", 593'761'014), Width::millimetres(16)));
    CHECK_FALSE(theTables().widthTolerance(beltOf("unknown", 1), Width::millimetres(16)));
}

TEST_CASE("A polyurethane body of a rubber profile has its maker's tolerance", "[tolerance]") {
    const auto tolerance = theTables().widthTolerance(beltOf("H8M", 1'200'000'000, "polyurethane steel cord"),
                                                      Width::millimetres(40));
    REQUIRE(tolerance);
    CHECK(tolerance->plus == Width::millimetres(1));
    CHECK(tolerance->confidence == Confidence::OneSource);
}

TEST_CASE("A length tolerance of two pulleys' distance counts double on the belt", "[tolerance]") {
    // ISO 5296: L of 819.15 mm +-0.66. IP-24/27: 1200 mm +-0.38 of the distance, so +-0.76 of the belt.
    CHECK(theTables().lengthTolerance(beltOf("L", 819'150'000))->plus == Width::micrometres(660));
    CHECK(theTables().lengthTolerance(beltOf("H8M", 1'200'000'000))->plus == Width::micrometres(760));
    const auto ribbed = theTables().lengthTolerance(beltOf("PJ", 1'194'000'000));
    REQUIRE(ribbed); // ISO 9982, from memory
    CHECK(ribbed->plus == Width::millimetres(8));
    CHECK(ribbed->minus == Width::millimetres(16));
    CHECK(ribbed->confidence == Confidence::MemoryOnly);
    CHECK_FALSE(theTables().lengthTolerance(beltOf("T2", 90'000'000)));
}
