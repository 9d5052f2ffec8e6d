#include "core/store/goods.h"

#include "core/store/search.h"
#include "core/store/statement.h"

namespace riband::store {
namespace {

#define EXPECTED "SELECT id, supplier, reference, due_day, closed FROM expected_delivery "

std::vector<ExpectedLine> linesOf(Connection& connection, ExpectedId id) {
    std::vector<ExpectedLine> lines;
    Statement rows{connection,
                   "SELECT e.position, e.belt, b.unit, e.extent, e.sleeves, e.cost_each, e.arrived"
                   " FROM expected_line e JOIN belt b ON b.id = e.belt WHERE e.expected = ? ORDER BY 1",
                   id};
    while (rows.next())
        lines.push_back({.position = rows.get<int>(0),
                         .belt = rows.get<BeltId>(1),
                         .extent = rows.extent(3, rows.get<Unit>(2)),
                         .sleeves = rows.get<std::int64_t>(4),
                         .costEach = rows.get<Money>(5),
                         .arrived = rows.get<std::int64_t>(6)});
    return lines;
}

ExpectedDelivery expectedOf(Connection& connection, const Statement& row) {
    const auto id = row.get<ExpectedId>(0);
    return {.id = id,
            .supplier = row.get<std::string>(1),
            .reference = row.get<std::string>(2),
            .due = row.get<std::optional<Date>>(3),
            .closed = row.get<bool>(4),
            .lines = linesOf(connection, id)};
}

#define DELIVERIES "SELECT id, supplier, reference, at_ms, person, freight, expected FROM delivery "

ArrivedDelivery arrivedOf(const Statement& row) {
    return {row.get<DeliveryId>(0),
            row.get<std::string>(1),
            row.get<std::string>(2),
            row.get<Moment>(3),
            row.get<PersonId>(4),
            row.get<Money>(5),
            row.get<std::optional<ExpectedId>>(6)};
}

} // namespace

void Goods::learn(const SupplierCode& code, PersonId person, Moment at) {
    store::change(connection_,
                  "INSERT INTO supplier_code (code, belt, extent, person, at_ms) VALUES (?, ?, ?, ?, ?)"
                  " ON CONFLICT (code) DO UPDATE SET belt = excluded.belt, extent = excluded.extent,"
                  " person = excluded.person, at_ms = excluded.at_ms",
                  code.code, code.belt, code.extent, person, at);
}

std::optional<SupplierCode> Goods::meaning(const std::string& code) const {
    Statement row{connection_,
                  "SELECT s.code, s.belt, b.unit, s.extent FROM supplier_code s JOIN belt b ON b.id = s.belt"
                  " WHERE s.code = ?",
                  code};
    if (!row.next()) return std::nullopt;
    SupplierCode meaning{row.get<std::string>(0), row.get<BeltId>(1), {}};
    if (row.get<std::optional<std::int64_t>>(3)) meaning.extent = row.extent(3, row.get<Unit>(2));
    return meaning;
}

ExpectedId Goods::expect(const ExpectedDelivery& delivery, PersonId person, Moment at) {
    const auto id = insert<ExpectedId>(connection_,
                                       "INSERT INTO expected_delivery (supplier, reference, due_day, "
                                       "made_ms, person) VALUES (?, ?, ?, ?, ?)",
                                       delivery.supplier, delivery.reference, delivery.due, at, person);
    addLines(id, delivery.lines);
    return id;
}

void Goods::addLines(ExpectedId id, const std::vector<ExpectedLine>& lines) {
    int position = 0;
    for (const ExpectedLine& line : lines)
        store::change(connection_,
                      "INSERT INTO expected_line (expected, position, belt, extent, sleeves, cost_each,"
                      " arrived) VALUES (?, ?, ?, ?, ?, ?, ?)",
                      id, ++position, line.belt, line.extent, line.sleeves, line.costEach, line.arrived);
}

void Goods::change(const ExpectedDelivery& delivery) {
    store::change(connection_,
                  "UPDATE expected_delivery SET supplier = ?, reference = ?, due_day = ? WHERE id = ?",
                  delivery.supplier, delivery.reference, delivery.due, delivery.id);
    store::change(connection_, "DELETE FROM expected_line WHERE expected = ?", delivery.id);
    addLines(delivery.id, delivery.lines);
    closeIfAllCame(delivery.id);
}

std::vector<ExpectedDelivery> Goods::expected() const {
    std::vector<ExpectedDelivery> deliveries;
    Statement rows{connection_, EXPECTED "WHERE closed = 0 ORDER BY due_day IS NULL, due_day, id"};
    while (rows.next())
        deliveries.push_back(expectedOf(connection_, rows));
    return deliveries;
}

ExpectedDelivery Goods::expected(ExpectedId id) const {
    Statement row{connection_, EXPECTED "WHERE id = ?", id};
    if (!row.next())
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no expected delivery " + std::to_string(id.value())};
    return expectedOf(connection_, row);
}

#define DAY "'[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'"

std::vector<ExpectedDelivery> Goods::listedLast() const {
    Statement rows{connection_,
                   EXPECTED "WHERE reference GLOB " DAY " AND made_ms = (SELECT max(made_ms) FROM"
                            " expected_delivery WHERE closed = 0 AND reference GLOB " DAY ") ORDER BY id"};
    std::vector<ExpectedDelivery> deliveries;
    while (rows.next())
        deliveries.push_back(expectedOf(connection_, rows));
    return deliveries;
}

void Goods::arrive(ExpectedId id, int position, std::int64_t sleeves) {
    store::change(connection_,
                  "UPDATE expected_line SET arrived = arrived + ? WHERE expected = ? AND position = ?",
                  sleeves, id, position);
    closeIfAllCame(id);
}

void Goods::closeIfAllCame(ExpectedId id) {
    const auto missing = only<std::int64_t>(
        connection_, "SELECT count(*) FROM expected_line WHERE expected = ? AND arrived < sleeves", id);
    close(id, missing.value_or(0) == 0);
}

void Goods::close(ExpectedId id, bool closed) {
    store::change(connection_, "UPDATE expected_delivery SET closed = ? WHERE id = ?", closed, id);
}

DeliveryId Goods::add(const ArrivedDelivery& delivery) {
    return insert<DeliveryId>(connection_,
                              "INSERT INTO delivery (supplier, reference, at_ms, person, freight, expected)"
                              " VALUES (?, ?, ?, ?, ?, ?)",
                              delivery.supplier, delivery.reference, delivery.at, delivery.person,
                              delivery.freight, delivery.expected);
}

void Goods::add(DeliveryId delivery, const ArrivedPiece& piece) {
    store::change(connection_,
                  "INSERT INTO delivery_piece (piece, delivery, freight, labelled) VALUES (?, ?, ?, ?)",
                  piece.piece, delivery, piece.freight, piece.labelled);
}

ArrivedDelivery Goods::at(DeliveryId id) const {
    Statement row{connection_, DELIVERIES "WHERE id = ?", id};
    if (!row.next())
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no delivery " + std::to_string(id.value())};
    return arrivedOf(row);
}

std::vector<ArrivedDelivery> Goods::deliveries(std::size_t most) const {
    std::vector<ArrivedDelivery> deliveries;
    Statement rows{connection_, DELIVERIES "ORDER BY at_ms DESC, id DESC LIMIT ?", most};
    while (rows.next())
        deliveries.push_back(arrivedOf(rows));
    return deliveries;
}

std::vector<ArrivedPiece> Goods::piecesOf(DeliveryId delivery) const {
    std::vector<ArrivedPiece> pieces;
    Statement rows{connection_,
                   "SELECT d.piece, d.freight, d.labelled, b.unit FROM delivery_piece d"
                   " JOIN piece p ON p.id = d.piece JOIN belt b ON b.id = p.belt WHERE d.delivery = ?"
                   " ORDER BY d.piece",
                   delivery};
    while (rows.next()) {
        ArrivedPiece& piece = pieces.emplace_back(ArrivedPiece{rows.get<PieceId>(0), rows.get<Money>(1), {}});
        if (rows.get<std::optional<std::int64_t>>(2)) piece.labelled = rows.extent(2, rows.get<Unit>(3));
    }
    return pieces;
}

std::optional<DeliveryId> Goods::deliveryOf(PieceId piece) const {
    return only<DeliveryId>(connection_, "SELECT delivery FROM delivery_piece WHERE piece = ?", piece);
}

} // namespace riband::store
