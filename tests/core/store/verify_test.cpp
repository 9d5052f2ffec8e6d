#include "core/store/raw.h"
#include "core/store/verify.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

#include <sqlite3.h>

using namespace riband;
using namespace riband::store;
using Kind = Disagreement::Kind;

namespace {

/// A shop in the middle of a day, in a file that can be tampered with behind its back: a sleeve of 100 of
/// which three 30s were cut for order and ticket, a second one with an open ticket, a ready belt.
struct DayShop {
    explicit DayShop(const std::string& path) : connection{path, Connection::Mode::Create}, shop{connection} {
        sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
        const LineId sold = shop.order(shop.toothed, mm(30), 3);
        const TicketId done = shop.ticket(sold, sleeve);
        finish(sold, done);
        const PieceId second = shop.receive(shop.toothed, mm(100), Money::minor(8000));
        shop.ticket(shop.order(shop.toothed, mm(30), 2), second);
        shop.receive(shop.toothed, mm(30), Money::minor(2400), cutting::PieceKind::Ready);
    }
    void finish(LineId line, TicketId ticket) {
        Transaction transaction{connection};
        const MovementId cut = Ledger{connection}.record(shop.cutOf(sleeve, line, 3));
        Orders orders{connection};
        Tickets tickets{connection};
        OrderLine all = orders.at(orders.orderOf(line)).lines.front();
        all.cut = 3;
        orders.changeLine(all);
        orders.setState(orders.orderOf(line), OrderState::Ready);
        tickets.setMounting(tickets.at(ticket).mountings.front().id, MountingState::Cut, cut);
        tickets.setState(ticket, TicketState::Cut);
        transaction.commit();
    }
    std::string codeOf(PieceId piece) { return Pieces{connection}.at(piece).code; }

    Connection connection;
    SmallShop shop;
    PieceId sleeve{0};
};

/// As somebody with another program would: no rule of the schema holds.
void tamper(const std::string& path, const char* sql) {
    RawDatabase raw{path};
    for (const char* off :
         {"PRAGMA foreign_keys = OFF", "PRAGMA ignore_check_constraints = ON", "DROP TRIGGER movement_stays",
          "DROP TRIGGER movement_is_kept", "DROP TRIGGER posting_stays", "DROP TRIGGER posting_is_kept"})
        raw.run(off);
    raw.run(sql);
}

/// The only disagreement of that kind; fails the test if there is none or more than one.
Disagreement only(Connection& connection, Kind kind) {
    std::vector<Disagreement> found;
    for (const auto& disagreement : verify(connection).disagreements)
        if (disagreement.kind == kind) found.push_back(disagreement);
    REQUIRE(found.size() == 1);
    return found.front();
}

} // namespace

TEST_CASE("A shop in the middle of a day agrees with itself", "[store][verify]") {
    const TemporaryFolder folder;
    DayShop day{folder / "shop.riband"};
    const Verification found = verify(day.connection);
    CHECK(found.agrees());
    CHECK(found.pieces == 3);
    CHECK(found.movements == 4);
    CHECK(found.postings == 9); // three receipts of two, a cut of three
    Connection looking{folder / "shop.riband", Connection::Mode::ReadOnly};
    CHECK(verify(looking).agrees());
}

TEST_CASE("What was written in the ledger is neither changed nor deleted", "[store][ledger]") {
    const TemporaryFolder folder;
    DayShop day{folder / "shop.riband"};
    RawDatabase raw{folder / "shop.riband"};
    for (const char* sql : {"UPDATE posting SET amount = 0", "DELETE FROM posting",
                            "UPDATE movement SET note = 'better'", "DELETE FROM movement"}) {
        try {
            raw.run(sql);
            FAIL(sql);
        } catch (const StoreError& error) {
            CHECK(error.kind() == StoreError::Kind::Constraint);
            CHECK(error.detail().find("never") != std::string::npos);
        }
    }
    CHECK(verify(day.connection).agrees());
}

