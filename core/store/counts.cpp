#include "core/store/counts.h"

#include "core/store/statement.h"

namespace riband::store {
namespace {

static_assert(static_cast<int>(Method::Eye) == 2 && static_cast<int>(Explanation::Unexplained) == 12);

#define COUNTS "SELECT id, place, person, started_ms, closed_ms FROM count_session "
#define SCANS                                                                                                \
    "SELECT s.id, s.count_session, s.at_ms, s.person, s.piece, s.belt, b.unit, s.book, s.measured,"          \
    " s.method, s.after_movement, s.place_was, s.remark FROM count_scan s JOIN belt b ON b.id = s.belt "
#define SETTLEMENTS                                                                                          \
    "SELECT id, count_session, scan, piece, explanation, movement, person, at_ms, approved, undoes"          \
    " FROM count_settlement "
// No later settlement takes it back.
#define STANDS " t.undoes IS NULL AND NOT EXISTS (SELECT 1 FROM count_settlement u WHERE u.undoes = t.id) "

Count countOf(const Statement& row) {
    return {row.get<CountId>(0), row.get<std::string>(1), row.get<PersonId>(2), row.get<Moment>(3),
            row.get<std::optional<Moment>>(4)};
}

Scan scanOf(const Statement& row) {
    const auto unit = row.get<Unit>(6);
    return {.id = row.get<ScanId>(0),
            .count = row.get<CountId>(1),
            .at = row.get<Moment>(2),
            .person = row.get<PersonId>(3),
            .piece = row.get<std::optional<PieceId>>(4),
            .belt = row.get<BeltId>(5),
            .book = row.extent(7, unit),
            .measured = row.extent(8, unit),
            .method = row.get<Method>(9),
            .after = row.get<std::optional<MovementId>>(10),
            .placeWas = row.get<std::string>(11),
            .remark = row.get<std::string>(12)};
}

Settlement settlementOf(const Statement& row) {
    return {.id = row.get<SettlementId>(0),
            .count = row.get<CountId>(1),
            .scan = row.get<std::optional<ScanId>>(2),
            .piece = row.get<std::optional<PieceId>>(3),
            .explanation = row.get<Explanation>(4),
            .movement = row.get<std::optional<MovementId>>(5),
            .person = row.get<PersonId>(6),
            .at = row.get<Moment>(7),
            .approved = row.get<std::optional<PersonId>>(8),
            .undoes = row.get<std::optional<SettlementId>>(9)};
}

template <class Read>
auto all(Statement& rows, Read read) {
    std::vector<decltype(read(rows))> found;
    while (rows.next())
        found.push_back(read(rows));
    return found;
}

template <class Read>
auto first(Statement& rows, Read read) -> std::optional<decltype(read(rows))> {
    if (!rows.next()) return std::nullopt;
    return read(rows);
}

} // namespace

CountId Counts::begin(const std::string& place, PersonId person, Moment at,
                      const std::vector<PieceId>& expected) {
    const auto count =
        insert<CountId>(connection_, "INSERT INTO count_session (place, person, started_ms) VALUES (?, ?, ?)",
                        place, person, at);
    for (const PieceId piece : expected)
        change(connection_, "INSERT INTO count_expected (count_session, piece) VALUES (?, ?)", count, piece);
    return count;
}

void Counts::close(CountId count, Moment at, const std::vector<PieceId>& missing) {
    change(connection_, "UPDATE count_session SET closed_ms = ? WHERE id = ?", at, count);
    for (const PieceId piece : missing)
        change(connection_, "INSERT INTO count_missing (count_session, piece) VALUES (?, ?)", count, piece);
}

ScanId Counts::add(const Scan& scan) {
    return insert<ScanId>(connection_,
                          "INSERT INTO count_scan (count_session, at_ms, person, piece, belt, book, measured,"
                          " method, after_movement, place_was, remark)"
                          " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                          scan.count, scan.at, scan.person, scan.piece, scan.belt, scan.book, scan.measured,
                          scan.method, scan.after, scan.placeWas, scan.remark);
}

SettlementId Counts::add(const Settlement& s) {
    return insert<SettlementId>(connection_,
                                "INSERT INTO count_settlement (count_session, scan, piece, explanation,"
                                " movement, person, at_ms, approved, undoes)"
                                " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                                s.count, s.scan, s.piece, s.explanation, s.movement, s.person, s.at,
                                s.approved, s.undoes);
}

std::optional<Count> Counts::find(CountId count) const {
    Statement rows{connection_, COUNTS "WHERE id = ?", count};
    return first(rows, countOf);
}

std::optional<Count> Counts::openAt(const std::string& place) const {
    Statement rows{connection_, COUNTS "WHERE place = ? AND closed_ms IS NULL", place};
    return first(rows, countOf);
}

std::vector<Count> Counts::open() const {
    Statement rows{connection_, COUNTS "WHERE closed_ms IS NULL ORDER BY id"};
    return riband::store::all(rows, countOf);
}

std::vector<Count> Counts::all() const {
    Statement rows{connection_, COUNTS "ORDER BY id"};
    return riband::store::all(rows, countOf);
}

std::vector<PieceId> Counts::expected(CountId count) const {
    Statement rows{connection_, "SELECT piece FROM count_expected WHERE count_session = ? ORDER BY piece",
                   count};
    return riband::store::all(rows, [](const Statement& row) { return row.get<PieceId>(0); });
}

std::vector<Scan> Counts::scansOf(CountId count) const {
    Statement rows{connection_, SCANS "WHERE s.count_session = ? ORDER BY s.id", count};
    return riband::store::all(rows, scanOf);
}

std::vector<Scan> Counts::scansOf(PieceId piece) const {
    Statement rows{connection_, SCANS "WHERE s.piece = ? ORDER BY s.id", piece};
    return riband::store::all(rows, scanOf);
}

std::optional<Scan> Counts::scan(ScanId scan) const {
    Statement rows{connection_, SCANS "WHERE s.id = ?", scan};
    return first(rows, scanOf);
}

std::vector<Scan> Counts::allScans() const {
    Statement rows{connection_, SCANS "ORDER BY s.id"};
    return riband::store::all(rows, scanOf);
}

std::vector<Scan> Counts::unsettled() const {
    Statement rows{connection_, SCANS
                   "WHERE (s.piece IS NULL OR s.measured <> s.book)"
                   " AND NOT EXISTS (SELECT 1 FROM count_scan n WHERE n.piece = s.piece AND n.id > s.id)"
                   " AND NOT EXISTS (SELECT 1 FROM count_settlement t WHERE t.scan = s.id AND" STANDS
                   ") ORDER BY s.id"};
    return riband::store::all(rows, scanOf);
}

std::vector<MissingPiece> Counts::unsettledMissing() const {
    Statement rows{connection_,
                   "SELECT m.count_session, m.piece FROM count_missing m"
                   " JOIN count_session c ON c.id = m.count_session JOIN piece p ON p.id = m.piece"
                   " WHERE p.extent > 0"
                   " AND NOT EXISTS (SELECT 1 FROM count_missing n WHERE n.piece = m.piece"
                   "  AND n.count_session > m.count_session)"
                   " AND NOT EXISTS (SELECT 1 FROM count_scan s WHERE s.piece = m.piece"
                   "  AND s.at_ms >= c.started_ms)"
                   " AND NOT EXISTS (SELECT 1 FROM count_settlement t WHERE t.piece = m.piece"
                   "  AND t.count_session = m.count_session AND t.scan IS NULL AND" STANDS
                   ") ORDER BY m.count_session, m.piece"};
    return riband::store::all(rows, [](const Statement& row) {
        return MissingPiece{row.get<CountId>(0), row.get<PieceId>(1)};
    });
}

std::vector<MissingPiece> Counts::missing() const {
    Statement rows{connection_,
                   "SELECT count_session, piece FROM count_missing ORDER BY count_session, piece"};
    return riband::store::all(rows, [](const Statement& row) {
        return MissingPiece{row.get<CountId>(0), row.get<PieceId>(1)};
    });
}

std::vector<Settlement> Counts::settlements() const {
    Statement rows{connection_, SETTLEMENTS "ORDER BY id"};
    return riband::store::all(rows, riband::store::settlementOf);
}

std::optional<Settlement> Counts::settlement(SettlementId id) const {
    Statement rows{connection_, SETTLEMENTS "WHERE id = ?", id};
    return first(rows, riband::store::settlementOf);
}

std::vector<Settlement> Counts::settlementsOf(MovementId movement) const {
    Statement rows{connection_, SETTLEMENTS "WHERE movement = ? ORDER BY id", movement};
    return riband::store::all(rows, riband::store::settlementOf);
}

bool Counts::isCountered(SettlementId id) const {
    return only<std::int64_t>(connection_, "SELECT 1 FROM count_settlement WHERE undoes = ?", id).has_value();
}

std::optional<SettlementId> Counts::settlementOf(ScanId scan) const {
    return only<SettlementId>(connection_, "SELECT t.id FROM count_settlement t WHERE t.scan = ? AND" STANDS,
                              scan);
}

std::optional<SettlementId> Counts::settlementOfMissing(CountId count, PieceId piece) const {
    return only<SettlementId>(connection_,
                              "SELECT t.id FROM count_settlement t WHERE t.piece = ? AND t.count_session = ?"
                              " AND t.scan IS NULL AND" STANDS,
                              piece, count);
}

} // namespace riband::store
