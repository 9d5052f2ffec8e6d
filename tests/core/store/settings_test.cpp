#include "core/store/measuring.h"
#include "core/store/people.h"
#include "core/store/statement.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

TEST_CASE("A new shop has the usual settings", "[store][settings]") {
    auto connection = Connection::inMemory();
    const ShopSettings usual = Settings{connection}.read();
    CHECK(usual.toothed.trim == Extent{Width::micrometres(2500)});
    CHECK(usual.ribbed.trim == Extent{Ribs{1}});
    CHECK(usual.prices == PriceRules{});
    CHECK(usual.paper == "A4");
    CHECK(usual.cutter.gap == 10.0);
    CHECK(People{connection}.present().empty());
}

TEST_CASE("Settings come back exactly as they were written", "[store][settings]") {
    auto connection = Connection::inMemory();
    Settings settings{connection};
    ShopSettings written = settings.read();
    written.name = "Belt counter Lower Mill";
    written.address = "1 Mill Lane\nSomewhere";
    written.prices.currency = Currency{"CHF", 2};
    written.prices.cuttingCharge = Money::minor(310);
    written.prices.minimumLine = Money::minor(900);
    written.prices.steps = {{5, Permille{50}}, {20, Permille{125}}};
    written.prices.tax = Permille{81};
    written.prices.roundTotalTo = 5;
    written.prices.pricesIncludeTax = true;
    written.toothed.trim = mm(3);
    written.toothed.kerf = Width::micrometres(400);
    written.ribbed.stub = Ribs{4};
    written.mountingCost = mm(6);
    written.mostRemnants = 7;
    written.advice = {false, 3, 2, Permille{85}, Width::micrometres(2750)};
    written.cutter = {
        "bench cutter", {{"80", 80.0, 79.95, 450.0, 120.0, 1800.5}, {"30", 30.1, 30.0, 300.0, 60.0, 900.0}},
        true,           false,
        false,          12.7};
    written.buying = {Permille{980}, 9, 14, Money::minor(750)};
    written.paper = "A5";
    written.counting = {Width::micrometres(250), mm(2), mm(8), Money::minor(9'900), 35, 14, 45, 80};
    written.labels = {mm(70).width(), mm(36).width(), 3,   8, Width::micrometres(500), mm(4).width(),
                      mm(1).width(),  mm(2).width(),  true};
    settings.write(written);
    settings.write(written); // once more changes nothing

    const ShopSettings read = settings.read();
    CHECK(read.name == written.name);
    CHECK(read.address == written.address);
    CHECK(read.prices == written.prices);
    CHECK(read.counting == written.counting);
    CHECK(read.toothed.trim == mm(3));
    CHECK(read.toothed.kerf == Extent{Width::micrometres(400)});
    CHECK(read.ribbed.stub == Extent{Ribs{4}});
    CHECK(read.mountingCost == mm(6));
    CHECK(read.mostRemnants == 7);
    CHECK(read.advice == written.advice);
    CHECK(read.buying == written.buying);
    CHECK(read.paper == "A5");
    CHECK(read.labels == written.labels);
    CHECK(read.cutter.name == "bench cutter");
    CHECK(read.cutter.cutsSteelCord);
    CHECK_FALSE(read.cutter.cutsPolyurethane);
    CHECK(read.cutter.gap == 12.7);
    REQUIRE(read.cutter.shafts.size() == 2);
    CHECK(read.cutter.shafts[0].name == "80");
    CHECK(read.cutter.shafts[0].diameterTension == 79.95);
    CHECK(read.cutter.shafts[1].diameterDriven == 30.1);
    CHECK(read.cutter.shafts[0].farthest == 1800.5);
}

TEST_CASE("How well a shop measures is kept, to the micrometre", "[store][settings]") {
    auto connection = Connection::inMemory();
    CHECK(readMeasuring(connection) == belt::identify::Instruments{});
    const belt::identify::Instruments own{.05, 1, 3.5, .412};
    writeMeasuring(connection, own);
    writeMeasuring(connection, own); // once more changes nothing
    CHECK(readMeasuring(connection) == own);
    change(connection, "UPDATE setting SET value = 'long' WHERE name = 'measuring.tape_um'");
    CHECK_THROWS_AS(readMeasuring(connection), StoreError);
}
