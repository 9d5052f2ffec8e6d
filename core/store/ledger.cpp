#include "core/store/ledger.h"

#include "core/store/flows.h"
#include "core/store/inner.h"
#include "core/store/search.h"
#include "core/store/statement.h"

#include <stdexcept>

namespace riband::store {
namespace {

// The schema names these by number; landed values never change.
static_assert(static_cast<int>(Account::Rack) == 2 && static_cast<int>(Account::Ready) == 3);
static_assert(static_cast<int>(Account::Sold) == 4 && static_cast<int>(Account::Scrap) == 8);
static_assert(static_cast<int>(Account::Difference) == 9 && static_cast<int>(Act::Undo) == 7);

MovementId write(Connection& connection, const Movement::About& about) {
    return insert<MovementId>(
        connection,
        "INSERT INTO movement (act, at_ms, person, belt, note, undoes, cutter) VALUES (?, ?, ?, ?, ?, ?, ?)",
        about.act, about.at, about.person, about.belt, about.note, about.undoes, about.cutter);
}

void write(Connection& connection, MovementId movement, std::int64_t position, const Posting& posting) {
    change(connection,
           "INSERT INTO posting (movement, position, account, piece, line, amount, cost, reason)"
           " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
           movement, position, posting.account, posting.piece, posting.line, posting.amount, posting.cost,
           posting.reason);
}

/// The piece's own figures follow in the same transaction. A piece of another belt is not found, so that
/// widths of two units can't be mixed.
void follow(Connection& connection, BeltId belt, const Posting& posting) {
    if (posting.account != Account::Rack && posting.account != Account::Ready) return;
    const auto changed =
        change(connection, "UPDATE piece SET extent = extent + ?, cost = cost + ? WHERE id = ? AND belt = ?",
               posting.amount, posting.cost, *posting.piece, belt);
    if (changed == 1) return indexPiece(connection, *posting.piece);
    connection.inner().spoiled = true;
    throw StoreError{StoreError::Kind::Constraint, connection.path(), "a piece of another belt, or none"};
}

// Columns 0 to 7 are the movement, 8 to 13 one posting of it.
#define POSTINGS                                                                                             \
    "SELECT m.id, m.act, m.at_ms, m.person, m.belt, m.note, m.undoes, m.cutter,"                             \
    " p.account, p.piece, p.line, p.amount, p.cost, p.reason"                                                \
    " FROM movement m JOIN posting p ON p.movement = m.id "

Movement::About aboutOf(const Statement& row) {
    return {.act = row.get<Act>(1),
            .at = row.get<Moment>(2),
            .person = row.get<PersonId>(3),
            .belt = row.get<BeltId>(4),
            .note = row.get<std::string>(5),
            .undoes = row.get<std::optional<MovementId>>(6),
            .cutter = row.get<std::optional<CutterId>>(7)};
}

Posting postingOf(const Statement& row) {
    return {.account = row.get<Account>(8),
            .piece = row.get<std::optional<PieceId>>(9),
            .line = row.get<std::optional<LineId>>(10),
            .amount = row.get<std::int64_t>(11),
            .cost = row.get<Money>(12),
            .reason = row.get<std::optional<ScrapReason>>(13)};
}

/// A movement that breaks its own rules was changed behind our back.
RecordedMovement whole(Connection& connection, MovementId id, Movement::About about,
                       std::vector<Posting> postings) {
    try {
        return {id, Movement{std::move(about), std::move(postings)}};
    } catch (const std::invalid_argument& broken) {
        throw StoreError{StoreError::Kind::Corrupt, connection.path(),
                         "movement " + std::to_string(id.value()) + ": " + broken.what()};
    }
}

/// Rows of POSTINGS, those of a movement one after the other.
std::vector<RecordedMovement> read(Connection& connection, Statement& rows) {
    std::vector<RecordedMovement> movements;
    bool more = rows.next();
    while (more) {
        const auto id = rows.get<MovementId>(0);
        auto about = aboutOf(rows);
        std::vector<Posting> postings;
        for (; more && rows.get<MovementId>(0) == id; more = rows.next())
            postings.push_back(postingOf(rows));
        movements.push_back(whole(connection, id, std::move(about), std::move(postings)));
    }
    return movements;
}

} // namespace

MovementId Ledger::record(const Movement& movement) {
    if (!connection_.inner().inTransaction)
        throw std::logic_error("a movement is recorded inside the transaction of its act");
    const MovementId id = write(connection_, movement.about());
    std::int64_t position = 0;
    for (const Posting& posting : movement.postings()) {
        write(connection_, id, position++, posting);
        follow(connection_, movement.about().belt, posting);
    }
    Flows{connection_}.follow(movement);
    return id;
}

std::optional<MovementId> Ledger::last() const {
    Statement row{connection_, "SELECT max(id) FROM movement"};
    if (!row.next()) return std::nullopt;
    return row.get<std::optional<MovementId>>(0);
}

RecordedMovement Ledger::at(MovementId id) const {
    Statement rows{connection_, POSTINGS "WHERE m.id = ? ORDER BY p.position", id};
    auto found = read(connection_, rows);
    if (found.empty())
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no movement " + std::to_string(id.value())};
    return std::move(found.front());
}

std::vector<RecordedMovement> Ledger::historyOf(PieceId piece) const {
    Statement rows{connection_,
                   POSTINGS "WHERE m.id IN (SELECT movement FROM posting WHERE piece = ?)"
                            " ORDER BY m.at_ms, m.id, p.position",
                   piece};
    return read(connection_, rows);
}

std::optional<MovementId> Ledger::undoneBy(MovementId id) const {
    return only<MovementId>(connection_, "SELECT id FROM movement WHERE undoes = ?", id);
}

std::vector<RecordedMovement> Ledger::ofLine(LineId line) const {
    Statement rows{connection_,
                   POSTINGS "WHERE m.id IN (SELECT movement FROM posting WHERE line = ?)"
                            " ORDER BY m.at_ms, m.id, p.position",
                   line};
    return read(connection_, rows);
}

std::vector<RecordedMovement> Ledger::between(Moment from, Moment until) const {
    Statement rows{connection_,
                   POSTINGS "WHERE m.at_ms >= ? AND m.at_ms < ? ORDER BY m.at_ms, m.id, p.position", from,
                   until};
    return read(connection_, rows);
}

std::vector<Ledger::Balance> Ledger::balances() const {
    std::vector<Balance> balances;
    Statement rows{connection_, "SELECT m.belt, p.account, sum(p.amount), sum(p.cost)"
                                " FROM movement m JOIN posting p ON p.movement = m.id"
                                " GROUP BY m.belt, p.account ORDER BY m.belt, p.account"};
    while (rows.next())
        balances.push_back(
            {rows.get<BeltId>(0), rows.get<Account>(1), rows.get<std::int64_t>(2), rows.get<Money>(3)});
    return balances;
}

} // namespace riband::store
