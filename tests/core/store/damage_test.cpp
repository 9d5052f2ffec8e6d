#include "core/store/raw.h"
#include "core/store/verify.h"
#include "tests/catch.h"
#include "tests/core/store/folder_picture.h"
#include "tests/core/store/shop_fixture.h"

#include <random>

using namespace riband;
using namespace riband::store;

namespace {

std::string newShop(const TemporaryFolder& folder) {
    const std::string path = folder / "shop.riband";
    Connection connection{path, Connection::Mode::Create};
    SmallShop shop{connection};
    for (int i = 0; i < 30; ++i) {
        const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
        shop.ticket(shop.order(shop.toothed, mm(30), 2), sleeve);
    }
    return path;
}

/// Everything that a program reads when it starts and works.
void readAll(Connection& connection) {
    (void)Settings{connection}.read();
    (void)Catalogue{connection}.all();
    for (const auto& piece : Pieces{connection}.all())
        (void)Ledger{connection}.historyOf(piece.id);
    (void)Orders{connection}.inState(OrderState::Open);
    (void)Tickets{connection}.inState(TicketState::Open);
}

enum class Met { Refused, Found, Nothing };

/// Opens, verifies and reads a shop of which something was changed. Nothing but StoreError may come out of
/// it.
Met meet(const std::string& path) {
    try {
        Connection connection{path};
        const bool agrees = verify(connection).agrees();
        readAll(connection);
        return agrees ? Met::Nothing : Met::Found;
    } catch (const StoreError&) {
        return Met::Refused;
    }
}

} // namespace

TEST_CASE("Whatever is wrong with a file, it is refused or named, and nothing breaks", "[store][damage]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    const std::string whole = bytesOf(path);
    std::mt19937 chance{17};
    int refused = 0, found = 0;
    for (int round = 0; round < 150; ++round) {
        std::string bytes = whole;
        for (unsigned long hits = 1 + chance() % 12; hits > 0; --hits)
            bytes[chance() % bytes.size()] = static_cast<char>(chance());
        std::ofstream{path, std::ios::binary | std::ios::trunc} << bytes;
        const Met met = meet(path);
        refused += met == Met::Refused;
        found += met == Met::Found;
    }
    CHECK(refused > 20);
    CHECK(found > 0);
}

TEST_CASE("A value that breaks the rule of its type is damage, not a broken program", "[store][damage]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    const char* sql = GENERATE(
        "UPDATE belt SET length_nm = -1 WHERE id = 1", "UPDATE belt SET price_thousandths = -1 WHERE id = 1",
        "UPDATE belt SET teeth = 0 WHERE id = 1", "UPDATE order_line SET extent = -1 WHERE id = 1",
        "INSERT INTO setting VALUES ('currency', 'dollars')",
        "INSERT INTO setting VALUES ('toothed.trim', 'much')");
    RawDatabase raw{path};
    raw.run("PRAGMA ignore_check_constraints = ON");
    Connection connection{path}; // open already when it happens
    raw.run(sql);
    try {
        readAll(connection);
        FAIL(sql);
    } catch (const StoreError& error) {
        CHECK(error.kind() == StoreError::Kind::Corrupt);
    }
}
