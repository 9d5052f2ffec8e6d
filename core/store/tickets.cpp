#include "core/store/codes.h"
#include "core/store/cutters.h"
#include "core/store/last_cut.h"
#include "core/store/search.h"
#include "core/store/statement.h"

#include <algorithm>

namespace riband::store {
namespace {

#define TICKETS "SELECT id, code, sales_order, state, made_ms FROM ticket "

std::vector<TicketCut> cutsOf(Connection& connection, MountingId mounting, Unit unit) {
    std::vector<TicketCut> cuts;
    Statement rows{connection,
                   "SELECT line, extent, belts FROM mounting_cut WHERE mounting = ? ORDER BY position",
                   mounting};
    while (rows.next())
        cuts.push_back({rows.get<std::optional<LineId>>(0), rows.extent(1, unit), rows.get<std::int64_t>(2)});
    return cuts;
}

std::vector<TicketMounting> mountingsOf(Connection& connection, TicketId ticket) {
    std::vector<TicketMounting> mountings;
    Statement rows{connection,
                   "SELECT m.id, m.piece, b.unit, m.state, m.trim, m.kerf, m.left_over, m.rest_kept, "
                   "m.movement, m.cutter"
                   " FROM mounting m JOIN piece p ON p.id = m.piece JOIN belt b ON b.id = p.belt"
                   " WHERE m.ticket = ? ORDER BY m.position",
                   ticket};
    while (rows.next()) {
        const auto id = rows.get<MountingId>(0);
        const auto unit = rows.get<Unit>(2);
        mountings.push_back({.id = id,
                             .piece = rows.get<PieceId>(1),
                             .state = rows.get<MountingState>(3),
                             .cuts = cutsOf(connection, id, unit),
                             .trim = rows.extent(4, unit),
                             .kerf = rows.extent(5, unit),
                             .left = rows.extent(6, unit),
                             .restKept = rows.get<bool>(7),
                             .movement = rows.get<std::optional<MovementId>>(8),
                             .cutter = rows.get<CutterId>(9)});
    }
    return mountings;
}

std::vector<std::pair<PieceId, LineId>> takenOf(Connection& connection, TicketId ticket) {
    std::vector<std::pair<PieceId, LineId>> taken;
    Statement rows{connection, "SELECT piece, line FROM taken_ready WHERE ticket = ? ORDER BY piece", ticket};
    while (rows.next())
        taken.emplace_back(rows.get<PieceId>(0), rows.get<LineId>(1));
    return taken;
}

Ticket ticketOf(Connection& connection, const Statement& row) {
    const auto id = row.get<TicketId>(0);
    return {.id = id,
            .code = row.get<std::string>(1),
            .order = row.get<std::optional<OrderId>>(2),
            .state = row.get<TicketState>(3),
            .made = row.get<Moment>(4),
            .mountings = mountingsOf(connection, id),
            .taken = takenOf(connection, id)};
}

std::vector<Ticket> ticketsOf(Connection& connection, Statement& rows) {
    std::vector<Ticket> tickets;
    while (rows.next())
        tickets.push_back(ticketOf(connection, rows));
    return tickets;
}

/// What the piece has promised: the trim, and each belt with its kerf.
Extent reservedBy(const TicketMounting& mounting) {
    Extent reserved = mounting.trim;
    for (const TicketCut& cut : mounting.cuts)
        reserved = reserved + (cut.extent + mounting.kerf) * cut.count;
    return reserved;
}

void requireUnit(Connection& connection, const TicketMounting& mounting) {
    const auto unit = only<Unit>(
        connection, "SELECT b.unit FROM piece p JOIN belt b ON b.id = p.belt WHERE p.id = ?", mounting.piece);
    if (unit && (*unit != mounting.trim.unit() || *unit != mounting.left.unit()))
        throw std::invalid_argument("a mounting is in the unit of its piece");
}

void addMounting(Connection& connection, TicketId ticket, std::int64_t position,
                 const TicketMounting& mounting) {
    requireUnit(connection, mounting);
    const auto id = insert<MountingId>(
        connection,
        "INSERT INTO mounting (ticket, position, piece, state, trim, kerf, left_over, rest_kept, reserved,"
        " movement, cutter) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        ticket, position, mounting.piece, mounting.state, mounting.trim, mounting.kerf, mounting.left,
        mounting.restKept, reservedBy(mounting), mounting.movement,
        mounting.cutter == CutterId{0} ? Cutters{connection}.usual() : mounting.cutter);
    indexPiece(connection, mounting.piece);
    std::int64_t place = 0;
    for (const TicketCut& cut : mounting.cuts)
        change(connection,
               "INSERT INTO mounting_cut (mounting, position, line, extent, belts) VALUES (?, ?, ?, ?, ?)",
               id, place++, cut.line, cut.extent, cut.count);
}

} // namespace

TicketId Tickets::add(const Ticket& ticket) {
    const auto id = insert<TicketId>(
        connection_, "INSERT INTO ticket (code, sales_order, state, made_ms) VALUES (?, ?, ?, ?)",
        giveCode(connection_, CodeKind::Ticket).text(), ticket.order, ticket.state, ticket.made);
    std::int64_t position = 0;
    for (const TicketMounting& mounting : ticket.mountings)
        addMounting(connection_, id, position++, mounting);
    for (const auto& [piece, line] : ticket.taken) {
        change(connection_, "INSERT INTO taken_ready (ticket, piece, line) VALUES (?, ?, ?)", id, piece,
               line);
        indexPiece(connection_, piece);
    }
    return id;
}

Ticket Tickets::at(TicketId id) const {
    Statement row{connection_, TICKETS "WHERE id = ?", id};
    if (!row.next())
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no ticket " + std::to_string(id.value())};
    return ticketOf(connection_, row);
}

std::optional<Ticket> Tickets::byCode(const std::string& code) const {
    Statement row{connection_, TICKETS "WHERE code = ?", code};
    if (!row.next()) return std::nullopt;
    return ticketOf(connection_, row);
}

Ticket Tickets::ofMounting(MountingId mounting) const {
    const auto ticket = only<TicketId>(connection_, "SELECT ticket FROM mounting WHERE id = ?", mounting);
    if (!ticket)
        throw StoreError{StoreError::Kind::Failed, connection_.path(),
                         "no mounting " + std::to_string(mounting.value())};
    return at(*ticket);
}

std::optional<MountingId> Tickets::mountingCutBy(MovementId movement) const {
    return only<MountingId>(connection_, "SELECT id FROM mounting WHERE movement = ?", movement);
}

std::optional<MountingId> lastCut(Connection& connection) {
    // The Bench asks often, and the table grows for years: only the last few hundred made are looked at.
    return only<MountingId>(connection,
                            "SELECT id FROM mounting WHERE id > (SELECT max(id) FROM mounting) - 300"
                            " AND movement IS NOT NULL ORDER BY movement DESC LIMIT 1");
}

std::vector<Ticket> Tickets::inState(TicketState state) const {
    Statement rows{connection_, TICKETS "WHERE state = ? ORDER BY made_ms, id", state};
    return ticketsOf(connection_, rows);
}

std::vector<Ticket> Tickets::ofOrder(OrderId order) const {
    Statement rows{connection_, TICKETS "WHERE sales_order = ? ORDER BY made_ms, id", order};
    return ticketsOf(connection_, rows);
}

void Tickets::setState(TicketId ticket, TicketState state) {
    change(connection_, "UPDATE ticket SET state = ? WHERE id = ?", state, ticket);
}

void Tickets::setMounting(MountingId mounting, MountingState state, std::optional<MovementId> movement) {
    change(connection_, "UPDATE mounting SET state = ?, movement = ? WHERE id = ?", state, movement,
           mounting);
    if (const auto piece = only<PieceId>(connection_, "SELECT piece FROM mounting WHERE id = ?", mounting))
        indexPiece(connection_, *piece);
}

void Tickets::setCutter(MountingId mounting, CutterId cutter) {
    change(connection_, "UPDATE mounting SET cutter = ? WHERE id = ?", cutter, mounting);
}

} // namespace riband::store
