#include "core/store/backup.h"
#include "core/store/raw.h"
#include "tests/catch.h"
#include "tests/core/store/folder_picture.h"
#include "tests/core/store/shop_fixture.h"

#include <atomic>
#include <thread>

using namespace riband;
using namespace riband::store;
using Kind = StoreError::Kind;

namespace {

std::string newShop(const std::string& path, int sleeves = 1) {
    Connection connection{path, Connection::Mode::Create};
    SmallShop shop{connection};
    for (int i = 0; i < sleeves; ++i)
        shop.receive(shop.toothed, mm(100), Money::minor(8000));
    return path;
}

std::size_t piecesIn(const std::string& path) {
    Connection connection{path, Connection::Mode::ReadOnly};
    CHECK(verify(connection).agrees());
    return Pieces{connection}.all().size();
}

template <class Act>
Kind refusal(const TemporaryFolder& folder, Act act) {
    const auto before = pictureOf(folder.path());
    std::optional<Kind> kind;
    try {
        act();
    } catch (const StoreError& error) {
        kind = error.kind();
    }
    CHECK((pictureOf(folder.path()) == before));
    REQUIRE(kind);
    return *kind;
}

void overwriteAPage(const std::string& path) {
    std::fstream file{path, std::ios::binary | std::ios::in | std::ios::out};
    file.seekp(-4096, std::ios::end);
    file << std::string(4096, '\x5a');
}

} // namespace

TEST_CASE("A backup holds what the shop held, in one file", "[store][backup]") {
    const TemporaryFolder folder;
    Connection connection{newShop(folder / "shop.riband", 3)};
    const Verification found = backup(connection, folder / "safe.riband");
    CHECK(found.agrees());
    CHECK(found.pieces == 3);
    CHECK(piecesIn(folder / "safe.riband") == 3);
    for (const auto& [name, file] : pictureOf(folder.path()))
        CHECK((name.starts_with("shop.riband") || name == "safe.riband"));
    Connection opened{folder / "safe.riband"}; // it is a shop like any other
    CHECK(opened.schemaVersion() == Connection::newestSchema());
}

TEST_CASE("A backup of a shop in memory is a shop, too", "[store][backup]") {
    const TemporaryFolder folder;
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    shop.receive(shop.toothed, mm(100), Money::minor(8000));
    backup(connection, folder / "safe.riband");
    CHECK(piecesIn(folder / "safe.riband") == 1);
}

TEST_CASE("A backup replaces nothing unless it is told to", "[store][backup]") {
    const TemporaryFolder folder;
    const std::string safe = newShop(folder / "safe.riband");
    Connection connection{newShop(folder / "shop.riband", 2)};
    CHECK(refusal(folder, [&] { backup(connection, safe); }) == Kind::Exists);
    CHECK(refusal(folder, [&] { backup(connection, folder / "nowhere/safe.riband"); }) == Kind::Missing);
    CHECK(refusal(folder, [&] { backup(connection, folder / "shop.riband", true); }) == Kind::Exists);
    {
        Connection open{safe};
        CHECK(Pieces{open}.all().size() == 1);
        CHECK(refusal(folder, [&] { backup(connection, safe, true); }) == Kind::Held);
    }
    backup(connection, safe, true);
    CHECK(piecesIn(safe) == 2);
}

TEST_CASE("A backup made while another counter works is one moment of the shop", "[store][backup]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder / "shop.riband", 20);
    std::atomic<bool> enough{false};
    std::atomic<int> done{0};
    std::thread other{[&] {
        Connection connection{path};
        const auto belt = Catalogue{connection}.all().front().id;
        const auto person = People{connection}.present().front().id;
        for (int i = 0; !enough; ++i) {
            Transaction transaction{connection};
            const auto pieces = Pieces{connection}.all();
            const auto& piece = pieces[static_cast<std::size_t>(i) % pieces.size()];
            Ledger{connection}.record(
                {{Act::Correct, at(day(2026, 3, 2), 9), person, belt, "", {}},
                 {{.account = Account::Rack, .piece = piece.id, .line = {}, .amount = -1, .reason = {}},
                  {.account = Account::Difference,
                   .piece = piece.id,
                   .line = {},
                   .amount = 1,
                   .reason = {}}}});
            transaction.commit();
            ++done;
        }
    }};
    Connection connection{path};
    std::int64_t last = 0;
    for (int i = 0; i < 5; ++i) {
        const int before = done;
        while (done < before + 3)
            std::this_thread::yield();
        const Verification found = backup(connection, folder / ("safe" + std::to_string(i)));
        CHECK(found.agrees());
        CHECK(found.movements > last);
        last = found.movements;
    }
    enough = true;
    other.join();
    CHECK(verify(connection).agrees());
}

