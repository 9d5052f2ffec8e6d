#include "core/measure/code.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

TEST_CASE("An order comes back as it was booked", "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Orders orders{connection};
    const LineId line = shop.order(shop.toothed, mm(30), 3);
    const Order order = orders.at(orders.orderOf(line));
    CHECK(Code::read(order.code)->kind() == CodeKind::Order);
    CHECK(order.state == OrderState::Open);
    CHECK_FALSE(order.customer);
    CHECK(order.customerName.empty());
    CHECK(order.person == shop.clerk);
    CHECK(order.made == shop.now);
    CHECK_FALSE(order.due);
    REQUIRE(order.lines.size() == 1);
    const OrderLine& kept = order.lines.front();
    CHECK(kept.extent == mm(30));
    CHECK(kept.quantity == 3);
    CHECK(kept.position == 1);
    CHECK(kept.said == "as said");
    CHECK(kept.price.total == Money::minor(6355));
    CHECK(kept.price.minimum == Money::minor(0));
    CHECK(orders.byCode(order.code)->id == order.id);
    CHECK_FALSE(orders.byCode("N00-0"));
    CHECK_THROWS_AS(orders.at(OrderId{99}), StoreError);
    CHECK_THROWS_AS(orders.orderOf(LineId{99}), StoreError);
}

TEST_CASE("Ribs can't be ordered of a toothed belt", "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    CHECK_THROWS_AS(shop.order(shop.toothed, Ribs{6}, 1), StoreError);
    CHECK_THROWS_AS(shop.order(shop.ribbed, mm(30), 1), StoreError);
    CHECK(Orders{connection}.inState(OrderState::Open).empty());
}

TEST_CASE("Orders of a state come oldest first", "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Orders orders{connection};
    const OrderId late = orders.orderOf(shop.order(shop.toothed, mm(30), 1));
    shop.now -= std::chrono::hours{2};
    const OrderId early = orders.orderOf(shop.order(shop.toothed, mm(20), 1));
    const auto open = orders.inState(OrderState::Open);
    REQUIRE(open.size() == 2);
    CHECK(open[0].id == early);
    CHECK(open[1].id == late);
    orders.setState(early, OrderState::Cancelled);
    CHECK(orders.inState(OrderState::Open).size() == 1);
    CHECK(orders.inState(OrderState::Cancelled).front().id == early);
}

TEST_CASE("What was asked for comes by belt and time, without what was taken back", "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Orders orders{connection};
    const Moment first = shop.now;
    shop.order(shop.ribbed, Ribs{6}, 2);
    shop.now += std::chrono::hours{24};
    OrderLine changed = orders.at(orders.orderOf(shop.order(shop.toothed, mm(30), 5))).lines.front();
    changed.cancelled = 2;
    orders.changeLine(changed);
    const OrderId quoted = orders.orderOf(shop.order(shop.toothed, mm(20), 1));
    orders.setState(quoted, OrderState::Quoted);

    const auto asked = orders.askedSince(first);
    REQUIRE(asked.size() == 2);
    CHECK(asked[0].belt == shop.toothed);
    CHECK(asked[0].extent == mm(30));
    CHECK(asked[0].quantity == 3);
    CHECK(asked[0].at == shop.now);
    CHECK(asked[1].extent == Extent{Ribs{6}});
    CHECK(orders.askedSince(shop.now).size() == 1);
    CHECK(orders.askedSince(shop.now + std::chrono::hours{1}).empty());
}

TEST_CASE("What was asked for comes oldest first, whatever became of it", "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Orders orders{connection};
    std::vector<OrderId> made;
    for (const OrderState state : {OrderState::HandedOver, OrderState::Open, OrderState::Ready,
                                   OrderState::HandedOver, OrderState::Open}) {
        made.push_back(orders.orderOf(shop.order(shop.toothed, mm(30), 1)));
        orders.setState(made.back(), state);
        shop.order(shop.ribbed, Ribs{6}, 1);
        shop.now += std::chrono::hours{1};
    }
    const auto asked = orders.askedSince(Moment{});
    REQUIRE(asked.size() == 10);
    for (std::size_t i = 0; i < 5; ++i) {
        CHECK(asked[i].order == made[i]);
        CHECK(asked[i].belt == shop.toothed);
        CHECK(asked[i + 5].belt == shop.ribbed);
    }
}

TEST_CASE("How often a belt was ordered counts lines, not belts, and none that is cancelled or only quoted",
          "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Orders orders{connection};
    using Times = std::vector<std::pair<BeltId, std::int64_t>>;
    CHECK(orders.timesOrdered().empty());
    shop.order(shop.toothed, mm(30), 100);
    const OrderId handedOver = orders.orderOf(shop.order(shop.toothed, mm(20), 1));
    const OrderId other = orders.orderOf(shop.order(shop.ribbed, Ribs{6}, 2));
    orders.setState(handedOver, OrderState::HandedOver);
    CHECK(orders.timesOrdered() == Times{{shop.toothed, 2}, {shop.ribbed, 1}});
    orders.setState(other, OrderState::Quoted);
    CHECK(orders.timesOrdered() == Times{{shop.toothed, 2}});
    orders.setState(other, OrderState::Cancelled);
    CHECK(orders.timesOrdered() == Times{{shop.toothed, 2}});
    SECTION("nor a line that is no longer wanted") {
        OrderLine line = orders.at(handedOver).lines.front();
        line.cancelled = line.quantity;
        orders.changeLine(line);
        CHECK(orders.timesOrdered() == Times{{shop.toothed, 1}});
    }
}

