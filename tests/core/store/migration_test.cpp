#include "core/store/advices.h"
#include "core/store/counts.h"
#include "core/store/flows.h"
#include "core/store/goods.h"
#include "core/store/offers.h"
#include "core/store/raw.h"
#include "core/store/schema.h"
#include "core/store/search.h"
#include "core/store/statement.h"
#include "core/store/takings.h"
#include "core/store/verify.h"
#include "core/store/worth_tables.h"
#include "tests/catch.h"
#include "tests/core/store/folder_picture.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

namespace {

/// The shop that a program of that schema left, as its SQL text in the folder fixtures.
std::string oldShop(const TemporaryFolder& folder, int version) {
    const std::string path = folder / "shop.riband";
    std::ofstream{path}.close();
    const std::string sql =
        bytesOf(RIBAND_SOURCE_DIR "/tests/core/store/fixtures/version_" + std::to_string(version) + ".sql");
    RawDatabase{path}.run(sql.c_str());
    return path;
}

std::int64_t balance(Connection& connection, BeltId belt, Account account) {
    for (const auto& sum : Ledger{connection}.balances())
        if (sum.belt == belt && sum.account == account) return sum.amount;
    return 0;
}

} // namespace

TEST_CASE("The steps of the schema are numbered without a gap and say why they are there",
          "[store][schema]") {
    const auto steps = migrations();
    REQUIRE_FALSE(steps.empty());
    int number = 0;
    for (const auto& step : steps) {
        CHECK(step.number == ++number);
        CHECK(step.sql.starts_with("-- "));
        CHECK_FALSE(statementsOf(step.sql).empty());
    }
    CHECK(Connection::newestSchema() == number);
}

TEST_CASE("A step is taken apart at its separator lines, not at semicolons", "[store][schema]") {
    const auto statements =
        statementsOf("-- why\nCREATE TABLE a (x)\n-- next\nCREATE TRIGGER b BEGIN SELECT 1; SELECT 2; END\n");
    REQUIRE(statements.size() == 2);
    CHECK(statements[1] == "CREATE TRIGGER b BEGIN SELECT 1; SELECT 2; END\n");
}

