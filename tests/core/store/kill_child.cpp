// Does what a busy counter does, one act after the other, until it is killed. After each act that is durable
// it says the number of the act's movement, a line each. With "create" it makes shop after shop instead.

#include "tests/core/store/shop_fixture.h"

#include <unistd.h>

#include <cstring>
#include <random>
#include <string>

namespace {

using namespace riband;
using namespace riband::store;

/// The numbers of an act's movements in one write: whole or not at all.
void say(const std::vector<std::int64_t>& numbers) {
    std::string line;
    for (const auto number : numbers)
        line += std::to_string(number) + ' ';
    line.back() = '\n';
    if (::write(STDOUT_FILENO, line.data(), line.size()) < 0) ::_exit(1);
}

/// A delivery of so many sleeves: a piece and its movement each. One act, whose size each movement notes.
std::vector<std::int64_t> receive(Connection& connection, BeltId belt, PersonId person, Moment now,
                                  unsigned sleeves) {
    std::vector<std::int64_t> numbers;
    Transaction transaction{connection};
    for (unsigned i = 0; i < sleeves; ++i) {
        const PieceId piece =
            Pieces{connection}.add({belt, cutting::PieceKind::Sleeve, {}, "A1-1", dayOf(now), {}, ""});
        const MovementId id =
            Ledger{connection}.record({{Act::Receive, now, person, belt, std::to_string(sleeves), {}},
                                       {{.account = Account::Bought,
                                         .piece = {},
                                         .line = {},
                                         .amount = -400'000,
                                         .cost = Money::minor(-32'000),
                                         .reason = {}},
                                        {.account = Account::Rack,
                                         .piece = piece,
                                         .line = {},
                                         .amount = 400'000,
                                         .cost = Money::minor(32'000),
                                         .reason = {}}}});
        numbers.push_back(id.value());
    }
    transaction.commit();
    return numbers;
}

/// One belt of 30 for the standing order: trim, sold width, the count of the line, the piece a remnant. One
/// act.
std::int64_t cut(Connection& connection, const StockPiece& piece, PersonId person, Moment now) {
    Transaction transaction{connection};
    Orders orders{connection};
    OrderLine line = orders.inState(OrderState::Open).front().lines.front();
    ++line.cut;
    orders.changeLine(line);
    const MovementId id = Ledger{connection}.record({{Act::Cut, now, person, piece.belt, "1", {}},
                                                     {{.account = Account::Rack,
                                                       .piece = piece.id,
                                                       .line = {},
                                                       .amount = -32'500,
                                                       .cost = Money::minor(-2'600),
                                                       .reason = {}},
                                                      {.account = Account::Trim,
                                                       .piece = piece.id,
                                                       .line = {},
                                                       .amount = 2'500,
                                                       .cost = Money::minor(200),
                                                       .reason = {}},
                                                      {.account = Account::Sold,
                                                       .piece = piece.id,
                                                       .line = line.id,
                                                       .amount = 30'000,
                                                       .cost = Money::minor(2'400),
                                                       .reason = {}}}});
    Pieces{connection}.becomeRemnant(piece.id);
    transaction.commit();
    return id.value();
}

[[noreturn]] void work(const std::string& path, unsigned seed) {
    Connection connection{path};
    const auto belt = Catalogue{connection}.ofProfile("H8M").front().id;
    const auto person = People{connection}.present().front().id;
    std::mt19937 chance{seed};
    Moment now = at(day(2026, 3, 2), 9);
    for (;;) {
        now += std::chrono::seconds{20};
        std::vector<StockPiece> wide;
        for (auto& piece : Pieces{connection}.ofBelt(belt))
            if (piece.extent >= Extent{Width::micrometres(32'500)}) wide.push_back(std::move(piece));
        if (wide.empty() || chance() % 4 == 0)
            say(receive(connection, belt, person, now, 1 + static_cast<unsigned>(chance() % 60)));
        else
            say({cut(connection, wide[chance() % wide.size()], person, now)});
    }
}

[[noreturn]] void create(const std::string& path) {
    for (std::int64_t number = 1;; ++number) {
        Connection{path + std::to_string(number), Connection::Mode::Create};
        say({number});
    }
}

} // namespace

int main(int count, char** arguments) {
    if (count != 3) return 2;
    if (std::strcmp(arguments[2], "create") == 0) create(arguments[1]);
    work(arguments[1], static_cast<unsigned>(std::stoul(arguments[2])));
}