TEST_CASE("The lines of an order are replaced while nothing is cut", "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Orders orders{connection};
    const OrderId id = orders.orderOf(shop.order(shop.toothed, mm(30), 3));
    OrderLine first = orders.at(id).lines.front();
    OrderLine added = first;
    added.id = LineId{0};
    added.belt = shop.ribbed;
    added.extent = Ribs{6};
    first.extent = mm(25);

    orders.replaceLines(id, {added, first});
    auto lines = orders.at(id).lines;
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].extent == Extent{Ribs{6}});
    CHECK(lines[1].id == first.id); // it is the same line, changed
    CHECK(lines[1].extent == mm(25));

    orders.replaceLines(id, {lines[0]});
    CHECK(orders.at(id).lines.size() == 1);

    lines[0].cut = 1;
    orders.changeLine(lines[0]);
    CHECK(orders.at(id).lines.front().cut == 1);
    CHECK_THROWS_AS(orders.replaceLines(id, {}), std::logic_error);
}

TEST_CASE("No more belts are cut and cancelled than were ordered", "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Orders orders{connection};
    OrderLine line = orders.at(orders.orderOf(shop.order(shop.toothed, mm(30), 3))).lines.front();
    line.cut = 2;
    line.cancelled = 1;
    CHECK_NOTHROW(orders.changeLine(line));
    line.cancelled = 2;
    CHECK_THROWS_AS(orders.changeLine(line), StoreError);
}

TEST_CASE("A customer is found by any part of the name or the number", "[store][orders]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Orders orders{connection};
    const CustomerId mill = orders.customerNamed("Lower Mill", "0555 100");
    CHECK(orders.customerNamed("Lower Mill", "0555 100") == mill);
    CHECK(orders.customerNamed("Lower Mill", "0555 200") != mill);
    orders.customerNamed("100% Paper", "");
    CHECK(orders.customersLike("mill", 10).size() == 2);
    CHECK(orders.customersLike("mill", 1).size() == 1);
    CHECK(orders.customersLike("5 100", 10).size() == 1);
    CHECK(orders.customersLike("%", 10).size() == 1); // a sign like others
    CHECK(orders.customersLike("_", 10).empty());

    const OrderId id = orders.orderOf(shop.order(shop.toothed, mm(30), 1));
    orders.setCustomer(id, mill);
    CHECK(orders.at(id).customerName == "Lower Mill");
}

TEST_CASE("A ticket comes back as it was made", "[store][tickets]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.ribbed, Ribs{60}, Money::minor(4500));
    const LineId line = shop.order(shop.ribbed, Ribs{6}, 4);
    const Tickets tickets{connection};
    const TicketId id = shop.ticket(line, sleeve);
    const Ticket ticket = tickets.at(id);
    CHECK(Code::read(ticket.code)->kind() == CodeKind::Ticket);
    REQUIRE(ticket.mountings.size() == 1);
    const TicketMounting& mounting = ticket.mountings.front();
    CHECK(mounting.piece == sleeve);
    CHECK(mounting.state == MountingState::Planned);
    CHECK(mounting.trim == Extent{Ribs{1}});
    CHECK(mounting.left == Extent{Ribs{35}}); // 60 - 1 - 4 x 6
    CHECK(mounting.restKept);
    REQUIRE(mounting.cuts.size() == 1);
    CHECK(mounting.cuts.front().line == line);
    CHECK(mounting.cuts.front().count == 4);

    CHECK(tickets.byCode(ticket.code)->id == id);
    CHECK(tickets.ofMounting(mounting.id).id == id);
    CHECK(tickets.ofOrder(*ticket.order).size() == 1);
    CHECK(tickets.inState(TicketState::Open).size() == 1);
    CHECK(tickets.inState(TicketState::Cut).empty());
    CHECK_THROWS_AS(tickets.at(TicketId{99}), StoreError);
}

TEST_CASE("A mounting is in the unit of its piece", "[store][tickets]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    const LineId line = shop.order(shop.toothed, mm(30), 1);
    const OrderId order = Orders{connection}.orderOf(line);
    const TicketMounting inRibs{
        MountingId{0}, sleeve, MountingState::Planned, {{line, Ribs{3}, 1}}, Ribs{1}, Ribs{0}, Ribs{10},
        true,          {}};
    Transaction transaction{connection};
    CHECK_THROWS_AS(
        Tickets{connection}.add({TicketId{0}, "", order, TicketState::Open, shop.now, {inRibs}, {}}),
        std::invalid_argument);
}