TEST_CASE("A shop of every older schema is brought to today's with all it held", "[store][schema]") {
    const int version = GENERATE(range(1, Connection::newestSchema() + 1)); // each has its fixture
    const TemporaryFolder folder;
    const std::string path = oldShop(folder, version);
    Connection connection{path};
    CHECK(connection.schemaVersion() == Connection::newestSchema());
    CHECK(verify(connection).disagreements.empty());

    CHECK(Settings{connection}.read().name == "Counter of 2026");
    CHECK(People{connection}.present().front().name == "A. Binder");
    const auto belts = Catalogue{connection}.all();
    REQUIRE(belts.size() == 2);
    CHECK(belts[0].listed == std::vector<Extent>{mm(20), mm(30)});
    if (version >= 2) {
        const Order order = Orders{connection}.at(OrderId{1});
        CHECK(order.customerName == "Lower Mill");
        CHECK(order.lines.front().price.total == Money::minor(6355));
    }
    if (version >= 3) {
        CHECK(Pieces{connection}.at(PieceId{1}).extent == Extent{Width::micrometres(7500)});
        CHECK(Pieces{connection}.at(PieceId{2}).extent == Extent{Ribs{60}});
        CHECK(balance(connection, BeltId{1}, Account::Rack) == 7'500);
        CHECK(balance(connection, BeltId{1}, Account::Sold) == 90'000);
        CHECK(Ledger{connection}.historyOf(PieceId{1}).back().movement.about().note == "first cut");
    }
    if (version >= 6) {
        const Counts counts{connection};
        CHECK(counts.find(CountId{1})->closed);
        CHECK(counts.scansOf(CountId{1}).front().measured == Extent{Width::micrometres(7500)});
        CHECK(counts.unsettledMissing().empty());
        CHECK(counts.settlements().front().explanation == Explanation::Unexplained);
    }
    if (version >= 7) CHECK(SleeveOffers{connection}.all().at(BeltId{1}).front().cost == Money::minor(36800));
    CHECK(findPieces(connection, {"8m", "7.5"}).size() == (version >= 3 ? 1 : 0)); // found, whoever wrote it
    CHECK(findPieces(connection, {"2026-03"}).size() == (version >= 3 ? 2 : 0));
    CHECK(findPieces(connection, {"n00-2", "rubber"}).size() == (version >= 4 ? 1 : 0));
    if (version >= 9) CHECK(Goods{connection}.piecesOf(DeliveryId{1}).front().labelled == mm(102));
    if (version >= 4) CHECK(Tickets{connection}.at(TicketId{1}).mountings.front().movement == MovementId{3});
    CHECK(belts[0].preCut == PreCut::WherePays);
    if (version >= 5) {
        CHECK(WorthTables{connection}.of(BeltId{1})->version == 3);
        const auto advices = Advices{connection}.ofOrder(OrderId{1});
        REQUIRE(advices.size() == 1);
        CHECK(advices[0].taken.cost - advices[0].suggested.cost == 2'500.0);
        CHECK(advices[0].overrideWords == "on top of the pile");
        CHECK(advices[0].suggested.forShelf == std::vector<AdvisedWay::ForShelf>{{mm(20), 1}});
    }
    if (version >= 10) CHECK(Takings{connection}.of(OrderId{1})->amount == Money::minor(6355));
    if (version >= 4) CHECK(Tickets{connection}.at(TicketId{1}).order == OrderId{1});
    if (version >= 11) CHECK_FALSE(Tickets{connection}.at(TicketId{2}).order);
    if (version >= 3) { // all was cut on the one cutter that there was
        const Ledger ledger{connection};
        CHECK_FALSE(ledger.at(MovementId{1}).movement.about().cutter);
        CHECK(ledger.at(MovementId{3}).movement.about().cutter == CutterId{1});
    }
    if (version >= 4) CHECK(Tickets{connection}.at(TicketId{1}).mountings.front().cutter == CutterId{1});
    CHECK(Settings{connection}.read().cutters.size() == (version >= 13 ? 2 : 1));
    const auto flows = Flows{connection}.sums(Moment{}, Moment::max());
    CHECK(flows.empty() == (version < 3));
}

TEST_CASE("An older shop is brought up only by who may write", "[store][schema]") {
    const TemporaryFolder folder;
    const std::string path = oldShop(folder, 1);
    const auto before = pictureOf(folder.path());
    try {
        Connection{path, Connection::Mode::ReadOnly};
        FAIL("it was opened");
    } catch (const StoreError& error) {
        CHECK(error.kind() == StoreError::Kind::Older);
        CHECK(error.detail() == "1");
    }
    CHECK((pictureOf(folder.path()) == before));
}

TEST_CASE("Opening a shop of today's schema changes nothing of it", "[store][schema]") {
    const TemporaryFolder folder;
    const std::string path = oldShop(folder, 1);
    { Connection{path}; }
    const auto before = pictureOf(folder.path());
    { Connection{path}; }
    CHECK((pictureOf(folder.path()) == before));
}

TEST_CASE("A step that fails leaves the version and every row before it", "[store][schema]") {
    const TemporaryFolder folder;
    Connection connection{folder / "shop.riband", Connection::Mode::Create};
    SmallShop shop{connection};
    shop.receive(shop.toothed, mm(100), Money::minor(8000));
    const int today = connection.schemaVersion();
    const std::vector<Migration> steps{{today + 1, "good", "CREATE TABLE first_new (x INTEGER) STRICT"},
                                       {today + 2, "bad",
                                        "CREATE TABLE second_new (x INTEGER) STRICT\n-- next\nDELETE FROM "
                                        "place\n-- next\nDROP TABLE no_such"}};
    CHECK_THROWS_AS(bringUp(connection, steps), StoreError);

    CHECK(connection.schemaVersion() == today + 1);
    CHECK(only<int>(connection, "SELECT count(*) FROM sqlite_schema WHERE name = 'first_new'") == 1);
    CHECK(only<int>(connection, "SELECT count(*) FROM sqlite_schema WHERE name = 'second_new'") == 0);
    CHECK(Pieces{connection}.places().size() == 1);
    CHECK(verify(connection).agrees());
    bringUp(connection, {{today + 1, "good", "CREATE TABLE first_new (x INTEGER) STRICT"}}); // had already
}