TEST_CASE("verify names each thing that does not agree", "[store][verify]") {
    const TemporaryFolder folder;
    const std::string path = folder / "shop.riband";
    DayShop day{path};
    const std::string sleeve = day.codeOf(day.sleeve);

    SECTION("a posting that was made smaller") {
        tamper(path, "UPDATE posting SET amount = 59000 WHERE movement = 2 AND account = 4");
        const Disagreement width = only(day.connection, Kind::MovementNotZero);
        CHECK(width.where == "2");
        CHECK(width.found == -31'000); // 90 mm were sold
        CHECK(only(day.connection, Kind::LineCount).found == 59'000);
    }
    SECTION("money that was lost on the way") {
        tamper(path, "UPDATE posting SET cost = cost - 1 WHERE movement = 2 AND account = 5");
        CHECK(only(day.connection, Kind::MovementNotZero).detail == "money");
    }
    SECTION("a movement without postings") {
        tamper(path, "INSERT INTO movement (act, at_ms, person, belt, note) VALUES (0, 0, 1, 1, '')");
        CHECK(only(day.connection, Kind::MovementNotZero).where == "5");
    }
    SECTION("a piece that keeps another width") {
        tamper(path, "UPDATE piece SET extent = 8000 WHERE id = 1");
        const Disagreement extent = only(day.connection, Kind::PieceExtent);
        CHECK(extent.where == sleeve);
        CHECK(extent.book == 8'000);
        CHECK(extent.found == 7'500);
    }
    SECTION("a piece that keeps another cost") {
        tamper(path, "UPDATE piece SET cost = 0 WHERE id = 1");
        CHECK(only(day.connection, Kind::PieceCost).found == 600);
    }
    SECTION("a piece below zero") {
        tamper(path, "INSERT INTO movement (act, at_ms, person, belt, note) VALUES (6, 0, 1, 1, '');"
                     "INSERT INTO posting (movement, position, account, piece, amount, cost)"
                     " VALUES (5, 0, 2, 1, -9000, 0), (5, 1, 9, 1, 9000, 0);"
                     "UPDATE piece SET extent = -1500 WHERE id = 1");
        CHECK(only(day.connection, Kind::PieceNegative).found == -1'500);
    }
    SECTION("a wrong check character") {
        tamper(path, "UPDATE piece SET code = '999-9' WHERE id = 1");
        CHECK(only(day.connection, Kind::PieceCode).where == "999-9");
    }
    SECTION("more promised than there is") {
        tamper(path, "UPDATE mounting SET state = 0 WHERE id = 1");
        const Disagreement promised = only(day.connection, Kind::OverReserved);
        CHECK(promised.where == sleeve);
        CHECK(promised.book == 7'500);
        CHECK(promised.found == 92'500);
    }
    SECTION("a promise that keeps another figure than its cuts") {
        tamper(path, "UPDATE mounting_cut SET belts = 1 WHERE mounting = 2");
        CHECK(only(day.connection, Kind::OverReserved).found == 32'500);
    }
    SECTION("belts said to be cut that were never sold") {
        tamper(path, "UPDATE order_line SET cut = 1 WHERE id = 2");
        const Disagreement line = only(day.connection, Kind::LineCount);
        CHECK(line.book == 30'000);
        CHECK(line.found == 0);
        CHECK(line.detail == "1"); // the first line of its order
    }
    SECTION("an order handed over before all was cut") {
        tamper(path, "UPDATE sales_order SET state = 4 WHERE id = 2");
        CHECK(only(day.connection, Kind::OrderState).where == Orders{day.connection}.at(OrderId{2}).code);
    }
    SECTION("an open ticket with nothing left to cut") {
        tamper(path, "UPDATE ticket SET state = 0 WHERE id = 1");
        CHECK(only(day.connection, Kind::TicketState).where == Tickets{day.connection}.at(TicketId{1}).code);
    }
    SECTION("a mounting whose movement is that of another piece") {
        tamper(path, "UPDATE mounting SET movement = 1, piece = 2 WHERE id = 1");
        CHECK(only(day.connection, Kind::TicketState).detail == "movement");
    }
    SECTION("millimetres on a ribbed belt") {
        tamper(path, "UPDATE movement SET belt = 2 WHERE id = 1");
        CHECK(only(day.connection, Kind::UnitMixed).where == "1");
    }
    SECTION("a sum for the reports that is not that of the ledger") {
        tamper(path, "UPDATE flow_total SET amount = amount + 1000 WHERE account = 4 AND level = 1");
        const Disagreement sum = only(day.connection, Kind::FlowSum);
        CHECK(sum.where == Catalogue{day.connection}.at(day.shop.toothed).designation);
        CHECK(sum.book == 91'000);
        CHECK(sum.found == 90'000);
        CHECK(sum.detail == "width");
    }
    SECTION("the money of such a sum") {
        tamper(path, "UPDATE flow_total SET cost = cost + 7 WHERE account = 4 AND level = 1");
        CHECK(only(day.connection, Kind::FlowSum).detail == "money");
    }
    SECTION("a sum that stands with a cutter on which nothing was cut") {
        tamper(path, "UPDATE flow_total SET cutter = 1 - cutter WHERE account = 4");
        std::int64_t book = 0, sum = 0, sums = 0;
        for (const auto& disagreement : verify(day.connection).disagreements) {
            CHECK(disagreement.kind == Kind::FlowSum);
            if (disagreement.detail != "width") continue;
            ++sums;
            book += disagreement.book;
            sum += disagreement.found;
        }
        CHECK(sums == 2); // what the one has too much, the other lacks
        CHECK(book == 90'000);
        CHECK(sum == 90'000);
    }
    SECTION("what a month lost, squared, is not that of the ledger") {
        tamper(path, "UPDATE scatter_total SET lost_lost = lost_lost * 1.01");
        CHECK(only(day.connection, Kind::FlowSum).detail == "scatter");
    }
    SECTION("an order of a person that is not there") {
        tamper(path, "UPDATE sales_order SET person = 99 WHERE id = 1");
        CHECK(only(day.connection, Kind::ForeignKey).where == "sales_order 1");
    }
    SECTION("a rule of the schema that does not hold") {
        tamper(path, "UPDATE person SET role = 7");
        CHECK(only(day.connection, Kind::Database).where == "CHECK constraint failed in person");
    }
}

TEST_CASE("A verification can be watched and stopped", "[store][verify]") {
    const TemporaryFolder folder;
    DayShop day{folder / "shop.riband"};
    double last = -1;
    CHECK(verify(day.connection, [&](double share) {
              CHECK(share >= last);
              last = share;
              return true;
          }).agrees());
    CHECK(last == 1.0);
    const Verification stopped = verify(day.connection, [](double share) { return share < 0.5; });
    CHECK_FALSE(stopped.finished);
    CHECK_FALSE(stopped.agrees());
    CHECK(verify(day.connection).agrees()); // nothing is left behind
}
