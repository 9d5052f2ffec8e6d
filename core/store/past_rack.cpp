#include "core/store/past_rack.h"

#include "core/store/statement.h"

#include <map>

namespace riband::store {
namespace {

/// Promised before the moment and cut after it, or still to be cut. What became void is taken as never
/// promised: the book does not keep when it did.
std::map<PieceId, std::int64_t> promisedOf(Connection& connection, BeltId belt, Moment moment) {
    std::map<PieceId, std::int64_t> promised;
    Statement rows{connection,
                   "SELECT m.piece, sum(m.reserved) FROM mounting m JOIN ticket t ON t.id = m.ticket"
                   " LEFT JOIN movement c ON c.id = m.movement"
                   " WHERE m.ticket IN (SELECT k.id FROM ticket k JOIN order_line l"
                   "   ON l.sales_order = k.sales_order WHERE l.belt = ? AND k.made_ms < ?)"
                   " AND (m.state = 0 OR (m.state = 1 AND c.at_ms >= ?)) GROUP BY m.piece",
                   belt, moment, moment};
    while (rows.next())
        promised[rows.get<PieceId>(0)] = rows.get<std::int64_t>(1);
    return promised;
}

} // namespace

std::vector<StockPiece> PastRack::before(const StockedBelt& belt, Moment moment) const {
    constexpr int ready = static_cast<int>(cutting::PieceKind::Ready);
    const auto promised = promisedOf(connection_, belt.id, moment);
    std::vector<StockPiece> pieces;
    Statement rows{connection_,
                   "SELECT p.id, p.code, p.kind, p.parent, p.received_day, p.made_day, p.batch,"
                   " sum(s.amount), min(s.amount) FROM movement m JOIN posting s ON s.movement = m.id"
                   " JOIN piece p ON p.id = s.piece"
                   " WHERE m.belt = ? AND m.at_ms < ? AND s.account IN (2, 3) GROUP BY p.id"
                   " HAVING sum(s.amount) > 0 ORDER BY coalesce(p.made_day, p.received_day), p.id",
                   belt.id, moment};
    while (rows.next()) {
        const auto id = rows.get<PieceId>(0);
        const auto there = rows.get<std::int64_t>(7);
        const auto taken = promised.find(id);
        const std::int64_t free = there - (taken == promised.end() ? 0 : taken->second);
        if (free <= 0) continue;
        const bool whole = free == there && rows.get<std::int64_t>(8) > 0 &&
                           !rows.get<std::optional<PieceId>>(3) &&
                           Extent::of(belt.unit, there) >= belt.newSleeve;
        auto kind = rows.get<cutting::PieceKind>(2);
        if (static_cast<int>(kind) != ready)
            kind = whole ? cutting::PieceKind::Sleeve : cutting::PieceKind::Remnant;
        pieces.push_back({.id = id,
                          .code = rows.get<std::string>(1),
                          .belt = belt.id,
                          .kind = kind,
                          .extent = Extent::of(belt.unit, free),
                          .reserved = Extent::none(belt.unit),
                          .cost = Money::minor(0),
                          .parent = rows.get<std::optional<PieceId>>(3),
                          .place = "",
                          .received = rows.get<Date>(4),
                          .made = rows.get<std::optional<Date>>(5),
                          .batch = rows.get<std::string>(6)});
    }
    return pieces;
}

} // namespace riband::store
