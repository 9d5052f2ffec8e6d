#include "core/belt/drive/choices.h"
#include "core/belt/reader.h"
#include "tests/catch.h"
#include "tests/core/belt/read_tables.h"

#include <algorithm>
#include <stdexcept>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::drive;

namespace {

TwoPulleys toothedDrive(const char* name, int first, int second) {
    const Profile& profile = *theTables().profile(name);
    return {&profile, pulleyOf(profile, Teeth{first}), pulleyOf(profile, Teeth{second})};
}

Belt toothedBelt(const char* profile, int teeth, std::string construction = "") {
    Belt belt = *beltOfTeeth(profile, Teeth{teeth}, theTables());
    belt.construction = std::move(construction);
    return belt;
}

std::vector<std::int64_t> teethOf(const Choices& choices) {
    std::vector<std::int64_t> teeth;
    for (const Choice& choice : choices.belts)
        teeth.push_back(choice.belt.teeth->count());
    return teeth;
}

const Choice& choiceOf(const Choices& choices, int teeth) {
    return *std::find_if(choices.belts.begin(), choices.belts.end(),
                         [&](const Choice& choice) { return choice.belt.teeth == Teeth{teeth}; });
}

using Counts = std::vector<std::int64_t>;

} // namespace

TEST_CASE("22 and 44 teeth of 5 mm, about 300 apart, ten either way: what exists, the nearest first",
          "[drive][choices]") {
    // The exact belt is 766.02 mm long. H5M exists in 745 750 755 770 775 790 round it; their distances
    // worked by halving with another program.
    const auto choices = beltsFor(toothedDrive("H5M", 22, 44), {300, Range{10, 10}}, theTables());
    REQUIRE(choices);
    CHECK(choices->wanted.length == Approx(766.0219455038088).epsilon(1e-12));
    CHECK(choices->any);
    CHECK(teethOf(*choices) == Counts{154, 155, 151, 150, 149, 158});
    CHECK(choiceOf(*choices, 154).run.centre == Approx(301.9924002978662).epsilon(1e-12));
    CHECK(choiceOf(*choices, 155).shift == Approx(4.496577106186066).epsilon(1e-9));
    CHECK(choiceOf(*choices, 150).shift == Approx(-8.02502531908226).epsilon(1e-9));
    for (const int teeth : {154, 155, 151, 150})
        CHECK(choiceOf(*choices, teeth).reachable);
    CHECK_FALSE(choiceOf(*choices, 149).reachable); // 10.53 nearer
    CHECK_FALSE(choiceOf(*choices, 158).reachable); // 12.01 farther
    CHECK(choiceOf(*choices, 154).run.teethInMesh() == 10);
    CHECK(choiceOf(*choices, 154).run.ratio == 2);
}

TEST_CASE("Of what the drive can take, what is in stock and wide enough comes first", "[drive][choices]") {
    const TwoPulleys drive = toothedDrive("H5M", 22, 44);
    const std::vector<Stocked> stock = {{toothedBelt("H5M", 150), Width::millimetres(120)},
                                        {toothedBelt("H5M", 155), Width::millimetres(14)},
                                        {toothedBelt("H5M", 158), Width::millimetres(400)},
                                        {toothedBelt("S5M", 154), Width::millimetres(400)}};
    const auto choices =
        beltsFor(drive, {300, Range{10, 10}, Extent{Width::millimetres(15)}}, theTables(), stock);
    // 150 is here; 155 is too narrow; 158 is here but 12 mm too far; S5M is another tooth.
    CHECK(teethOf(*choices) == Counts{150, 154, 155, 151, 158, 149});
    CHECK(choiceOf(*choices, 150).inStock());
    CHECK_FALSE(choiceOf(*choices, 155).inStock());
    CHECK(choiceOf(*choices, 158).inStock());
    const auto narrow =
        beltsFor(drive, {300, Range{10, 10}, Extent{Width::millimetres(14)}}, theTables(), stock);
    CHECK(choiceOf(*narrow, 155).inStock()); // exactly as wide
}

TEST_CASE("A belt that lies ready serves its own width and no other", "[drive][choices]") {
    const TwoPulleys drive = toothedDrive("H5M", 22, 44);
    const std::vector<Stocked> stock = {
        {toothedBelt("H5M", 150), Width::millimetres(0), {Width::millimetres(15), Width::millimetres(25)}}};
    const auto inStock = [&](std::optional<Extent> width) {
        return choiceOf(*beltsFor(drive, {300, {}, width}, theTables(), stock), 150).inStock();
    };
    CHECK(inStock({}));
    CHECK(inStock(Extent{Width::millimetres(15)}));
    CHECK(inStock(Extent{Width::millimetres(25)}));
    CHECK_FALSE(inStock(Extent{Width::millimetres(20)})); // cut once, not again
    CHECK_FALSE(inStock(Extent{Ribs{15}}));
}

