#include "tests/core/store/shop_fixture.h"

#include <stdlib.h>

#include <stdexcept>

namespace riband::store {
namespace {

StockedBelt toothedBelt() {
    return {.id = BeltId{0},
            .belt = {"H8M", Teeth{150}, Length::millimetres(1200), ""},
            .designation = "",
            .unit = Unit::Micrometre,
            .body = "rubber",
            .cord = "glass",
            .price = WidthPrice::thousandths(51'000),
            .newSleeve = mm(100),
            .sleeveCost = Money::minor(8000),
            .deliveryDays = 3,
            .listed = {mm(20), mm(30), mm(50)}};
}

StockedBelt ribbedBelt() {
    return {.id = BeltId{0},
            .belt = {"PJ", std::nullopt, Length::millimetres(1194), ""},
            .designation = "",
            .unit = Unit::Rib,
            .body = "rubber",
            .cord = "",
            .price = WidthPrice::thousandths(150'000),
            .newSleeve = Ribs{60},
            .sleeveCost = Money::minor(4500),
            .deliveryDays = 5,
            .listed = {Ribs{4}, Ribs{6}}};
}

Order orderOf(const SmallShop& shop, BeltId belt, Extent extent, std::int64_t quantity) {
    OrderLine line{.id = LineId{0},
                   .position = 0,
                   .belt = belt,
                   .extent = extent,
                   .quantity = quantity,
                   .said = "as said",
                   .price = {Money::minor(4590), Money::minor(750), Money::minor(0), Money::minor(0),
                             Money::minor(5340), Money::minor(1015), Money::minor(6355)},
                   .cut = 0,
                   .cancelled = 0};
    return {.id = OrderId{0},
            .code = "",
            .state = OrderState::Open,
            .customer = std::nullopt,
            .customerName = "",
            .person = shop.clerk,
            .made = shop.now,
            .due = std::nullopt,
            .note = "",
            .lines = {line}};
}

} // namespace

TemporaryFolder::TemporaryFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "riband store XXXXXX").string();
    if (!::mkdtemp(name.data())) throw std::runtime_error("no temporary folder");
    path_ = name;
}

TemporaryFolder::~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

SmallShop::SmallShop(Connection& open)
    : connection{open}, clerk{People{open}.add("AB", "A. Binder", Role::Clerk)},
      toothed{Catalogue{open}.add(toothedBelt())}, ribbed{Catalogue{open}.add(ribbedBelt())} {}

PieceId SmallShop::receive(BeltId belt, Extent extent, Money cost, cutting::PieceKind kind,
                           const std::string& place) {
    Transaction transaction{connection};
    const PieceId piece = Pieces{connection}.add({.belt = belt,
                                                  .kind = kind,
                                                  .parent = std::nullopt,
                                                  .place = place,
                                                  .received = dayOf(now),
                                                  .made = day(2025, 11, 1),
                                                  .batch = "M-77"});
    const Account account = kind == cutting::PieceKind::Ready ? Account::Ready : Account::Rack;
    Ledger{connection}.record(
        {{.act = Act::Receive, .at = now, .person = clerk, .belt = belt, .note = "", .undoes = {}},
         {{.account = Account::Bought,
           .piece = {},
           .line = {},
           .amount = -extent.count(),
           .cost = -cost,
           .reason = {}},
          {.account = account,
           .piece = piece,
           .line = {},
           .amount = extent.count(),
           .cost = cost,
           .reason = {}}}});
    transaction.commit();
    return piece;
}

LineId SmallShop::order(BeltId belt, Extent extent, std::int64_t quantity) {
    Transaction transaction{connection};
    Orders orders{connection};
    const OrderId id = orders.add(orderOf(*this, belt, extent, quantity));
    transaction.commit();
    return orders.at(id).lines.front().id;
}

TicketId SmallShop::ticket(LineId line, PieceId piece) {
    const Orders orders{connection};
    const OrderId order = orders.orderOf(line);
    const OrderLine wanted = orders.at(order).lines.front();
    const StockPiece from = Pieces{connection}.at(piece);
    const Unit unit = from.extent.unit();
    const Extent trim = unit == Unit::Rib ? Extent{Ribs{1}} : Extent{Width::micrometres(2500)};
    Transaction transaction{connection};
    const TicketId id =
        Tickets{connection}.add({.id = TicketId{0},
                                 .code = "",
                                 .order = order,
                                 .state = TicketState::Open,
                                 .made = now,
                                 .mountings = {{.id = MountingId{0},
                                                .piece = piece,
                                                .state = MountingState::Planned,
                                                .cuts = {{line, wanted.extent, wanted.quantity}},
                                                .trim = trim,
                                                .kerf = Extent::none(unit),
                                                .left = from.extent - trim - wanted.extent * wanted.quantity,
                                                .restKept = true,
                                                .movement = {}}},
                                 .taken = {}});
    transaction.commit();
    return id;
}

Movement SmallShop::cutOf(PieceId piece, LineId line, std::int64_t belts) const {
    const StockPiece from = Pieces{connection}.at(piece);
    const std::int64_t trim = 2500, sold = belts * 30'000;
    const auto share = [&](std::int64_t amount) {
        return Money::minor(from.cost.inMinor() * amount / from.extent.count());
    };
    return {{.act = Act::Cut, .at = now, .person = clerk, .belt = toothed, .note = "", .undoes = {}},
            {{.account = Account::Rack,
              .piece = piece,
              .line = {},
              .amount = -trim - sold,
              .cost = -(share(trim) + share(sold)),
              .reason = {}},
             {.account = Account::Trim,
              .piece = piece,
              .line = {},
              .amount = trim,
              .cost = share(trim),
              .reason = {}},
             {.account = Account::Sold,
              .piece = piece,
              .line = line,
              .amount = sold,
              .cost = share(sold),
              .reason = {}}}};
}

MovementId SmallShop::record(const Movement& movement) {
    Transaction transaction{connection};
    const MovementId id = Ledger{connection}.record(movement);
    transaction.commit();
    return id;
}

} // namespace riband::store
