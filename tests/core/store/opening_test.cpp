#include "core/store/raw.h"
#include "core/store/schema.h"
#include "core/store/statement.h"
#include "tests/catch.h"
#include "tests/core/store/folder_picture.h"
#include "tests/core/store/shop_fixture.h"

#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace riband;
using namespace riband::store;
using Kind = StoreError::Kind;
using Mode = Connection::Mode;

namespace {

/// The kind of the refusal; fails the test if the file is opened or a byte or time of the folder changes.
Kind refusal(const TemporaryFolder& folder, const std::string& path, Mode mode = Mode::Open) {
    const auto before = pictureOf(folder.path());
    std::optional<Kind> kind;
    try {
        Connection{path, mode};
    } catch (const StoreError& error) {
        kind = error.kind();
        CHECK(error.path() == path);
        CHECK_FALSE(error.detail().empty());
    }
    CHECK((pictureOf(folder.path()) == before));
    REQUIRE(kind);
    return *kind;
}

std::string newShop(const TemporaryFolder& folder, const std::string& name = "shop.riband") {
    Connection connection{folder / name, Mode::Create};
    SmallShop shop{connection};
    shop.receive(shop.toothed, mm(100), Money::minor(8000));
    return folder / name;
}

void write(const std::string& path, const std::string& bytes) {
    std::ofstream{path, std::ios::binary | std::ios::trunc} << bytes;
}

std::size_t piecesSeen(const std::string& path) {
    Connection looking{path, Mode::ReadOnly};
    return Pieces{looking}.all().size();
}

/// Root may write everything; the tests of what may not be written act as somebody else.
class AsNobody {
public:
    AsNobody() : root_{::geteuid() == 0} {
        if (root_) REQUIRE(::seteuid(65534) == 0);
    }
    ~AsNobody() {
        if (root_ && ::seteuid(0) != 0) std::abort();
    }

private:
    bool root_;
};

/// Another process that holds the file until it is told to go.
class OtherProcess {
public:
    OtherProcess(const std::string& path, const char* sql) {
        REQUIRE(::pipe(ready_) == 0);
        REQUIRE(::pipe(go_) == 0);
        pid_ = ::fork();
        if (pid_ == 0) hold(path, sql);
        char byte = 0;
        REQUIRE(::read(ready_[0], &byte, 1) == 1);
        REQUIRE(byte == 'y');
    }
    ~OtherProcess() {
        ::close(go_[1]);
        ::waitpid(pid_, nullptr, 0);
        for (const int end : {ready_[0], ready_[1], go_[0]})
            ::close(end);
    }

private:
    [[noreturn]] void hold(const std::string& path, const char* sql) {
        ::close(go_[1]);
        sqlite3* database = nullptr;
        const bool held = sqlite3_open(path.c_str(), &database) == SQLITE_OK &&
                          sqlite3_exec(database, sql, nullptr, nullptr, nullptr) == SQLITE_OK;
        char byte = held ? 'y' : 'n';
        if (::write(ready_[1], &byte, 1) == 1) (void)!::read(go_[0], &byte, 1);
        ::_exit(0);
    }
    int ready_[2], go_[2];
    pid_t pid_;
};

} // namespace

TEST_CASE("A new shop is there when it is opened again", "[store][opening]") {
    const TemporaryFolder folder;
    for (const std::string name : {"shop.riband", "Bänder 50 % #1?.riband"}) {
        const std::string path = newShop(folder, name);
        Connection again{path};
        CHECK(again.path() == path);
        CHECK(again.schemaVersion() == Connection::newestSchema());
        CHECK(Pieces{again}.all().size() == 1);
    }
    CHECK(pictureOf(folder.path()).size() == 2); // nothing is left beside the two
}

