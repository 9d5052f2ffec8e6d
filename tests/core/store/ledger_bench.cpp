// The ledger against bare SQLite that writes and reads the same rows under the same settings, in one run. The
// bare side binds and steps what the ledger would have written: no checks, no types, no Qt. Each figure is
// the best of the rounds, in turn, so that both sides meet the same machine.

#include "tests/core/store/shop_fixture.h"

#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <map>
#include <string>

namespace {

using namespace riband;
using namespace riband::store;

constexpr int pieces = 20'000, bulk = 100'000, durable = 200, histories = 2'000, rounds = 3;

double seconds(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

void print(const char* what, double ours, double bare, const char* detail) {
    std::printf("%-46s %9.1f ms  bare %9.1f ms  ratio %5.2f  %s\n", what, ours * 1e3, bare * 1e3, ours / bare,
                detail);
}

/// SQLite by its own functions, set up as Connection does.
class Bare {
public:
    explicit Bare(const std::string& path) {
        require(sqlite3_open(path.c_str(), &database_));
        run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;"
            "PRAGMA cache_size = -32768; PRAGMA temp_store = MEMORY; PRAGMA journal_size_limit = 67108864;"
            "PRAGMA cell_size_check = ON; PRAGMA trusted_schema = OFF");
    }
    ~Bare() {
        for (auto& [sql, statement] : prepared_)
            sqlite3_finalize(statement);
        sqlite3_close(database_);
    }
    Bare(const Bare&) = delete;
    Bare& operator=(const Bare&) = delete;

    void run(const char* sql) { require(sqlite3_exec(database_, sql, nullptr, nullptr, nullptr)); }
    sqlite3_stmt* prepared(const char* sql) {
        auto& statement = prepared_[sql];
        if (!statement) require(sqlite3_prepare_v2(database_, sql, -1, &statement, nullptr));
        return statement;
    }
    void step(sqlite3_stmt* statement) {
        if (sqlite3_step(statement) != SQLITE_DONE) fail();
        sqlite3_reset(statement);
    }
    std::int64_t newId() const { return sqlite3_last_insert_rowid(database_); }

private:
    void require(int code) {
        if (code != SQLITE_OK) fail();
    }
    [[noreturn]] void fail() {
        std::fprintf(stderr, "%s\n", sqlite3_errmsg(database_));
        std::exit(1);
    }
    sqlite3* database_ = nullptr;
    std::map<const char*, sqlite3_stmt*> prepared_;
};

/// One shop for each side, alike to the last row.
struct Side {
    std::string path;
    std::vector<PieceId> pieces;
    LineId line{0};
};

std::vector<PieceId> fill(Connection& connection, const SmallShop& shop) {
    std::vector<PieceId> filled;
    Transaction transaction{connection};
    for (int i = 0; i < pieces; ++i) {
        const PieceId piece = Pieces{connection}.add({shop.toothed,
                                                      cutting::PieceKind::Sleeve,
                                                      {},
                                                      "P" + std::to_string(i % 300),
                                                      dayOf(shop.now),
                                                      {},
                                                      "M-77"});
        Ledger{connection}.record({{Act::Receive, shop.now, shop.clerk, shop.toothed, "", {}},
                                   {{.account = Account::Bought,
                                     .piece = {},
                                     .line = {},
                                     .amount = -50'000'000,
                                     .cost = Money::minor(-4'000'000),
                                     .reason = {}},
                                    {.account = Account::Rack,
                                     .piece = piece,
                                     .line = {},
                                     .amount = 50'000'000,
                                     .cost = Money::minor(4'000'000),
                                     .reason = {}}}});
        filled.push_back(piece);
    }
    transaction.commit();
    return filled;
}

Side newSide(const std::string& path) {
    Connection connection{path, Connection::Mode::Create};
    SmallShop shop{connection};
    Side side{path, fill(connection, shop), LineId{0}};
    side.line = shop.order(shop.toothed, mm(30), 1'000'000);
    return side;
}

PieceId pieceOf(const Side& side, int i) {
    return side.pieces[static_cast<std::size_t>(i * 7919) % side.pieces.size()];
}

/// A cut of one belt of 30: four postings, one piece.
void ourCut(Ledger& ledger, const Side& side, int i) {
    const PieceId piece = pieceOf(side, i);
    ledger.record(
        {{Act::Cut, at(day(2026, 3, 2), 9) + std::chrono::seconds{i}, PersonId{1}, BeltId{1}, "", {}},
         {{.account = Account::Rack,
           .piece = piece,
           .line = {},
           .amount = -37'500,
           .cost = Money::minor(-3'000),
           .reason = {}},
          {.account = Account::Trim,
           .piece = piece,
           .line = {},
           .amount = 2'500,
           .cost = Money::minor(200),
           .reason = {}},
          {.account = Account::Sold,
           .piece = piece,
           .line = side.line,
           .amount = 30'000,
           .cost = Money::minor(2'400),
           .reason = {}},
          {.account = Account::End,
           .piece = piece,
           .line = {},
           .amount = 5'000,
           .cost = Money::minor(400),
           .reason = {}}}});
}

void bind(sqlite3_stmt* statement, int position, std::optional<std::int64_t> value) {
    if (value)
        sqlite3_bind_int64(statement, position, *value);
    else
        sqlite3_bind_null(statement, position);
}

void barePosting(Bare& bare, std::int64_t movement, int position, int account, std::int64_t piece,
                 std::optional<std::int64_t> line, std::int64_t amount, std::int64_t cost) {
    auto* insert = bare.prepared("INSERT INTO posting (movement, position, account, piece, line, amount, "
                                 "cost, reason) VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
    bind(insert, 1, movement);
    bind(insert, 2, position);
    bind(insert, 3, account);
    bind(insert, 4, piece);
    bind(insert, 5, line);
    bind(insert, 6, amount);
    bind(insert, 7, cost);
    bind(insert, 8, std::nullopt);
    bare.step(insert);
}

void bareCut(Bare& bare, const Side& side, int i) {
    const std::int64_t piece = pieceOf(side, i).value();
    auto* movement = bare.prepared(
        "INSERT INTO movement (act, at_ms, person, belt, note, undoes) VALUES (?, ?, ?, ?, ?, ?)");
    bind(movement, 1, static_cast<int>(Act::Cut));
    bind(movement, 2, (at(day(2026, 3, 2), 9) + std::chrono::seconds{i}).time_since_epoch().count());
    bind(movement, 3, 1);
    bind(movement, 4, 1);
    sqlite3_bind_text(movement, 5, "", 0, SQLITE_STATIC);
    bind(movement, 6, std::nullopt);
    bare.step(movement);
    const std::int64_t id = bare.newId();
    barePosting(bare, id, 0, 2, piece, {}, -37'500, -3'000);
    auto* update =
        bare.prepared("UPDATE piece SET extent = extent + ?, cost = cost + ? WHERE id = ? AND belt = ?");
    bind(update, 1, -37'500);
    bind(update, 2, -3'000);
    bind(update, 3, piece);
    bind(update, 4, 1);
    bare.step(update);
    barePosting(bare, id, 1, 5, piece, {}, 2'500, 200);
    barePosting(bare, id, 2, 4, piece, side.line.value(), 30'000, 2'400);
    barePosting(bare, id, 3, 7, piece, {}, 5'000, 400);
}

/// Steps through all rows and touches every column, as text where it is text.
std::int64_t drain(sqlite3_stmt* statement) {
    std::int64_t touched = 0;
    while (sqlite3_step(statement) == SQLITE_ROW)
        for (int column = 0; column < sqlite3_column_count(statement); ++column)
            touched += sqlite3_column_type(statement, column) == SQLITE_TEXT
                           ? static_cast<std::int64_t>(std::string{
                                 reinterpret_cast<const char*>(sqlite3_column_text(statement, column))}
                                                           .size())
                           : sqlite3_column_int64(statement, column);
    sqlite3_reset(statement);
    return touched;
}

struct Best {
    double ours = 1e9, bare = 1e9;
    void take(double our, double theirs) {
        ours = std::min(ours, our);
        bare = std::min(bare, theirs);
    }
};

void benchDurable(const Side& our, const Side& their) {
    Connection connection{our.path};
    Ledger ledger{connection};
    Bare bare{their.path};
    Best best;
    for (int round = 0; round < rounds; ++round)
        best.take(seconds([&] {
                      for (int i = 0; i < durable; ++i) {
                          Transaction transaction{connection};
                          ourCut(ledger, our, i);
                          transaction.commit();
                      }
                  }),
                  seconds([&] {
                      for (int i = 0; i < durable; ++i) {
                          bare.run("BEGIN IMMEDIATE");
                          bareCut(bare, their, i);
                          bare.run("COMMIT");
                      }
                  }));
    print("200 cuts, each durable", best.ours, best.bare, "one fsync each");
}

void benchBulk(const Side& our, const Side& their) {
    Connection connection{our.path};
    Ledger ledger{connection};
    Bare bare{their.path};
    Best best;
    for (int round = 0; round < rounds; ++round)
        best.take(seconds([&] {
                      Transaction transaction{connection};
                      for (int i = 0; i < bulk; ++i)
                          ourCut(ledger, our, i);
                      transaction.commit();
                  }),
                  seconds([&] {
                      bare.run("BEGIN IMMEDIATE");
                      for (int i = 0; i < bulk; ++i)
                          bareCut(bare, their, i);
                      bare.run("COMMIT");
                  }));
    print("100,000 cuts in one transaction", best.ours, best.bare, "400,000 postings");
}

void benchHistory(const Side& our, const Side& their) {
    Connection connection{our.path};
    const Ledger ledger{connection};
    Bare bare{their.path};
    auto* select = bare.prepared(
        "SELECT m.id, m.act, m.at_ms, m.person, m.belt, m.note, m.undoes, p.account, p.piece, p.line, "
        "p.amount, p.cost, p.reason"
        " FROM movement m JOIN posting p ON p.movement = m.id"
        " WHERE m.id IN (SELECT movement FROM posting WHERE piece = ?) ORDER BY m.at_ms, m.id, p.position");
    std::size_t movements = 0;
    std::int64_t touched = 0;
    Best best;
    for (int round = 0; round < rounds; ++round)
        best.take(seconds([&] {
                      for (int i = 0; i < histories; ++i)
                          movements += ledger.historyOf(pieceOf(our, i)).size();
                  }),
                  seconds([&] {
                      for (int i = 0; i < histories; ++i) {
                          bind(select, 1, pieceOf(their, i).value());
                          touched += drain(select);
                      }
                  }));
    print("2,000 histories of a piece", best.ours, best.bare,
          (std::to_string(movements / rounds / histories) + " movements each").c_str());
    if (touched == 0) std::exit(1);
}

void benchPieces(const Side& our, const Side& their) {
    Connection connection{our.path};
    Bare bare{their.path};
    auto* select = bare.prepared(
        "SELECT p.id, p.code, p.belt, b.unit, p.kind, p.extent,"
        " (SELECT coalesce(sum(m.reserved), 0) FROM mounting m WHERE m.piece = p.id AND m.state = 0)"
        " + CASE WHEN p.kind = 2 AND EXISTS (SELECT 1 FROM taken_ready r JOIN ticket t ON t.id = r.ticket"
        "   WHERE r.piece = p.id AND t.state = 0) THEN p.extent ELSE 0 END,"
        " p.cost, p.parent, coalesce(l.name, ''), p.received_day, p.made_day, p.batch"
        " FROM piece p JOIN belt b ON b.id = p.belt LEFT JOIN place l ON l.id = p.place WHERE p.extent > 0");
    std::size_t read = 0;
    std::int64_t touched = 0;
    Best best;
    for (int round = 0; round < rounds; ++round)
        best.take(seconds([&] { read = Pieces{connection}.all().size(); }),
                  seconds([&] { touched += drain(select); }));
    print("all pieces on the rack", best.ours, best.bare, (std::to_string(read) + " pieces").c_str());
    if (touched == 0) std::exit(1);
}

} // namespace

int main() {
    const TemporaryFolder folder;
    const Side our = newSide(folder / "ours.riband"), their = newSide(folder / "bare.riband");
    benchDurable(our, their);
    benchBulk(our, their);
    benchHistory(our, their);
    benchPieces(our, their);
}
