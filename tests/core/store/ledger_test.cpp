#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

namespace {

Posting posting(Account account, std::optional<PieceId> piece, std::int64_t amount, std::int64_t cents = 0,
                std::optional<ScrapReason> reason = std::nullopt) {
    return {.account = account,
            .piece = piece,
            .line = {},
            .amount = amount,
            .cost = Money::minor(cents),
            .reason = reason};
}

Movement::About about(Act act = Act::Correct) {
    return {.act = act,
            .at = at(day(2026, 3, 2), 10),
            .person = PersonId{1},
            .belt = BeltId{1},
            .note = "",
            .undoes = {}};
}

std::int64_t balance(Connection& shop, BeltId belt, Account account) {
    for (const auto& sum : Ledger{shop}.balances())
        if (sum.belt == belt && sum.account == account) return sum.amount;
    return 0;
}

} // namespace

TEST_CASE("A movement whose width or money does not sum to zero can't be made", "[store][ledger]") {
    const PieceId piece{1};
    CHECK_NOTHROW(Movement(
        about(), {posting(Account::Rack, piece, -2500, -200), posting(Account::Trim, piece, 2500, 200)}));
    CHECK_THROWS_AS(
        Movement(about(), {posting(Account::Rack, piece, -2500), posting(Account::Trim, piece, 2499)}),
        std::invalid_argument);
    CHECK_THROWS_AS(Movement(about(), {posting(Account::Rack, piece, -2500, -200),
                                       posting(Account::Trim, piece, 2500, 199)}),
                    std::invalid_argument);
}

