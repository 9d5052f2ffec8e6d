#include "core/store/pieces.h"

#include "core/store/codes.h"
#include "core/store/places.h"
#include "core/store/search.h"
#include "core/store/statement.h"

namespace riband::store {
namespace {

// What open mountings promise of a piece, or all of a ready belt that an open ticket takes and that still
// lies there. Both look-ups go through an index of what is open or of the piece, so 20,000 pieces cost
// little.
#define PIECES                                                                                               \
    "SELECT p.id, p.code, p.belt, b.unit, p.kind, p.extent,"                                                 \
    " (SELECT coalesce(sum(m.reserved), 0) FROM mounting m WHERE m.piece = p.id AND m.state = 0)"            \
    " + CASE WHEN p.kind = 2 AND EXISTS (SELECT 1 FROM taken_ready r JOIN ticket t ON t.id = r.ticket"       \
    "   WHERE r.piece = p.id AND t.state = 0) THEN p.extent ELSE 0 END,"                                     \
    " p.cost, p.parent, coalesce(l.name, ''), p.received_day, p.made_day, p.batch"                           \
    " FROM piece p JOIN belt b ON b.id = p.belt LEFT JOIN place l ON l.id = p.place "

StockPiece pieceOf(const Statement& row) {
    const auto unit = row.get<Unit>(3);
    return {.id = row.get<PieceId>(0),
            .code = row.get<std::string>(1),
            .belt = row.get<BeltId>(2),
            .kind = row.get<cutting::PieceKind>(4),
            .extent = row.extent(5, unit),
            .reserved = row.extent(6, unit),
            .cost = row.get<Money>(7),
            .parent = row.get<std::optional<PieceId>>(8),
            .place = row.get<std::string>(9),
            .received = row.get<Date>(10),
            .made = row.get<std::optional<Date>>(11),
            .batch = row.get<std::string>(12)};
}

std::vector<StockPiece> read(Statement& rows) {
    std::vector<StockPiece> pieces;
    while (rows.next())
        pieces.push_back(pieceOf(rows));
    return pieces;
}

} // namespace

PieceId Pieces::add(const NewPiece& piece) {
    return insert<PieceId>(
        connection_,
        "INSERT INTO piece (code, belt, kind, parent, place, received_day, made_day, batch)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        giveCode(connection_, CodeKind::Piece).text(), piece.belt, piece.kind, piece.parent,
        Places{connection_}.named(piece.place), piece.received, piece.made, piece.batch);
}

StockPiece Pieces::at(PieceId id) const {
    Statement row{connection_, PIECES "WHERE p.id = ?", id};
    if (!row.next())
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no piece " + std::to_string(id.value())};
    return pieceOf(row);
}

std::optional<StockPiece> Pieces::byCode(const std::string& code) const {
    Statement row{connection_, PIECES "WHERE p.code = ?", code};
    if (!row.next()) return std::nullopt;
    return pieceOf(row);
}

std::vector<StockPiece> Pieces::ofBelt(BeltId belt) const {
    Statement rows{connection_,
                   PIECES "WHERE p.belt = ? AND p.extent > 0"
                          " ORDER BY coalesce(p.made_day, p.received_day), p.code",
                   belt};
    return read(rows);
}

std::vector<StockPiece> Pieces::all() const {
    Statement rows{connection_, PIECES "WHERE p.extent > 0"};
    return read(rows);
}

void Pieces::move(PieceId piece, const std::string& place) {
    change(connection_, "UPDATE piece SET place = ? WHERE id = ?", Places{connection_}.named(place), piece);
    indexPiece(connection_, piece);
}

void Pieces::becomeRemnant(PieceId piece) {
    if (change(connection_, "UPDATE piece SET kind = 1 WHERE id = ? AND kind = 0", piece) > 0)
        indexPiece(connection_, piece);
}

void Pieces::becomeSleeve(PieceId piece) {
    if (change(connection_, "UPDATE piece SET kind = 0 WHERE id = ? AND kind = 1", piece) > 0)
        indexPiece(connection_, piece);
}

std::vector<StockPiece> Pieces::cutFrom(PieceId piece) const {
    Statement rows{connection_, PIECES "WHERE p.parent = ? ORDER BY p.id", piece};
    return read(rows);
}

std::vector<std::string> Pieces::places() const {
    std::vector<std::string> names;
    Statement rows{connection_, "SELECT name FROM place ORDER BY name"};
    while (rows.next())
        names.push_back(rows.get<std::string>(0));
    return names;
}

} // namespace riband::store
