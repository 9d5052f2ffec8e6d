#include "core/store/counts.h"

#include "core/store/raw.h"
#include "core/store/statement.h"
#include "core/store/verify.h"
#include "tests/catch.h"
#include "tests/core/store/folder_picture.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;
using Kind = Disagreement::Kind;

namespace {

const Moment noon = Date{std::chrono::year{2026} / 3 / 2} + std::chrono::hours{12};

/// A shop with two sleeves of 100 mm, counted at one place: the first measured 60, the second not seen.
struct CountedShop {
    explicit CountedShop(const std::string& path)
        : connection{path, Connection::Mode::Create}, shop{connection} {
        first = shop.receive(shop.toothed, mm(100), Money::minor(8000));
        second = shop.receive(shop.toothed, mm(100), Money::minor(8000));
        const PersonId person = People{connection}.present().front().id;
        Transaction transaction{connection};
        Counts counts{connection};
        count = counts.begin("A1-1", person, noon, {first, second});
        scan = counts.add({.id = ScanId{0},
                           .count = count,
                           .at = noon,
                           .person = person,
                           .piece = first,
                           .belt = shop.toothed,
                           .book = mm(100),
                           .measured = mm(60),
                           .method = Method::Calliper,
                           .after = Ledger{connection}.last(),
                           .placeWas = "A1-1",
                           .remark = ""});
        counts.close(count, noon, {second});
        transaction.commit();
    }
    Connection connection;
    SmallShop shop;
    PieceId first{0}, second{0};
    CountId count{0};
    ScanId scan{0};
};

bool refused(Connection& connection, Sql sql) {
    try {
        Transaction transaction{connection};
        change(connection, sql);
        transaction.commit();
    } catch (const StoreError&) {
        return true;
    }
    return false;
}

} // namespace

TEST_CASE("What was counted is never changed, and a place is counted by one at a time", "[store][count]") {
    const TemporaryFolder folder;
    CountedShop shop{folder / "shop.riband"};
    CHECK(refused(shop.connection, "UPDATE count_scan SET measured = 1"));
    CHECK(refused(shop.connection, "DELETE FROM count_scan"));
    CHECK(refused(shop.connection, "UPDATE count_session SET place = 'B'"));
    CHECK(refused(shop.connection, "UPDATE count_session SET closed_ms = 5")); // it is closed
    CHECK(refused(shop.connection, "DELETE FROM count_session"));
    Transaction transaction{shop.connection};
    const PersonId person = People{shop.connection}.present().front().id;
    Counts{shop.connection}.begin("B", person, noon, {});
    CHECK_THROWS_AS(Counts{shop.connection}.begin("B", person, noon, {}), StoreError);
}

TEST_CASE("What a closed count left open is named, and is no disagreement of the book", "[store][count]") {
    const TemporaryFolder folder;
    CountedShop shop{folder / "shop.riband"};
    const Verification found = verify(shop.connection);
    CHECK(found.agrees());
    REQUIRE(found.holes.size() == 2);
    CHECK(found.holes[0].kind == CountHole::Kind::Missing);
    CHECK(found.holes[0].where == Pieces{shop.connection}.at(shop.second).code);
    CHECK(found.holes[1].kind == CountHole::Kind::Differs);
    CHECK(found.holes[1].place == "A1-1");
    CHECK(found.holes[1].book == 100'000);
    CHECK(found.holes[1].found == 60'000);

    SECTION("a settlement closes a hole, its counter opens it again") {
        Counts counts{shop.connection};
        Settlement settled{SettlementId{0}, shop.count,  shop.scan, shop.first,   Explanation::Unexplained,
                           std::nullopt,    PersonId{1}, noon,      std::nullopt, std::nullopt};
        Transaction transaction{shop.connection};
        const SettlementId id = counts.add(settled);
        CHECK(counts.settlementOf(shop.scan) == id);
        CHECK(counts.unsettled().empty());
        settled.undoes = id;
        counts.add(settled);
        CHECK(counts.isCountered(id));
        CHECK(counts.unsettled().size() == 1);
    }
}

TEST_CASE("A find that waits is named by its belt", "[store][count]") {
    const TemporaryFolder folder;
    CountedShop shop{folder / "shop.riband"};
    {
        Transaction transaction{shop.connection};
        Counts counts{shop.connection};
        const PersonId person = People{shop.connection}.present().front().id;
        const CountId count = counts.begin("B2", person, noon, {});
        counts.add({.id = ScanId{0},
                    .count = count,
                    .at = noon,
                    .person = person,
                    .piece = {},
                    .belt = shop.shop.toothed,
                    .book = Extent::none(Unit::Micrometre),
                    .measured = mm(33),
                    .method = Method::Calliper,
                    .after = {},
                    .placeWas = "",
                    .remark = ""});
        counts.close(count, noon, {});
        transaction.commit();
    }
    const Verification found = verify(shop.connection);
    REQUIRE(found.holes.size() == 3);
    CHECK(found.holes[2].kind == CountHole::Kind::Unlabelled);
    CHECK(found.holes[2].where == Catalogue{shop.connection}.at(shop.shop.toothed).designation);
}

TEST_CASE("A scan whose book was tampered with is named", "[store][count]") {
    const TemporaryFolder folder;
    CountedShop shop{folder / "shop.riband"};
    RawDatabase raw{folder / "shop.riband"};
    raw.run("DROP TRIGGER count_scan_stays");
    raw.run("UPDATE count_scan SET book = 99000");
    const Verification found = verify(shop.connection);
    REQUIRE(found.disagreements.size() == 1);
    CHECK(found.disagreements.front().kind == Kind::CountBook);
    CHECK(found.disagreements.front().book == 99'000);
    CHECK(found.disagreements.front().found == 100'000);
}