TEST_CASE("A book that disagrees is copied as it is, and the copy says so", "[store][backup]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder / "shop.riband");
    RawDatabase{path}.run("UPDATE piece SET extent = 1");
    Connection connection{path};
    const Verification found = backup(connection, folder / "safe.riband");
    REQUIRE(found.disagreements.size() == 1);
    CHECK(found.disagreements.front().kind == Disagreement::Kind::PieceExtent);
    CHECK(refusal(folder, [&] { restore(folder / "safe.riband", folder / "new.riband"); }) == Kind::Corrupt);
    CHECK(restore(folder / "safe.riband", folder / "new.riband", true).empty());
}

TEST_CASE("What happened after the backup is kept under another name", "[store][restore]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder / "shop.riband", 3);
    const std::string safe = folder / "safe.riband";
    {
        Connection connection{path};
        backup(connection, safe);
        Pieces{connection}.move(PieceId{1}, "Z9-9");
    }
    const std::string kept = restore(safe, path);
    CHECK(kept == path + ".before");
    const auto placeIn = [](const std::string& file) {
        Connection connection{file, Connection::Mode::ReadOnly};
        return Pieces{connection}.at(PieceId{1}).place;
    };
    CHECK(placeIn(path) == "A1-1");
    CHECK(placeIn(kept) == "Z9-9");
    CHECK(pictureOf(folder.path()).size() == 3);

    CHECK(restore(safe, path) == path + ".before-2"); // nothing kept is ever replaced
    CHECK(restore(safe, folder / "other.riband").empty());
    CHECK(piecesIn(folder / "other.riband") == 3);
}

TEST_CASE("A shop behind a link is restored where the link leads to", "[store][restore]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder / "shop.riband", 3);
    const std::string safe = newShop(folder / "safe.riband");
    std::filesystem::create_symlink(path, folder / "link");
    CHECK(restore(safe, folder / "link") == path + ".before");
    CHECK(std::filesystem::is_symlink(folder / "link"));
    CHECK(piecesIn(path) == 1);
}

TEST_CASE("A damaged shop is restored, and kept as it was", "[store][restore]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder / "shop.riband", 3);
    {
        Connection connection{path};
        backup(connection, folder / "safe.riband");
    }
    overwriteAPage(path);
    const std::string damaged = bytesOf(path);
    const std::string kept = restore(folder / "safe.riband", path);
    CHECK(bytesOf(kept) == damaged);
    CHECK(piecesIn(path) == 3);
}

TEST_CASE("What is no good backup is not restored, and the shop stays", "[store][restore]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder / "shop.riband", 3);
    const std::string safe = newShop(folder / "safe.riband");
    const auto restored = [&] { return refusal(folder, [&] { restore(safe, path); }); };
    SECTION("none") {
        std::filesystem::remove(safe);
        CHECK(restored() == Kind::Missing);
    }
    SECTION("a text") {
        std::ofstream{safe, std::ios::trunc} << "Dear Sir";
        CHECK(restored() == Kind::NotAShop);
    }
    SECTION("damaged") {
        overwriteAPage(safe);
        CHECK(restored() == Kind::Corrupt);
    }
    SECTION("of a later program") {
        RawDatabase{safe}.run("PRAGMA user_version = 999");
        CHECK(restored() == Kind::Newer);
    }
    SECTION("the shop itself") {
        CHECK(refusal(folder, [&] { restore(path, path); }) == Kind::Exists);
    }
}

TEST_CASE("A shop that is open is not replaced", "[store][restore]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder / "shop.riband", 3);
    const std::string safe = newShop(folder / "safe.riband");
    Connection open{path};
    CHECK(Pieces{open}.all().size() == 3);
    try {
        restore(safe, path);
        FAIL("it was replaced");
    } catch (const StoreError& error) {
        CHECK(error.kind() == Kind::Held);
    }
    CHECK(Pieces{open}.all().size() == 3);
}