TEST_CASE("Without a range the next three on either side are named, stock first", "[drive][choices]") {
    const TwoPulleys drive = toothedDrive("H5M", 22, 44);
    auto choices = beltsFor(drive, {300}, theTables());
    CHECK(teethOf(*choices) == Counts{154, 155, 151, 150, 149, 158});
    CHECK(choices->belts.front().reachable); // nothing was said against it
    SECTION("and the next one that is in stock, if it moves the distance by no more than a tenth") {
        // 700 mm: 29.95 nearer than... 266.9, 33 mm nearer: too far; 710 mm is 271.9, 28.1 mm nearer.
        choices = beltsFor(drive, {300}, theTables(),
                           {{toothedBelt("H5M", 142), Width::millimetres(100)},
                            {toothedBelt("H5M", 140), Width::millimetres(100)}});
        CHECK(choices->belts.front().belt.teeth == Teeth{142});
        CHECK(choices->belts.size() == 7);
    }
    SECTION("but none that is farther off") {
        choices = beltsFor(drive, {300}, theTables(), {{toothedBelt("H5M", 139), Width::millimetres(100)}});
        CHECK(choices->belts.size() == 6);
    }
}

TEST_CASE("A belt that only the shop has is named, too, with all its constructions", "[drive][choices]") {
    // 153 teeth, 765 mm, are in no list.
    REQUIRE_FALSE(theTables().made("H5M", Length::millimetres(765)));
    const auto choices = beltsFor(toothedDrive("H5M", 22, 44), {300}, theTables(),
                                  {{toothedBelt("H5M", 153), Width::millimetres(100)},
                                   {toothedBelt("H5M", 153, "steel cord"), Width::millimetres(40)}});
    const Choice& own = choices->belts.front();
    CHECK(own.belt == toothedBelt("H5M", 153));
    CHECK_FALSE(own.listed);
    CHECK(own.stock.size() == 2);
}

TEST_CASE("A wanted distance that no belt reaches says the least and the greatest that one does",
          "[drive][choices]") {
    const TwoPulleys drive = toothedDrive("H5M", 22, 44);
    const auto far = beltsFor(drive, {50'000}, theTables());
    REQUIRE(far);
    CHECK_FALSE(far->any);
    REQUIRE(far->greatest);
    CHECK(*far->greatest < 50'000);
    CHECK(far->belts.front().run.centre == *far->greatest); // the longest is named all the same
    CHECK(beltsFor(drive, {*far->greatest}, theTables())->any);
    CHECK(beltsFor(drive, {*far->greatest + 5, Range{5, 0}}, theTables())->any);
    CHECK_FALSE(beltsFor(drive, {*far->greatest + 5, Range{4.9, 0}}, theTables())->any);
    CHECK_FALSE(beltsFor(drive, {*far->greatest + 5}, theTables())->any);
}

TEST_CASE("No belt within the range: nothing fits, the neighbours are named", "[drive][choices]") {
    // 755 is 5.5 nearer, 770 is 2.0 farther.
    const auto choices = beltsFor(toothedDrive("H5M", 22, 44), {300, Range{5, 1.9}}, theTables());
    CHECK_FALSE(choices->any);
    CHECK(choices->belts.size() == 6);
    CHECK(std::none_of(choices->belts.begin(), choices->belts.end(),
                       [](const Choice& c) { return c.reachable; }));
}

TEST_CASE("The belt that the published 8 mm example takes needs the distance that is printed there",
          "[drive][choices][published]") {
    // Belt maker's technical manual: 36 and 56 teeth, 425 mm wished, belt of 1200 mm taken: 415.22 mm.
    const auto choices = beltsFor(toothedDrive("H8M", 36, 56), {425}, theTables());
    CHECK(choiceOf(*choices, 150).run.centre == Approx(415.22).margin(0.005));
}

TEST_CASE("Ribbed belts are found by their effective length", "[drive][choices]") {
    const Profile& pj = *theTables().profile("PJ");
    const TwoPulleys drive{&pj, pulleyOf(&pj, 50), pulleyOf(&pj, 50)};
    // Equal pulleys of 50 mm: 1194 = 2 C + 50 pi, C = 518.46.
    const auto choices = beltsFor(drive, {518.5}, theTables());
    CHECK(choices->belts.front().belt.length == Length::millimetres(1194));
    CHECK(choices->belts.front().run.centre == Approx(518.4602).margin(1e-4));
    CHECK_FALSE(choices->belts.front().belt.teeth);
}

TEST_CASE("Every length of every profile comes back from the distance that it has", "[drive][choices]") {
    for (const Profile& profile : theTables().profiles()) {
        const Pulley pulley = profile.ribbed() ? pulleyOf(&profile, 60) : pulleyOf(profile, Teeth{20});
        const TwoPulleys drive{&profile, pulley, pulley};
        for (const MadeLength& made : theTables().lengths(profile.name)) {
            const auto run = withLength(drive, made.length.inMillimetres());
            if (!run) continue;
            const auto choices = beltsFor(drive, {run->centre, Range{0, 0}}, theTables());
            INFO(profile.name << " " << made.code);
            REQUIRE(choices);
            CHECK(choices->any);
            CHECK(choices->belts.front().belt.length == made.length);
            CHECK(choices->belts.front().shift == 0);
        }
    }
}

TEST_CASE("Plain diameters have no belts, pulleys that overlap none either", "[drive][choices]") {
    CHECK_THROWS_AS(beltsFor({nullptr, {50}, {60}}, {200}, theTables()), std::invalid_argument);
    const auto close = beltsFor(toothedDrive("H5M", 22, 44), {50}, theTables());
    REQUIRE_FALSE(close);
    CHECK(close.reason().kind == DriveFault::Kind::PulleysOverlap);
    CHECK(close.reason().least == Approx(52.521).margin(0.001)); // 66 x 5 / (2 pi)
}
