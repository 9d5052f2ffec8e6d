#include "core/measure/code.h"
#include "core/store/catalogue.h"
#include "core/store/checks.h"
#include "core/store/statement.h"

namespace riband::store {
namespace {

using Kind = Disagreement::Kind;

std::string movementName(const Statement& row) { return std::to_string(row.get<std::int64_t>(0)); }

} // namespace

void checkDatabase(Connection& connection, Verification& found) {
    Statement rows{connection, "PRAGMA integrity_check(100)"};
    while (rows.next()) {
        const auto said = rows.get<std::string>(0);
        if (said != "ok") found.disagreements.push_back({Kind::Database, said, 0, 0, ""});
    }
}

void checkForeignKeys(Connection& connection, Verification& found) {
    Statement rows{connection, "PRAGMA foreign_key_check"};
    while (rows.next())
        found.disagreements.push_back({Kind::ForeignKey,
                                       rows.get<std::string>(0) + " " + rows.get<std::string>(1), 0, 0,
                                       rows.get<std::string>(2)});
}

void checkMovements(Connection& connection, Verification& found) {
    found.movements = only<std::int64_t>(connection, "SELECT count(*) FROM movement").value_or(0);
    found.postings = only<std::int64_t>(connection, "SELECT count(*) FROM posting").value_or(0);
    Statement sums{connection, "SELECT movement, sum(amount), sum(cost) FROM posting GROUP BY movement"
                               " HAVING sum(amount) <> 0 OR sum(cost) <> 0"};
    while (sums.next()) {
        const auto width = sums.get<std::int64_t>(1), money = sums.get<std::int64_t>(2);
        if (width != 0)
            found.disagreements.push_back({Kind::MovementNotZero, movementName(sums), 0, width, "width"});
        if (money != 0)
            found.disagreements.push_back({Kind::MovementNotZero, movementName(sums), 0, money, "money"});
    }
    Statement empty{connection, "SELECT id FROM movement WHERE id NOT IN (SELECT movement FROM posting)"};
    while (empty.next())
        found.disagreements.push_back({Kind::MovementNotZero, movementName(empty), 0, 0, "no postings"});
}

void checkPieces(Connection& connection, Verification& found) {
    found.pieces = only<std::int64_t>(connection, "SELECT count(*) FROM piece").value_or(0);
    found.onRack = only<std::int64_t>(connection, "SELECT count(*) FROM piece WHERE extent > 0").value_or(0);
    Statement rows{connection,
                   "SELECT p.code, p.extent, coalesce(s.amount, 0), p.cost, coalesce(s.cost, 0)"
                   " FROM piece p LEFT JOIN (SELECT piece, sum(amount) AS amount, sum(cost) AS cost"
                   "  FROM posting WHERE account IN (2, 3) GROUP BY piece) s ON s.piece = p.id"
                   " WHERE p.extent <> coalesce(s.amount, 0) OR p.cost <> coalesce(s.cost, 0)"
                   " OR coalesce(s.amount, 0) < 0"};
    while (rows.next()) {
        const auto code = rows.get<std::string>(0);
        const auto extent = rows.get<std::int64_t>(1), width = rows.get<std::int64_t>(2);
        const auto cost = rows.get<std::int64_t>(3), money = rows.get<std::int64_t>(4);
        if (extent != width) found.disagreements.push_back({Kind::PieceExtent, code, extent, width, ""});
        if (cost != money) found.disagreements.push_back({Kind::PieceCost, code, cost, money, ""});
        if (width < 0) found.disagreements.push_back({Kind::PieceNegative, code, 0, width, ""});
    }
}

namespace {

/// Rows of belt, width in the book and found, money in the book and found.
void tellFlows(Connection& connection, Statement& rows, Verification& found) {
    const Catalogue catalogue{connection};
    while (rows.next()) {
        const std::string belt = catalogue.at(rows.get<BeltId>(0)).designation;
        const auto width = rows.get<std::int64_t>(1), sum = rows.get<std::int64_t>(2);
        const auto cost = rows.get<std::int64_t>(3), money = rows.get<std::int64_t>(4);
        if (width != sum) found.disagreements.push_back({Kind::FlowSum, belt, width, sum, "width"});
        if (cost != money) found.disagreements.push_back({Kind::FlowSum, belt, cost, money, "money"});
    }
}

} // namespace

void checkFlows(Connection& connection, Verification& found) {
    Statement spans{
        connection,
        "SELECT s.belt, sum(book), sum(found), sum(book_cost), sum(found_cost) FROM"
        " (SELECT belt, person, cutter, account, reason, span, amount AS book, cost AS book_cost, 0 AS found,"
        "   0 AS found_cost FROM flow_total WHERE level = 0"
        "  UNION ALL SELECT m.belt, m.person, coalesce(m.cutter, 0), p.account, coalesce(p.reason, 4),"
        "   m.at_ms / 2592000000, 0, 0, p.amount, p.cost"
        "   FROM movement m JOIN posting p ON p.movement = m.id WHERE p.account <> 2) s"
        " GROUP BY s.belt, person, s.cutter, account, reason, span"
        " HAVING sum(book) <> sum(found) OR sum(book_cost) <> sum(found_cost)"};
    tellFlows(connection, spans, found);
    Statement longSpans{
        connection,
        "SELECT belt, sum(CASE level WHEN 1 THEN amount ELSE 0 END), sum(CASE level WHEN 0 THEN amount ELSE "
        "0 END),"
        " sum(CASE level WHEN 1 THEN cost ELSE 0 END), sum(CASE level WHEN 0 THEN cost ELSE 0 END)"
        " FROM flow_total GROUP BY CASE level WHEN 0 THEN span / 12 ELSE span END, belt, person, cutter, "
        "account,"
        " reason HAVING sum(CASE level WHEN 1 THEN amount ELSE -amount END) <> 0"
        " OR sum(CASE level WHEN 1 THEN cost ELSE -cost END) <> 0"};
    tellFlows(connection, longSpans, found);
}

void checkScatters(Connection& connection, Verification& found) {
    Statement rows{
        connection,
        "SELECT s.month, sum(book), sum(found), sum(squares), sum(found_squares) FROM"
        " (SELECT month, unit, movements + sold + lost AS book, 0 AS found,"
        "   lost_lost + lost_used + used_used AS squares, 0.0 AS found_squares FROM scatter_total"
        "  UNION ALL SELECT strftime('%Y', day, 'unixepoch') * 12 + strftime('%m', day, 'unixepoch')"
        "   - 1, unit, 0, 1 + sold + lost, 0.0, 1.0 * lost * lost + 1.0 * lost * (sold + lost)"
        "   + 1.0 * (sold + lost) * (sold + lost) FROM"
        "   (SELECT m.at_ms / 1000 AS day, b.unit AS unit,"
        "     sum(CASE WHEN p.account = 4 THEN p.amount ELSE 0 END) AS sold,"
        "     sum(CASE WHEN p.account >= 5 THEN p.amount ELSE 0 END) AS lost"
        "    FROM movement m JOIN belt b ON b.id = m.belt JOIN posting p ON p.movement = m.id"
        "    GROUP BY m.id) one WHERE sold <> 0 OR lost <> 0) s"
        " GROUP BY s.month, unit HAVING sum(book) <> sum(found)"
        " OR abs(sum(squares) - sum(found_squares)) > 1e-9 * sum(found_squares)"};
    while (rows.next()) {
        const auto month = rows.get<std::int64_t>(0);
        found.disagreements.push_back({Kind::FlowSum,
                                       std::to_string(month / 12) + "-" + std::to_string(month % 12 + 1),
                                       rows.get<std::int64_t>(1), rows.get<std::int64_t>(2), "scatter"});
    }
}

void checkPieceCodes(Connection& connection, Verification& found) {
    Statement rows{connection, "SELECT code, count(*) FROM piece GROUP BY code"};
    while (rows.next()) {
        const auto text = rows.get<std::string>(0);
        const auto times = rows.get<std::int64_t>(1);
        const auto code = Code::read(text);
        if (!code || code->text() != text || code->kind() != CodeKind::Piece)
            found.disagreements.push_back({Kind::PieceCode, text, 0, 0, "check character"});
        if (times > 1) found.disagreements.push_back({Kind::PieceCode, text, 1, times, "given twice"});
    }
}

void checkUnits(Connection& connection, Verification& found) {
    Statement pieces{connection, "SELECT m.id, p.code FROM posting g JOIN movement m ON m.id = g.movement"
                                 " JOIN piece p ON p.id = g.piece WHERE p.belt <> m.belt"};
    while (pieces.next())
        found.disagreements.push_back(
            {Kind::UnitMixed, movementName(pieces), 0, 0, pieces.get<std::string>(1)});
    Statement lines{connection,
                    "SELECT m.id, o.code FROM posting g JOIN movement m ON m.id = g.movement"
                    " JOIN order_line l ON l.id = g.line JOIN sales_order o ON o.id = l.sales_order"
                    " WHERE l.belt <> m.belt"};
    while (lines.next())
        found.disagreements.push_back(
            {Kind::UnitMixed, movementName(lines), 0, 0, lines.get<std::string>(1)});
    Statement cuts{connection,
                   "SELECT t.code, p.code FROM mounting_cut c JOIN mounting m ON m.id = c.mounting"
                   " JOIN ticket t ON t.id = m.ticket JOIN piece p ON p.id = m.piece"
                   " JOIN order_line l ON l.id = c.line WHERE m.state <> 2 AND l.belt <> p.belt"};
    while (cuts.next())
        found.disagreements.push_back(
            {Kind::UnitMixed, cuts.get<std::string>(0), 0, 0, cuts.get<std::string>(1)});
}

} // namespace riband::store
