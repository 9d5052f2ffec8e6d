#include "core/shop/buying/what_if.h"

#include "tests/core/shop/buying/sold_shop.h"

using namespace riband;
using namespace riband::shop;

namespace {

WhatIf sleeveOf(std::int64_t width, std::optional<double> price) {
    WhatIf what;
    what.sleeve = mm(width);
    what.price = price;
    return what;
}

} // namespace

TEST_CASE("What is not said stays as it is, and what changes nothing is no alternative", "[shop][replay]") {
    SoldShop shop;
    const BuyingOutlook outlook = shop.outlook();
    const BuyingBelt& belt = shop.h8m(outlook);
    CHECK_FALSE(rulesUnder(belt, outlook, {}));
    WhatIf ribs;
    ribs.trim = Ribs{2};
    CHECK_FALSE(rulesUnder(belt, outlook, ribs));
    const auto wider = rulesUnder(belt, outlook, sleeveOf(940, std::nullopt));
    REQUIRE(wider);
    CHECK(wider->sleeve.cost == Approx(8000)); // by width
    CHECK(wider->setting.rules.trim == 2500);
    CHECK(rulesUnder(belt, outlook, sleeveOf(500, 1.15))->sleeve.cost ==
          Approx(4600));                                               // 15 % dearer a sleeve
    CHECK_FALSE(rulesUnder(belt, outlook, sleeveOf(6, std::nullopt))); // trim and end leave nothing
}

TEST_CASE("The same year is played side by side", "[shop][replay]") {
    SoldShop shop;
    const BuyingOutlook outlook = shop.outlook();
    WhatIf lessTrim, same;
    lessTrim.trim = Width::micrometres(500);
    same.trim = Width::micrometres(2500);
    const ReplayResult result = replay(outlook, {lessTrim, same}, {.years = 8});
    REQUIRE(result.alternatives.size() == 3);
    CHECK(result.belts == 1); // the other belt was never asked for
    const auto& now = result.alternatives[0].figures;
    CHECK(now.yield.mean == Approx(14 * 30 / 470.).margin(0.02)); // the last 15 mm serve nobody
    CHECK(now.mountings.mean == Approx(52).margin(8));
    CHECK(result.alternatives[1].belts == 1);
    CHECK(result.alternatives[1].difference.yield.mean > 0.03);
    CHECK(result.alternatives[1].difference.yield.doubt < 0.02);
    CHECK(result.alternatives[2].difference.yield.mean == Approx(0).margin(1e-12));
    CHECK(result.alternatives[2].difference.sleeves.doubt == Approx(0).margin(1e-12));
}

TEST_CASE("Money as a whole is rubber, labour, interest and what was not sold; one year alone proves nothing",
          "[shop][replay]") {
    SoldShop shop;
    const BuyingOutlook outlook = shop.outlook();
    WhatIf lessTrim, cheaper;
    lessTrim.trim = Width::micrometres(500);
    cheaper.price = 0.5;
    const ReplayResult result = replay(outlook, {lessTrim, cheaper}, {.years = 8});
    const auto& now = result.alternatives[0].figures;
    CHECK(now.expense.mean > now.rubber.mean);
    CHECK(result.alternatives[1].difference.expense.mean < 0);
    CHECK(result.alternatives[1].difference.expense.told());
    CHECK(result.alternatives[1].difference.expense.confidence() > 0.975);
    CHECK(result.alternatives[2].difference.rubber.mean == Approx(-now.rubber.mean / 2).epsilon(0.05));
    const ReplayResult once = replay(outlook, {lessTrim}, {.years = 1});
    CHECK_FALSE(once.alternatives[1].difference.expense.told());
    CHECK(Estimate{0, 0}.confidence() == Approx(0.5));
    CHECK(Estimate{1, 1.959964}.confidence() == Approx(0.841345)); // one standard error
    CHECK(Estimate{-4, 4}.confidence() == Approx(0.975).margin(1e-6));
}

TEST_CASE("A replay of another profile has no belts, and a replay can be stopped", "[shop][replay]") {
    SoldShop shop;
    const BuyingOutlook outlook = shop.outlook();
    WhatIf together;
    together.together = true;
    CHECK(replay(outlook, {together}, {.years = 2, .profile = "T10"}).belts == 0);
    CHECK(replay(outlook, {together}, {.years = 2, .from = Years::Outlook})
              .alternatives[0]
              .figures.sleeves.mean > 0);
    CHECK_THROWS_AS(replay(outlook, {together}, {.years = 2}, {nullptr, [] { return true; }}),
                    foresight::Stopped);
}
