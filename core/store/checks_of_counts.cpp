#include "core/store/catalogue.h"
#include "core/store/checks.h"
#include "core/store/counts.h"
#include "core/store/statement.h"

namespace riband::store {
namespace {

using Kind = Disagreement::Kind;

/// The width that the ledger had after the last movement before the scan.
void checkBooks(Connection& connection, Verification& found) {
    Statement rows{connection, "SELECT p.code, s.book, coalesce((SELECT sum(g.amount) FROM posting g"
                               "  WHERE g.piece = s.piece AND g.account IN (2, 3)"
                               "  AND g.movement <= coalesce(s.after_movement, 0)), 0) AS ledger, s.id"
                               " FROM count_scan s JOIN piece p ON p.id = s.piece WHERE s.book <> ledger"};
    while (rows.next())
        found.disagreements.push_back({Kind::CountBook, rows.get<std::string>(0), rows.get<std::int64_t>(1),
                                       rows.get<std::int64_t>(2),
                                       "scan " + std::to_string(rows.get<std::int64_t>(3))});
    Statement belts{connection, "SELECT p.code, s.id FROM count_scan s JOIN piece p ON p.id = s.piece"
                                " WHERE p.belt <> s.belt"};
    while (belts.next())
        found.disagreements.push_back({Kind::UnitMixed, belts.get<std::string>(0), 0, 0,
                                       "scan " + std::to_string(belts.get<std::int64_t>(1))});
}

/// What one statement finds wrong with settlements: their numbers.
template <class... Values>
void nameSettlements(Connection& connection, Verification& found, const char* why, Sql sql,
                     const Values&... values) {
    Statement rows{connection, sql, values...};
    while (rows.next())
        found.disagreements.push_back({Kind::CountSettlement, std::to_string(rows.get<std::int64_t>(0)),
                                       rows.get<std::int64_t>(1), 0, why});
}

void checkSettlements(Connection& connection, Verification& found) {
    nameSettlements(connection, found, "settled twice",
                    "SELECT t.id, coalesce(t.movement, 0) FROM count_settlement t JOIN count_settlement o"
                    " ON o.scan = t.scan AND o.id < t.id WHERE t.undoes IS NULL AND o.undoes IS NULL"
                    " AND NOT EXISTS (SELECT 1 FROM count_settlement u WHERE u.undoes IN (o.id, t.id))");
    // Other things can undo the movement of a settlement only together with it.
    nameSettlements(connection, found, "its movement is undone, it is not",
                    "SELECT t.id, t.movement FROM count_settlement t JOIN movement m ON m.undoes = t.movement"
                    " WHERE t.undoes IS NULL"
                    " AND NOT EXISTS (SELECT 1 FROM count_settlement u WHERE u.undoes = t.id)");
    nameSettlements(
        connection, found, "it is countered, its movement is not",
        "SELECT t.id, t.movement FROM count_settlement t JOIN count_settlement u ON u.undoes = t.id"
        " WHERE t.movement IS NOT NULL"
        " AND NOT EXISTS (SELECT 1 FROM movement m WHERE m.undoes = t.movement)");
}

void nameHoles(Connection& connection, Verification& found) {
    const Counts counts{connection};
    const auto codeOf = [&](PieceId piece) {
        return only<std::string>(connection, "SELECT code FROM piece WHERE id = ?", piece).value_or("");
    };
    for (const MissingPiece& missing : counts.unsettledMissing()) {
        Statement row{connection,
                      "SELECT p.extent, b.unit FROM piece p JOIN belt b ON b.id = p.belt WHERE p.id = ?",
                      missing.piece};
        if (!row.next()) continue;
        found.holes.push_back({CountHole::Kind::Missing, counts.find(missing.count)->place,
                               codeOf(missing.piece), row.get<Unit>(1), row.get<std::int64_t>(0), 0});
    }
    for (const Scan& scan : counts.unsettled()) {
        const auto count = counts.find(scan.count);
        if (!count || !count->closed) continue;
        const bool find = !scan.piece;
        found.holes.push_back({find ? CountHole::Kind::Unlabelled : CountHole::Kind::Differs, count->place,
                               find ? Catalogue{connection}.at(scan.belt).designation : codeOf(*scan.piece),
                               scan.measured.unit(), scan.book.count(), scan.measured.count()});
    }
}

} // namespace

void checkCounts(Connection& connection, Verification& found) {
    checkBooks(connection, found);
    checkSettlements(connection, found);
    nameHoles(connection, found);
}

} // namespace riband::store
