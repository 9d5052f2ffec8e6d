#include "app/demo/demo_shop.h"
#include "core/shop/learn.h"

namespace riband::app {

const char* const demoName = "Brookmill Belts (demo)";

namespace {

/// Three pairs of shafts, as a bench cutter might have; our own invention.
cutting::Cutter benchCutter() {
    return {.name = "Bench cutter",
            .shafts = {{"thin", 20, 20, 500, 60, 700},
                       {"middle", 40, 40, 520, 90, 1100},
                       {"thick", 75, 60, 520, 140, 1600}},
            .cutsSteelCord = true,
            .cutsAramidCord = false,
            .cutsPolyurethane = true};
}

/// A smaller one whose knife is set for the grooves of ribbed belts.
cutting::Cutter ribCutter() {
    return {.name = "Rib cutter",
            .shafts = {{"short", 20, 20, 300, 60, 700}, {"long", 40, 40, 300, 90, 1400}},
            .cutsPolyurethane = false};
}

store::PriceRules prices() {
    store::PriceRules rules;
    rules.currency = Currency{"EUR", 2};
    rules.cuttingCharge = Money::minor(250);
    rules.minimumLine = Money::minor(600);
    rules.steps = {{5, Permille{50}}, {10, Permille{100}}};
    rules.tax = Permille{200};
    return rules;
}

} // namespace

void furnish(store::Connection& connection) {
    store::Settings store{connection};
    store::ShopSettings settings = store.read();
    settings.name = demoName;
    settings.address = "4 Weaver's Yard\nBrookmill";
    settings.prices = prices();
    settings.cutters = {{settings.cutters.front().id, benchCutter()}, {store::CutterId{0}, ribCutter()}};
    store::Transaction transaction{connection};
    store.write(settings);
    store::People people{connection};
    people.add("OW", "Odile Wren", store::Role::Owner);
    people.add("ST", "Samir Tolland", store::Role::StockManager);
    people.add("CL", "Clara Lindqvist", store::Role::Clerk);
    transaction.commit();
}

void learnMostOrdered(store::Connection& connection, const std::shared_ptr<const belt::Tables>& tables,
                      Moment now) {
    constexpr std::size_t most = 50; // some seconds
    const auto person = store::People{connection}.present().front().id;
    const shop::Shop shop{connection, tables, person, [now] { return now; }};
    for (const store::BeltId belt : shop::dueBelts(shop, most))
        if (const auto table = shop::learn(shop::lessonOf(shop, belt), [](double) { return true; }))
            shop::keepWorth(shop, belt, *table);
}

} // namespace riband::app
