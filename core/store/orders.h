#pragma once

#include "core/measure/date.h"
#include "core/measure/extent.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace riband::store {

enum class OrderState : std::uint8_t {
    Parked, ///< set aside at the counter, nothing reserved
    Quoted, ///< a price was given, nothing reserved
    Open,   ///< ordered: reserved, to be cut
    Ready,  ///< all cut, to be handed over
    HandedOver,
    Cancelled,
};

/// What a line costs, as the customer sees it.
struct LinePrice {
    Money width;    ///< price of the width, all belts
    Money cutting;  ///< cutting charge, all belts
    Money discount; ///< for quantity; not positive
    Money minimum;  ///< what the least price of a line adds; not negative
    Money net;
    Money tax;
    Money total;
};

struct OrderLine {
    LineId id;
    int position; ///< from 1, given by the store
    BeltId belt;
    Extent extent;
    std::int64_t quantity;
    std::string said; ///< as typed
    LinePrice price;
    std::int64_t cut;       ///< belts cut or taken ready so far
    std::int64_t cancelled; ///< belts no longer wanted
};

struct Order {
    OrderId id;
    std::string code;
    OrderState state;
    std::optional<CustomerId> customer;
    std::string customerName; ///< "" for a walk-in
    PersonId person;
    Moment made;
    std::optional<Moment> due;
    std::string note;
    std::vector<OrderLine> lines;
};

/// A line of an order as demand: what customers wanted and did not take back.
struct AskedLine {
    BeltId belt;
    OrderId order;
    Moment at;
    Extent extent;
    std::int64_t quantity;
    int position; ///< in the order
};

/// A line as it was asked for once.
struct PastLine {
    OrderId order;
    Moment made;
    Extent extent;
    std::int64_t belts; ///< still wanted
};

struct Customer {
    CustomerId id;
    std::string name;
    std::string phone;
};

enum class TicketState : std::uint8_t { Open, Cut, Void };
enum class MountingState : std::uint8_t { Planned, Cut, Void };

/// Belts to be cut in a mounting.
struct TicketCut {
    std::optional<LineId> line; ///< none: for the shelf
    Extent extent;
    std::int64_t count;
};

struct TicketMounting {
    MountingId id;
    PieceId piece;
    MountingState state;
    std::vector<TicketCut> cuts; ///< in the order of cutting
    Extent trim;
    Extent kerf; ///< a belt
    Extent left; ///< planned
    bool restKept;
    std::optional<MovementId> movement; ///< when cut
    /// On which it is planned; 0 where it is added: on the usual one.
    CutterId cutter{0};

    bool onlyForShelf() const {
        return std::none_of(cuts.begin(), cuts.end(),
                            [](const TicketCut& cut) { return cut.line.has_value(); });
    }
};

/// The paper (and the screen) that the person at the cutter works from.
struct Ticket {
    TicketId id;
    std::string code;
    std::optional<OrderId> order; ///< none: what is cut is for the shelf
    TicketState state;
    Moment made;
    std::vector<TicketMounting> mountings;
    std::vector<std::pair<PieceId, LineId>> taken; ///< ready belts from the shelf
};

/// The orders and their lines. The only code that names the tables `sales_order`, `order_line`, `customer`.
class Orders {
public:
    explicit Orders(Connection& connection) : connection_{connection} {}
    OrderId add(const Order& order); ///< ids and code are given here
    Order at(OrderId id) const;
    std::optional<Order> byCode(const std::string& code) const;
    std::vector<Order> inState(OrderState state) const; ///< oldest first
    /// How often each belt was ordered, lines not belts, of orders that are neither parked, quoted nor
    /// cancelled.
    std::vector<std::pair<BeltId, std::int64_t>> timesOrdered() const;
    /// What was asked for since then, of orders that are neither parked, quoted nor cancelled: by belt, then
    /// oldest first, the lines of an order together.
    std::vector<AskedLine> askedSince(Moment from) const;
    /// What was asked of a belt, the last `most` lines, oldest first; as in timesOrdered.
    std::vector<PastLine> pastOf(BeltId belt, std::size_t most) const;
    OrderId orderOf(LineId line) const;
    void setState(OrderId order, OrderState state);
    /// All but the number is as here from now on; only while nothing of it was planned or cut.
    void rewrite(OrderId id, const Order& order);
    void setCustomer(OrderId order, std::optional<CustomerId> customer);
    void replaceLines(OrderId order, const std::vector<OrderLine>& lines); ///< only while nothing is cut
    void changeLine(const OrderLine& line);
    CustomerId customerNamed(const std::string& name, const std::string& phone); ///< added if new
    std::vector<Customer> customersLike(const std::string& text, std::size_t most) const;

private:
    Connection& connection_;
};

/// The tickets with their mountings, and with them the reservations. The only code that names `ticket`,
/// `mounting`, `mounting_cut`, `taken_ready`.
class Tickets {
public:
    explicit Tickets(Connection& connection) : connection_{connection} {}
    TicketId add(const Ticket& ticket); ///< ids and code are given here
    Ticket at(TicketId id) const;
    std::optional<Ticket> byCode(const std::string& code) const;
    Ticket ofMounting(MountingId mounting) const;
    std::optional<MountingId> mountingCutBy(MovementId movement) const; ///< that this movement recorded
    std::vector<Ticket> inState(TicketState state) const;               ///< oldest first
    std::vector<Ticket> ofOrder(OrderId order) const;
    void setState(TicketId ticket, TicketState state);
    void setMounting(MountingId mounting, MountingState state, std::optional<MovementId> movement);
    void setCutter(MountingId mounting, CutterId cutter);

private:
    Connection& connection_;
};

} // namespace riband::store