TEST_CASE("A movement says what its accounts need", "[store][ledger]") {
    const PieceId piece{1};
    SECTION("width on the rack is a piece") {
        CHECK_THROWS_AS(
            Movement(about(), {posting(Account::Rack, {}, 1000), posting(Account::Found, {}, -1000)}),
            std::invalid_argument);
        CHECK_THROWS_AS(
            Movement(about(), {posting(Account::Ready, {}, 1000), posting(Account::Found, {}, -1000)}),
            std::invalid_argument);
    }
    SECTION("scrap has a reason, and nothing else has one") {
        CHECK_THROWS_AS(Movement(about(Act::Scrap), {posting(Account::Rack, piece, -9000),
                                                     posting(Account::Scrap, piece, 9000)}),
                        std::invalid_argument);
        CHECK_THROWS_AS(Movement(about(Act::Cut), {posting(Account::Rack, piece, -9000),
                                                   posting(Account::End, piece, 9000, 0, ScrapReason::Stub)}),
                        std::invalid_argument);
        CHECK_NOTHROW(
            Movement(about(Act::Scrap), {posting(Account::Rack, piece, -9000),
                                         posting(Account::Scrap, piece, 9000, 0, ScrapReason::Stub)}));
    }
    SECTION("what is sold names its order line") {
        CHECK_THROWS_AS(Movement(about(Act::Cut), {posting(Account::Rack, piece, -30'000),
                                                   posting(Account::Sold, piece, 30'000)}),
                        std::invalid_argument);
    }
    SECTION("only a counter-entry names what it undoes") {
        auto undo = about(Act::Undo);
        const std::vector<Posting> postings{posting(Account::Rack, piece, -1),
                                            posting(Account::Difference, piece, 1)};
        CHECK_THROWS_AS(Movement(undo, postings), std::invalid_argument);
        undo.undoes = MovementId{7};
        CHECK_NOTHROW(Movement(undo, postings));
        undo.act = Act::Cut;
        CHECK_THROWS_AS(Movement(undo, postings), std::invalid_argument);
    }
    SECTION("it goes from somewhere to somewhere, and each posting moves something") {
        CHECK_THROWS_AS(Movement(about(), {}), std::invalid_argument);
        CHECK_THROWS_AS(
            Movement(about(), {posting(Account::Rack, piece, 0, 0), posting(Account::Kerf, piece, 0, 0)}),
            std::invalid_argument);
    }
    SECTION("a kilometre of one belt is a slip of the pen") {
        CHECK_THROWS_AS(Movement(about(), {posting(Account::Rack, piece, 1'000'000'000'000),
                                           posting(Account::Bought, {}, -1'000'000'000'000)}),
                        std::invalid_argument);
    }
}

TEST_CASE("Cutting three 30s from a 100 leaves 7.5 after 2.5 of trim, to the micrometre", "[store][ledger]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    const LineId line = shop.order(shop.toothed, mm(30), 3);
    shop.record(shop.cutOf(sleeve, line, 3));

    // 8000 cents for 100 mm: 200 go with the trim, 7200 with the belts, 600 stay with the rest.
    const StockPiece rest = Pieces{connection}.at(sleeve);
    CHECK(rest.extent == Extent{Width::micrometres(7500)});
    CHECK(rest.cost == Money::minor(600));
    CHECK(balance(connection, shop.toothed, Account::Bought) == -100'000);
    CHECK(balance(connection, shop.toothed, Account::Rack) == 7'500);
    CHECK(balance(connection, shop.toothed, Account::Sold) == 90'000);
    CHECK(balance(connection, shop.toothed, Account::Trim) == 2'500);
}

TEST_CASE("A piece never goes below zero, and the act that tries leaves nothing", "[store][ledger]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(50), Money::minor(4000));
    const LineId line = shop.order(shop.toothed, mm(30), 2);
    {
        Transaction transaction{connection};
        try {
            Ledger{connection}.record(shop.cutOf(sleeve, line, 2)); // 62.5 of 50
            FAIL("62.5 mm were taken from 50");
        } catch (const StoreError& error) {
            CHECK(error.kind() == StoreError::Kind::Constraint);
        }
        CHECK_THROWS_AS(transaction.commit(), std::logic_error); // half an act is never kept
    }
    CHECK(Pieces{connection}.at(sleeve).extent == mm(50));
    CHECK(Ledger{connection}.historyOf(sleeve).size() == 1);
}

TEST_CASE("Width of one belt can't be booked on a piece of another", "[store][ledger]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId ribs = shop.receive(shop.ribbed, Ribs{60}, Money::minor(4500));
    auto of = about();
    of.belt = shop.toothed;
    Transaction transaction{connection};
    CHECK_THROWS_AS(Ledger{connection}.record(
                        {of, {posting(Account::Rack, ribs, -5), posting(Account::Difference, ribs, 5)}}),
                    StoreError);
}

TEST_CASE("A movement is recorded inside the transaction of its act", "[store][ledger]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    CHECK_THROWS_AS(
        Ledger{connection}.record(
            {about(), {posting(Account::Rack, sleeve, -1), posting(Account::Difference, sleeve, 1)}}),
        std::logic_error);
}

TEST_CASE("A mistake is undone by a counter-entry that names it, once", "[store][ledger]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    const LineId line = shop.order(shop.toothed, mm(30), 1);
    const MovementId cut = shop.record(shop.cutOf(sleeve, line, 1));
    const Ledger ledger{connection};

    const auto undo = [&] {
        return shop.record(counterOf(ledger.at(cut), at(day(2026, 3, 2), 11), shop.clerk, "wrong piece"));
    };
    const MovementId counter = undo();
    CHECK(Pieces{connection}.at(sleeve).extent == mm(100));
    CHECK(Pieces{connection}.at(sleeve).cost == Money::minor(8000));
    CHECK(ledger.at(counter).movement.about().undoes == cut);
    CHECK(ledger.at(counter).movement.about().note == "wrong piece");
    CHECK(ledger.historyOf(sleeve).size() == 3); // what was done stays written
    CHECK_THROWS_AS(undo(), StoreError);
}

TEST_CASE("The history of a piece is what was recorded, oldest first", "[store][ledger]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    const PieceId other = shop.receive(shop.toothed, mm(100), Money::minor(8100));
    const LineId line = shop.order(shop.toothed, mm(30), 2);
    shop.now += std::chrono::minutes{7};
    const Movement cut = shop.cutOf(sleeve, line, 2);
    const MovementId id = shop.record(cut);
    const Ledger ledger{connection};

    const auto history = ledger.historyOf(sleeve);
    REQUIRE(history.size() == 2);
    CHECK(history[0].movement.about().act == Act::Receive);
    CHECK(history[1].id == id);
    CHECK(history[1].movement.about().at == at(day(2026, 3, 2), 9, 7));
    REQUIRE(history[1].movement.postings().size() == 3);
    const Posting& sold = history[1].movement.postings()[2];
    CHECK(sold.account == Account::Sold);
    CHECK(sold.line == line);
    CHECK(sold.amount == 60'000);
    CHECK(sold.cost == Money::minor(4800)); // 60 of 100 mm for 80.00
    CHECK(ledger.historyOf(other).size() == 1);
    CHECK(ledger.ofLine(line).size() == 1);

    const Moment nine = at(day(2026, 3, 2), 9);
    CHECK(ledger.between(nine, nine).empty());
    CHECK(ledger.between(nine, nine + std::chrono::minutes{7}).size() == 2); // until is not counted in
    CHECK(ledger.between(nine, nine + std::chrono::minutes{8}).size() == 3);
}

TEST_CASE("Postings that name a piece but lie elsewhere are no part of its width", "[store][ledger]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    auto of = about(Act::Scrap);
    of.belt = shop.toothed;
    of.person = shop.clerk;
    shop.record({of,
                 {posting(Account::Rack, sleeve, -10'000, -800),
                  posting(Account::Scrap, sleeve, 10'000, 800, ScrapReason::Damaged)}});
    CHECK(Pieces{connection}.at(sleeve).extent == mm(90));
    CHECK(Ledger{connection}.historyOf(sleeve).back().movement.postings()[1].reason == ScrapReason::Damaged);
}
