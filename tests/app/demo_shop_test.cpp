#include "tests/catch.h"

#include "app/demo/demo_shop.h"
#include "app/standard_tables.h"
#include "core/belt/reader.h"
#include "core/measure/text.h"
#include "core/shop/learn.h"
#include "core/shop/queries.h"
#include "core/shop/suggest.h"
#include "core/store/verify.h"
#include "ui/words/words.h"

using namespace riband;
using namespace std::chrono_literals;

namespace {

constexpr Moment noon = Date{std::chrono::year{2026} / 6 / 30} + 12h;
constexpr app::LargeShop fewYears{.belts = 60, .pieces = 300, .movements = 4'000, .years = 2};

std::string printed(const store::Verification& found) {
    std::string text;
    for (const auto& one : found.disagreements)
        text += ui::say(one).toStdString() + "\n";
    return text;
}

std::string rackOf(store::Connection& connection) {
    std::string rack;
    for (const auto& piece : store::Pieces{connection}.all())
        rack +=
            piece.code + " " + printCount(piece.extent) + " " + std::to_string(piece.cost.inMinor()) + "\n";
    return rack;
}

std::string largeRack(std::uint64_t seed) {
    auto connection = store::Connection::inMemory();
    app::makeLargeShop(connection, app::standardTables(), noon, seed, fewYears);
    return rackOf(connection);
}

} // namespace

TEST_CASE("A large shop has exactly the belts, live pieces and movements that were asked for", "[demo]") {
    auto connection = store::Connection::inMemory();
    app::makeLargeShop(connection, app::standardTables(), noon, 1, fewYears);
    CHECK(store::Catalogue{connection}.all().size() == 60);
    CHECK(store::Pieces{connection}.all().size() == 300);
    const auto found = store::verify(connection);
    CHECK(found.movements == 4'000);
    CHECK(printed(found).empty());
    CHECK(found.agrees());
}

TEST_CASE("The same seed makes the same large shop, another seed another", "[demo]") {
    const std::string first = largeRack(7);
    CHECK(first == largeRack(7));
    CHECK(first != largeRack(8));
}

TEST_CASE("A large shop's movements lie within its years and its books have waste and sales", "[demo]") {
    auto connection = store::Connection::inMemory();
    app::makeLargeShop(connection, app::standardTables(), noon, 3, fewYears);
    const store::Ledger ledger{connection};
    CHECK(ledger.between(Moment::min(), noon - std::chrono::days{731}).empty());
    CHECK(ledger.between(noon, Moment::max()).empty());
    std::int64_t sold = 0, trim = 0, bought = 0, all = 0;
    for (const auto& balance : ledger.balances()) {
        all += balance.amount;
        if (balance.account == store::Account::Sold) sold += balance.amount;
        if (balance.account == store::Account::Trim) trim += balance.amount;
        if (balance.account == store::Account::Bought) bought -= balance.amount;
    }
    CHECK(all == 0);
    CHECK(sold > bought / 4); // most of what was bought is sold, the rest lies on the rack
    CHECK(trim > 0);
    CHECK(trim < sold / 5);
}

TEST_CASE("The demo shop's half year is a book that agrees, whatever the seed", "[demo]") {
    const auto seed = static_cast<std::uint64_t>(GENERATE(range(1, 30)));
    auto connection = store::Connection::inMemory();
    app::makeSmallShop(connection, app::standardTables(), noon, seed);
    const auto found = store::verify(connection);
    CHECK(printed(found).empty());
    CHECK(found.agrees());
    CHECK(found.movements > 150);
}

TEST_CASE("In the demo shop the smallest remnant that fits three belts of 30 would leave a dead 8.5",
          "[demo]") {
    auto connection = store::Connection::inMemory();
    const auto tables = app::standardTables();
    app::makeSmallShop(connection, tables, noon, 1);
    const shop::Shop shop{connection, tables, store::People{connection}.present().front().id,
                          [] { return noon; }};
    const auto belt = belt::beltOfTeeth("H8M", Teeth{150}, *tables).value();
    const auto outlook = shop::lookAt(shop, belt, {{Width::millimetres(30), 3}});
    const auto suggestion = shop::suggest(outlook);
    // 101 - 2.5 trim - 90 = 8.5, too little for anything; 122 - 92.5 = 29.5, good for another 20.
    CHECK(suggestion.best.reason.kind == shop::Reason::Kind::AvoidsDead);
    CHECK(suggestion.best.reason.figure == Extent{Width::micrometres(8'500)});
    REQUIRE(suggestion.best.plan.mountings.size() == 1);
    CHECK(suggestion.best.plan.mountings.front().left == Extent{Width::micrometres(29'500)});
}

TEST_CASE("In the demo shop the first suggestion rests on a worth table", "[demo]") {
    auto connection = store::Connection::inMemory();
    const auto tables = app::standardTables();
    app::makeSmallShop(connection, tables, noon, 1);
    app::learnMostOrdered(connection, tables, noon);
    const shop::Shop shop{connection, tables, store::People{connection}.present().front().id,
                          [] { return noon; }};
    CHECK(shop::dueBelts(shop).empty());
    const auto belt = belt::beltOfTeeth("H8M", Teeth{150}, *tables).value();
    const auto suggestion = shop::suggest(shop::lookAt(shop, belt, {{Width::millimetres(30), 3}}));
    CHECK(suggestion.basis == store::AdviceBasis::LookAhead);
    CHECK(suggestion.worthVersion == 1);
}

TEST_CASE("In the demo shop a ribbed belt of six ribs lies ready, and L 322 is there as a sleeve only",
          "[demo]") {
    auto connection = store::Connection::inMemory();
    const auto tables = app::standardTables();
    app::makeSmallShop(connection, tables, noon, 1);
    const auto piecesOf = [&](const char* designation) {
        const auto belt = belt::readBelt(designation, *tables).value();
        return store::Pieces{connection}.ofBelt(store::Catalogue{connection}.find(belt).value().id);
    };
    std::size_t ready = 0;
    for (const auto& piece : piecesOf("PJ 1194"))
        if (piece.kind == cutting::PieceKind::Ready && piece.extent == Extent{Ribs{6}}) ++ready;
    CHECK(ready == 1);
    const auto sleeves = piecesOf("L 322");
    REQUIRE(sleeves.size() == 1);
    CHECK(sleeves.front().kind == cutting::PieceKind::Sleeve);
}

TEST_CASE("In the demo shop tickets wait at the bench, one order is parked and one is quoted", "[demo]") {
    auto connection = store::Connection::inMemory();
    const auto tables = app::standardTables();
    app::makeSmallShop(connection, tables, noon, 1);
    const shop::Shop shop{connection, tables, store::People{connection}.present().front().id,
                          [] { return noon; }};
    CHECK(shop::bench(shop).size() >= 4);
    CHECK(store::Orders{connection}.inState(store::OrderState::Parked).size() == 1);
    CHECK(store::Orders{connection}.inState(store::OrderState::Quoted).size() == 1);
}