TEST_CASE("A shop is kept in a way that a commit is on the disk before it returns", "[store][opening]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    RawDatabase raw{path};
    CHECK(raw.text("PRAGMA journal_mode") == "wal");
    CHECK(raw.number("PRAGMA application_id") == applicationId);
    Connection connection{path};
    CHECK(only<int>(connection, "PRAGMA synchronous") == 2); // FULL
    CHECK(only<int>(connection, "PRAGMA foreign_keys") == 1);
    // The full-text index has tables of its own, which are none of ours.
    CHECK(raw.number("SELECT count(*) FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND "
                     "name NOT LIKE 'sqlite_%'") == 0);
}

TEST_CASE("A shop is never made over a file that is there", "[store][opening]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    CHECK(refusal(folder, path, Mode::Create) == Kind::Exists);
    write(folder / "letter.txt", "Dear Sir");
    CHECK(refusal(folder, folder / "letter.txt", Mode::Create) == Kind::Exists);
    CHECK(refusal(folder, folder / "no such folder/shop.riband", Mode::Create) == Kind::Missing);
}

TEST_CASE("What is no shop is refused and left as it is", "[store][opening]") {
    const TemporaryFolder folder;
    SECTION("no such file") {
        CHECK(refusal(folder, folder / "shop.riband") == Kind::Missing);
        CHECK(refusal(folder, folder / "no such folder/shop.riband") == Kind::Missing);
        CHECK(refusal(folder, "") == Kind::Missing);
        CHECK(refusal(folder, ":memory:") == Kind::Missing);
    }
    SECTION("a folder") { CHECK(refusal(folder, folder.path().string()) == Kind::Missing); }
    SECTION("an empty file") {
        write(folder / "x", "");
        CHECK(refusal(folder, folder / "x") == Kind::NotAShop);
    }
    SECTION("a text") {
        write(folder / "x", std::string(5000, 'a'));
        CHECK(refusal(folder, folder / "x") == Kind::NotAShop);
        CHECK(refusal(folder, folder / "x", Mode::ReadOnly) == Kind::NotAShop);
    }
    SECTION("a database of something else, however it is kept") {
        const char* mode = GENERATE("PRAGMA journal_mode = DELETE", "PRAGMA journal_mode = WAL");
        write(folder / "x", "");
        {
            RawDatabase other{folder / "x"};
            other.run(mode);
            other.run("CREATE TABLE piece (id INTEGER)");
            other.run("PRAGMA user_version = 4");
        }
        CHECK(refusal(folder, folder / "x") == Kind::NotAShop);
    }
}

TEST_CASE("A shop that a later program wrote is refused with its number", "[store][opening]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    RawDatabase{path}.run("PRAGMA user_version = 999");
    CHECK(refusal(folder, path) == Kind::Newer);
    CHECK(refusal(folder, path, Mode::ReadOnly) == Kind::Newer);
    try {
        Connection{path};
    } catch (const StoreError& error) {
        CHECK(error.detail() == "999");
    }
}

TEST_CASE("A later schema is seen even where it stands in the write-ahead log only", "[store][opening]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    OtherProcess dying{path, "PRAGMA user_version = 999"}; // ends without closing: its log stays
    const auto before = bytesOf(path);
    CHECK_THROWS_AS(Connection{path}, StoreError);
    CHECK(bytesOf(path) == before);
}

TEST_CASE("A damaged shop is refused and left as it is", "[store][opening]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    const std::string whole = bytesOf(path);
    SECTION("cut off in the middle") { write(path, whole.substr(0, whole.size() / 2)); }
    SECTION("one page overwritten") {
        std::string damaged = whole;
        damaged.replace(damaged.size() - 4096, 4096, 4096, '\x5a');
        write(path, damaged);
    }
    SECTION("the list of tables overwritten") {
        std::string damaged = whole;
        damaged.replace(100, 3996, 3996, '\x5a');
        write(path, damaged);
    }
    CHECK(refusal(folder, path) == Kind::Corrupt);
    CHECK(refusal(folder, path, Mode::ReadOnly) == Kind::Corrupt);
}

