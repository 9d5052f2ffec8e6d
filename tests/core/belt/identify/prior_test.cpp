#include "tests/catch.h"

#include "core/belt/reader.h"
#include "tests/core/belt/identify/counter.h"
#include "tests/core/belt/read_tables.h"

#include <cmath>

using namespace riband;
using namespace riband::belt;
using namespace riband::belt::identify;

namespace {

Prior priorOf(const std::vector<Sale>& sales) { return Prior{listsOnly().sharedTables(), sales}; }

Belt named(const char* text) {
    const auto read = readBelt(text, theTables());
    REQUIRE(read.ok());
    return *read;
}

double of(const Prior& prior, const Belt& wanted) {
    for (std::size_t i = 0; i < prior.belts().size(); ++i)
        if (prior.belts()[i].length == wanted.length && prior.belt(i) == wanted)
            return std::exp(prior.belts()[i].logPrior);
    return 0;
}

} // namespace

TEST_CASE("Every belt of the tables is possible, and all chances sum to one", "[identify]") {
    const Prior& prior = listsOnly();
    double sum = 0;
    for (const Possible& each : prior.belts())
        sum += std::exp(each.logPrior);
    CHECK(sum == Approx(1));
    std::size_t listed = 0, lists = 0;
    for (std::size_t i = 0; i < prior.belts().size(); ++i)
        listed += prior.belts()[i].listed;
    for (const Profile& profile : theTables().profiles())
        lists += theTables().lengths(profile.name).size();
    CHECK(listed == lists);
    CHECK(of(prior, named("H8M 1200")) > of(prior, named("H8M 1176"))); // in no list
}

TEST_CASE("A belt that more makers list is likelier, by the count of makers", "[identify]") {
    const MadeLength *many = nullptr, *few = nullptr;
    for (const MadeLength& each : theTables().lengths("H8M")) {
        if (each.makers >= 4) many = &each;
        if (each.makers == 1) few = &each;
    }
    REQUIRE((many && few));
    const double ratio = of(listsOnly(), {"H8M", many->teeth, many->length, ""}) /
                         of(listsOnly(), {"H8M", few->teeth, few->length, ""});
    CHECK(ratio == Approx((many->makers + .5) / 1.5));
}

TEST_CASE("What the shop sells is likelier there", "[identify]") {
    const Prior shop = priorOf({{named("G8M 1200"), 60}, {named("G8M 1120"), 40}});
    // Sold 60 of 100, beside lists that count as 20 customers and a tenth of 100: 60 / 130 and a little.
    CHECK(of(shop, named("G8M 1200")) == Approx(60.0 / 130).margin(.001));
    const Sample unclear{{over(20, 160), read(Measure::Teeth, 150)}};
    CHECK(identify::identify(unclear, listsOnly()).candidates.front().profile->name == "H8M");
    CHECK(identify::identify(unclear, shop).candidates.front().profile->name == "G8M");
    SECTION("but a measurement is stronger than habit") {
        const Sample other{{over(20, 100), read(Measure::Teeth, 150)}, SeenShape::Trapezoid};
        CHECK(identify::identify(other, shop).candidates.front().profile->name == "T5");
    }
    SECTION("and what it never sold stays possible") { CHECK(of(shop, named("T5 500")) > 0); }
}

TEST_CASE("A sale of a belt that no table can have changes nothing", "[identify]") {
    const Prior shop = priorOf({{Belt{"X9", {}, Length::millimetres(9), ""}, 5}});
    CHECK(of(shop, named("H8M 1200")) == Approx(of(listsOnly(), named("H8M 1200"))));
}

TEST_CASE("A construction is the same belt to the calliper", "[identify]") {
    Belt steel = named("T5 500");
    steel.construction = "steel cord";
    CHECK(of(priorOf({{steel, 30}}), named("T5 500")) > .5);
}

TEST_CASE("A size that no table has is supposed from its like, and said wide", "[identify]") {
    // The old national sizes: no heights in the tables. Trapezoids have 0.18 to 0.29 of the pitch.
    const Figures& m3 = sizesOf("m3").figures;
    CHECK(m3.height.mean == Approx(.24 * m3.pitch).margin(.03 * m3.pitch));
    CHECK(m3.height.spread >= .15 * m3.height.mean * .99);
    CHECK(m3.thickness.spread > 5 * sizesOf("L").figures.thickness.spread);
    for (const Sizes& each : listsOnly().sizes()) {
        INFO(each.profile->name);
        CHECK(each.figures.thickness.mean > 0);
        CHECK(each.figures.thickness.spread > 0);
        CHECK(each.figures.toBack.mean > 0);
        if (each.profile->ribbed()) continue;
        CHECK(each.figures.height.mean > 0);
        CHECK(each.figures.root.mean > 0);
        CHECK(each.figures.root.mean < each.figures.pitch);
    }
}
