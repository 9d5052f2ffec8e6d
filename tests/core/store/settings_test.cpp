#include "core/store/cutters.h"
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
    CHECK(usual.usualCutter().gap == 10.0);
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
    written.cutters.front().cutter = {
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
    CHECK(read.usualCutter().name == "bench cutter");
    CHECK(read.usualCutter().cutsSteelCord);
    CHECK_FALSE(read.usualCutter().cutsPolyurethane);
    CHECK(read.usualCutter().gap == 12.7);
    REQUIRE(read.usualCutter().shafts.size() == 2);
    CHECK(read.usualCutter().shafts[0].name == "80");
    CHECK(read.usualCutter().shafts[0].diameterTension == 79.95);
    CHECK(read.usualCutter().shafts[1].diameterDriven == 30.1);
    CHECK(read.usualCutter().shafts[0].farthest == 1800.5);
}

TEST_CASE("A shop has several cutters in its own order, each with its shafts", "[store][settings]") {
    auto connection = Connection::inMemory();
    Settings settings{connection};
    ShopSettings written = settings.read();
    const CutterId first = written.cutters.front().id;
    written.cutters.insert(written.cutters.begin(),
                           {CutterId{0}, {"Long bench", {{"80", 80, 80, 450, 120, 1800}}}});
    settings.write(written);

    const auto read = settings.read().cutters;
    REQUIRE(read.size() == 2);
    CHECK(read[0].cutter.name == "Long bench");
    CHECK(read[0].cutter.shafts.size() == 1);
    CHECK(read[1].id == first);
    CHECK(read[1].cutter.shafts.empty());
    CHECK(Cutters{connection}.usual() == read[0].id);
}

TEST_CASE("A cutter that is taken out keeps its name for what was cut on it", "[store][settings]") {
    auto connection = Connection::inMemory();
    Settings settings{connection};
    ShopSettings written = settings.read();
    written.cutters.push_back({CutterId{0}, {"Long bench"}});
    settings.write(written);
    written = settings.read();
    const CutterId gone = written.cutters[1].id;
    written.cutters.pop_back();
    settings.write(written);

    CHECK(settings.read().cutters.size() == 1);
    CHECK(settings.read().cutterOf(gone).id ==
          written.cutters[0].id); // what waits on it goes to the usual one
    const auto all = Cutters{connection}.all();
    REQUIRE(all.size() == 2);
    CHECK(all[1].name == "Long bench");
    CHECK(all[1].gone);
}

TEST_CASE("Cutters need names, each another", "[store][settings]") {
    auto connection = Connection::inMemory();
    Settings settings{connection};
    ShopSettings wrong = settings.read();
    wrong.cutters.push_back(wrong.cutters.front());
    CHECK_THROWS_AS(settings.write(wrong), std::invalid_argument);
    wrong.cutters[1].cutter.name.clear();
    CHECK_THROWS_AS(settings.write(wrong), std::invalid_argument);
    wrong.cutters.clear();
    CHECK_THROWS_AS(settings.write(wrong), std::invalid_argument);
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