TEST_CASE("A shop that can't be written is refused, but can be looked at", "[store][opening]") {
    namespace fs = std::filesystem;
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    const auto all = fs::perms::owner_all | fs::perms::group_all | fs::perms::others_all;
    const auto readable = fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read;
    SECTION("the file") {
        fs::permissions(folder.path(), all);
        fs::permissions(path, readable);
        const AsNobody nobody;
        CHECK(refusal(folder, path) == Kind::ReadOnly);
        CHECK(piecesSeen(path) == 1);
    }
    SECTION("the folder") {
        fs::permissions(path, readable | fs::perms::owner_write | fs::perms::others_write);
        fs::permissions(folder.path(),
                        readable | fs::perms::owner_exec | fs::perms::group_exec | fs::perms::others_exec);
        const AsNobody nobody;
        CHECK(refusal(folder, path) == Kind::ReadOnly);
        CHECK(refusal(folder, folder / "new.riband", Mode::Create) == Kind::ReadOnly);
        CHECK(piecesSeen(path) == 1);
    }
    fs::permissions(folder.path(), all);
}

TEST_CASE("A shop that another process holds for itself is refused", "[store][opening]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    SECTION("for all time") {
        OtherProcess other{path, "PRAGMA locking_mode = EXCLUSIVE; BEGIN IMMEDIATE; "
                                 "UPDATE code_counter SET next = next; COMMIT"};
        CHECK(refusal(folder, path) == Kind::Held);
    }
    SECTION("a second counter at work is no hindrance") {
        OtherProcess other{path, "BEGIN IMMEDIATE; UPDATE code_counter SET next = next"};
        Connection here{path};
        CHECK(Pieces{here}.all().size() == 1);
    }
}

TEST_CASE("A shop that is looked at can't be changed", "[store][opening]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    const std::string before = bytesOf(path);
    {
        Connection looking{path, Mode::ReadOnly};
        CHECK(Pieces{looking}.all().size() == 1);
        try {
            Pieces{looking}.move(Pieces{looking}.all().front().id, "B1-1");
            FAIL("it was changed");
        } catch (const StoreError& error) {
            CHECK(error.kind() == Kind::ReadOnly);
        }
    }
    CHECK(bytesOf(path) == before);
    CHECK(pictureOf(folder.path()).size() == 1);
}

TEST_CASE("What is not committed never was", "[store][transaction]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    Connection here{path}, there{path};
    const PieceId piece = Pieces{here}.all().front().id;
    {
        Transaction transaction{here};
        Pieces{here}.move(piece, "C3-3");
        CHECK(Pieces{here}.at(piece).place == "C3-3");
        CHECK(Pieces{there}.at(piece).place == "A1-1"); // others see it when it is done
    }
    CHECK(Pieces{here}.at(piece).place == "A1-1");
    {
        Transaction transaction{here};
        Pieces{here}.move(piece, "C3-3");
        CHECK_THROWS_AS(Transaction{here}, std::logic_error);
        transaction.commit();
        CHECK_THROWS_AS(transaction.commit(), std::logic_error);
    }
    CHECK(Pieces{there}.at(piece).place == "C3-3");
}

TEST_CASE("A full disk leaves the shop as it was and says so", "[store][transaction]") {
    const TemporaryFolder folder;
    const std::string path = newShop(folder);
    Connection connection{path};
    // The limit of pages stands in for the disk: SQLite answers both with SQLITE_FULL.
    const auto tooMany = [&] {
        Statement{connection, "PRAGMA max_page_count = 1"}; // no lower than what is there
        Transaction transaction{connection};
        for (int i = 0; i < 10'000; ++i)
            People{connection}.add("P" + std::to_string(i), "a long name of a person", Role::Clerk);
        transaction.commit();
    };
    try {
        tooMany();
        FAIL("it fitted");
    } catch (const StoreError& error) {
        CHECK(error.kind() == Kind::Full);
    }
    CHECK(People{connection}.present().size() == 1);
    CHECK(Pieces{connection}.all().size() == 1);
}
