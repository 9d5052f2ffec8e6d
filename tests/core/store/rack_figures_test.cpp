#include "core/store/rack_figures.h"

#include "core/store/error.h"
#include "core/store/number_rows.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

namespace {

/// What figuresOfRack tells, from whole pieces.
std::vector<std::string> figures(Connection& connection) {
    std::vector<std::string> all;
    for (const StockPiece& piece : Pieces{connection}.all())
        all.push_back(std::to_string(piece.belt.value()) + " " +
                      std::to_string(static_cast<int>(piece.kind)) + " " +
                      std::to_string(piece.extent.count()) + " " + std::to_string(piece.reserved.count()) +
                      " " + std::to_string(piece.cost.inMinor()) + " " + printDate(piece.born()));
    std::sort(all.begin(), all.end());
    return all;
}

std::vector<std::string> quickFigures(Connection& connection) {
    std::vector<std::string> all;
    for (const PieceFigures& piece : figuresOfRack(connection))
        all.push_back(std::to_string(piece.belt.value()) + " " +
                      std::to_string(static_cast<int>(piece.kind)) + " " +
                      std::to_string(piece.extent.count()) + " " + std::to_string(piece.reserved.count()) +
                      " " + std::to_string(piece.cost.inMinor()) + " " + printDate(piece.born));
    std::sort(all.begin(), all.end());
    return all;
}

} // namespace

TEST_CASE("The figures of the rack are those of its pieces", "[store][stock]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    const PieceId ready =
        shop.receive(shop.toothed, mm(30), Money::minor(700), cutting::PieceKind::Ready, "B2");
    shop.receive(shop.ribbed, Ribs{60}, Money::minor(4000), cutting::PieceKind::Remnant, "");
    shop.ticket(shop.order(shop.toothed, mm(30), 2), sleeve);
    const LineId taken = shop.order(shop.toothed, mm(30), 1);
    Transaction transaction{connection};
    const Ticket taking{.id = TicketId{0},
                        .code = "",
                        .order = {},
                        .state = TicketState::Open,
                        .made = shop.now,
                        .mountings = {},
                        .taken = {{ready, taken}}};
    Tickets{connection}.add(taking);
    Pieces{connection}.add(
        {shop.toothed, cutting::PieceKind::Remnant, {}, "", day(2020, 1, 1), {}, ""}); // empty: not there
    transaction.commit();

    CHECK(figures(connection) == quickFigures(connection));
    CHECK(figuresOfRack(connection).size() == 3);
    CHECK(unitsOfBelts(connection) ==
          std::map<BeltId, Unit>{{shop.toothed, Unit::Micrometre}, {shop.ribbed, Unit::Rib}});
    CHECK(figuresOfRack(connection).front().extent == Extent{Ribs{60}}); // lies nowhere: comes first
}

TEST_CASE("Rows of numbers are read with what is bound, NULL as nothing", "[store]") {
    auto connection = Connection::inMemory();
    NumberRows rows{connection, "SELECT ? + 1, NULL UNION ALL SELECT ?, 7 ORDER BY 1", 41,
                    std::int64_t{1} << 40};
    REQUIRE(rows.next());
    CHECK(rows.number(0) == 42);
    CHECK(rows.number(1) == 0);
    REQUIRE(rows.next());
    CHECK(rows.number(0) == std::int64_t{1} << 40);
    CHECK(rows.number(1) == 7);
    CHECK_FALSE(rows.next());
}

TEST_CASE("Rows of numbers that can't be read say so", "[store]") {
    auto connection = Connection::inMemory();
    CHECK_THROWS_AS((NumberRows{connection, "SELECT nothing FROM nowhere"}), StoreError);
    NumberRows rows{connection, "SELECT -1"};
    REQUIRE(rows.next());
    CHECK_THROWS_AS(rows.extent(0, Unit::Rib), StoreError);
}
