#pragma once

#include <compare>
#include <cstdint>

namespace riband::store {

/// A row's key; one type a table, so that a piece is never taken for an order.
template <class Row>
class Id {
public:
    explicit constexpr Id(std::int64_t value) : value_{value} {}
    constexpr std::int64_t value() const { return value_; }
    friend constexpr auto operator<=>(Id, Id) = default;

private:
    std::int64_t value_;
};

using BeltId = Id<struct BeltRow>;
using PieceId = Id<struct PieceRow>;
using PlaceId = Id<struct PlaceRow>;
using PersonId = Id<struct PersonRow>;
using CustomerId = Id<struct CustomerRow>;
using OrderId = Id<struct OrderRow>;
using LineId = Id<struct LineRow>;
using TicketId = Id<struct TicketRow>;
using MountingId = Id<struct MountingRow>;
using CutterId = Id<struct CutterRow>;
using MovementId = Id<struct MovementRow>;
using AdviceId = Id<struct AdviceRow>;
using CountId = Id<struct CountRow>;
using ScanId = Id<struct ScanRow>;
using SettlementId = Id<struct SettlementRow>;

} // namespace riband::store
