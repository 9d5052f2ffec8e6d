#include "core/belt/drive/said_pulley.h"
#include "core/belt/said_profile.h"
#include "tests/catch.h"
#include "tests/core/belt/read_tables.h"

#include <algorithm>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::drive;

namespace {

std::vector<std::string> saidNames(const char* words) {
    std::vector<std::string> names;
    for (const Profile* profile : profilesSaid(words, theTables()))
        names.push_back(profile->name);
    std::sort(names.begin(), names.end());
    return names;
}

using Names = std::vector<std::string>;

} // namespace

TEST_CASE("A profile is said in any case; without its letter it is one of several", "[drive][said]") {
    CHECK(saidNames("h8m") == Names{"H8M"});
    CHECK(saidNames(" H8M ") == Names{"H8M"});
    CHECK(saidNames("T5") == Names{"T5"}); // not AT5, though that ends so
    CHECK(saidNames("L") == Names{"L"});
    CHECK(saidNames("5M") == Names{"G5M", "H5M", "R5M", "S5M"});
    CHECK(saidNames("T7").empty());
    CHECK(saidNames("").empty());
}

TEST_CASE("A pulley is said by teeth or by its diameter, and what can't be is told", "[drive][said]") {
    const Profile* h5m = theTables().profile("H5M");
    const Profile* pj = theTables().profile("PJ");
    CHECK(pulleyAsSaid(h5m, {Teeth{22}, {}})->pitchDiameter == Approx(35.0141)); // 22 x 5 / pi
    CHECK(pulleyAsSaid(nullptr, {{}, 70.0})->pitchDiameter == Approx(70));
    // The cords of PJ run its effective line outside of the effective diameter.
    CHECK(pulleyAsSaid(pj, {{}, 60.0})->pitchDiameter == Approx(60 + 2 * *pj->form.effectiveLine));
    CHECK(pulleyAsSaid(h5m, {}).reason() == PulleyFault::NothingOrBoth);
    CHECK(pulleyAsSaid(h5m, {Teeth{22}, 70.0}).reason() == PulleyFault::NothingOrBoth);
    CHECK(pulleyAsSaid(h5m, {{}, 0.0}).reason() == PulleyFault::NotPositive);
    CHECK(pulleyAsSaid(nullptr, {Teeth{22}, {}}).reason() == PulleyFault::TeethNeedProfile);
    CHECK(pulleyAsSaid(pj, {Teeth{22}, {}}).reason() == PulleyFault::RibsHaveNoTeeth);
}

TEST_CASE("In a layout a toothed belt runs over a bare diameter as over a smooth roller", "[drive][said]") {
    const Profile* h5m = theTables().profile("H5M");
    CHECK(pulleyOfLayout(h5m, {{}, 40.0})->pitchDiameter == rollerUnderTeeth(*h5m, 40)->pitchDiameter);
    CHECK(pulleyOfLayout(h5m, {{}, 40.0, Side::Back})->pitchDiameter ==
          rollerOnBack(*h5m, 40)->pitchDiameter);
    CHECK(pulleyOfLayout(h5m, {Teeth{22}, {}, Side::Back}).reason() == PulleyFault::BackHasNoTeeth);
    CHECK(pulleyOfLayout(theTables().profile("DH8M"), {Teeth{22}, {}, Side::Back}));
}
