#include "core/measure/code.h"
#include "core/store/flows.h"
#include "core/store/offers.h"
#include "core/store/verify.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

#include <algorithm>

using namespace riband;
using namespace riband::store;

TEST_CASE("What makers offer is kept of each belt, and a new list replaces the old one", "[store][stock]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    SleeveOffers offers{connection};
    CHECK(offers.all().empty());
    offers.replace(shop.toothed, {{mm(500), Money::minor(36800), 9}, {mm(400), Money::minor(32000), 4}});
    offers.replace(shop.ribbed, {{Ribs{120}, Money::minor(9000), 0}});
    CHECK(offers.all().at(shop.toothed) ==
          std::vector<SleeveOffer>{{mm(400), Money::minor(32000), 4}, {mm(500), Money::minor(36800), 9}});
    CHECK(offers.all().at(shop.ribbed).front().extent == Extent{Ribs{120}});
    offers.replace(shop.toothed, {});
    CHECK_FALSE(offers.all().contains(shop.toothed));
}

TEST_CASE("Sums and codes of an act wait for its commit, and are gone with an act that is given up",
          "[store][stock]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const auto bought = [&] {
        std::int64_t sum = 0;
        for (const Flow& flow : Flows{connection}.sums(Moment{}, Moment::max()))
            if (flow.account == Account::Bought) sum -= flow.before + flow.within;
        return sum;
    };
    const auto deliver = [&] {
        const PieceId piece = Pieces{connection}.add({.belt = shop.toothed,
                                                      .kind = cutting::PieceKind::Sleeve,
                                                      .parent = std::nullopt,
                                                      .place = "A1-1",
                                                      .received = day(2026, 3, 2),
                                                      .made = std::nullopt,
                                                      .batch = ""});
        const Money cost = Money::minor(8'000);
        Ledger{connection}.record(Movement{{Act::Receive, shop.now, shop.clerk, shop.toothed, "", {}},
                                           {{Account::Bought, piece, {}, -100'000, -cost, {}},
                                            {Account::Rack, piece, {}, 100'000, cost, {}}}});
        return Pieces{connection}.at(piece).code;
    };
    shop.receive(shop.toothed, mm(100), Money::minor(8'000));
    std::string first;
    {
        const Transaction givenUp{connection};
        first = deliver();
        CHECK(deliver() != first);
        CHECK(bought() == 300'000); // whoever asks in between is told
        deliver();
    }
    CHECK(bought() == 100'000);
    Transaction transaction{connection};
    CHECK(deliver() == first);
    CHECK(deliver() != first);
    transaction.commit();
    CHECK(bought() == 300'000);
    CHECK(verify(connection).agrees());
}

TEST_CASE("A belt of the catalogue comes back as it was kept", "[store][catalogue]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const Catalogue catalogue{connection};
    const StockedBelt toothed = catalogue.at(shop.toothed);
    CHECK(toothed.belt == belt::Belt{"H8M", Teeth{150}, Length::millimetres(1200), ""});
    CHECK(toothed.designation == belt::designation(toothed.belt));
    CHECK(toothed.unit == Unit::Micrometre);
    CHECK(toothed.price == WidthPrice::thousandths(51'000));
    CHECK(toothed.newSleeve == mm(100));
    CHECK(toothed.listed == std::vector<Extent>{mm(20), mm(30), mm(50)});
    const StockedBelt ribbed = catalogue.at(shop.ribbed);
    CHECK_FALSE(ribbed.belt.teeth);
    CHECK(ribbed.listed == std::vector<Extent>{Ribs{4}, Ribs{6}});

    CHECK(catalogue.find(toothed.belt)->id == shop.toothed);
    CHECK_FALSE(catalogue.find({"H8M", Teeth{150}, Length::millimetres(1200), "steel cord"}));
    CHECK(catalogue.all().size() == 2);
    CHECK(catalogue.ofProfile("PJ").front().id == shop.ribbed);
    CHECK(catalogue.ofProfile("PK").empty());
    CHECK_THROWS_AS(catalogue.at(BeltId{99}), StoreError);
}

TEST_CASE("A belt is in the catalogue once, and its widths are in its own unit", "[store][catalogue]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Catalogue catalogue{connection};
    StockedBelt belt = catalogue.at(shop.toothed);
    CHECK_THROWS_AS(catalogue.add(belt), StoreError);
    belt.listed = {Ribs{4}};
    CHECK_THROWS_AS(catalogue.change(belt), std::invalid_argument);
    belt.listed = {mm(25)};
    belt.price = WidthPrice::thousandths(60'000);
    catalogue.change(belt);
    CHECK(catalogue.at(shop.toothed).listed == std::vector<Extent>{mm(25)});
    CHECK(catalogue.at(shop.toothed).price == WidthPrice::thousandths(60'000));
}

TEST_CASE("Each piece gets a code of its own with a check character", "[store][pieces]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    std::vector<std::string> codes;
    for (int i = 0; i < 50; ++i)
        codes.push_back(Pieces{connection}.at(shop.receive(shop.toothed, mm(100), Money::minor(1))).code);
    for (const auto& code : codes) {
        const auto read = Code::read(code);
        REQUIRE(read);
        CHECK(read->kind() == CodeKind::Piece);
        CHECK(Pieces{connection}.byCode(code)->code == code);
    }
    std::ranges::sort(codes);
    CHECK(std::ranges::adjacent_find(codes) == codes.end());
    CHECK_FALSE(Pieces{connection}.byCode("000-0"));
}

TEST_CASE("A piece comes back as it was booked in", "[store][pieces]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId id = shop.receive(shop.ribbed, Ribs{60}, Money::minor(4500));
    const StockPiece piece = Pieces{connection}.at(id);
    CHECK(piece.belt == shop.ribbed);
    CHECK(piece.kind == cutting::PieceKind::Sleeve);
    CHECK(piece.extent == Extent{Ribs{60}});
    CHECK(piece.reserved == Extent{Ribs{0}});
    CHECK(piece.cost == Money::minor(4500));
    CHECK_FALSE(piece.parent);
    CHECK(piece.place == "A1-1");
    CHECK(piece.received == day(2026, 3, 2));
    CHECK(piece.born() == day(2025, 11, 1));
    CHECK(piece.batch == "M-77");

    Pieces{connection}.becomeRemnant(id);
    CHECK(Pieces{connection}.at(id).kind == cutting::PieceKind::Remnant);
    Pieces{connection}.move(id, "B3-2");
    CHECK(Pieces{connection}.at(id).place == "B3-2");
    Pieces{connection}.move(id, "");
    CHECK(Pieces{connection}.at(id).place.empty());
    CHECK(Pieces{connection}.places() == std::vector<std::string>{"A1-1", "B3-2"});
    CHECK_THROWS_AS(Pieces{connection}.at(PieceId{99}), StoreError);
}

TEST_CASE("Pieces of a belt are those still there, oldest first", "[store][pieces]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    Pieces pieces{connection};
    const auto bornOn = [&](Date date) {
        Transaction transaction{connection};
        const PieceId id = pieces.add({shop.toothed, cutting::PieceKind::Sleeve, {}, "", date, {}, ""});
        Ledger{connection}.record(
            {{Act::Receive, shop.now, shop.clerk, shop.toothed, "", {}},
             {{.account = Account::Bought, .piece = {}, .line = {}, .amount = -1000, .reason = {}},
              {.account = Account::Rack, .piece = id, .line = {}, .amount = 1000, .reason = {}}}});
        transaction.commit();
        return id;
    };
    const PieceId young = bornOn(day(2026, 2, 1)), old = bornOn(day(2024, 5, 1));
    const PieceId middle = shop.receive(shop.toothed, mm(100), Money::minor(1)); // made 2025-11-01
    shop.receive(shop.ribbed, Ribs{60}, Money::minor(1));
    Transaction transaction{connection};
    pieces.add(
        {shop.toothed, cutting::PieceKind::Remnant, {}, "", day(2020, 1, 1), {}, ""}); // empty: not there
    transaction.commit();

    std::vector<PieceId> ids;
    for (const auto& piece : pieces.ofBelt(shop.toothed))
        ids.push_back(piece.id);
    CHECK(ids == std::vector<PieceId>{old, middle, young});
    CHECK(pieces.all().size() == 4);
}

TEST_CASE("What open tickets need of a piece is reserved until it is cut or void", "[store][tickets]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId sleeve = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    const LineId line = shop.order(shop.toothed, mm(30), 2);
    Tickets tickets{connection};
    const TicketId first = shop.ticket(line, sleeve);
    const auto reserved = [&] { return Pieces{connection}.at(sleeve).reserved; };
    CHECK(reserved() == Extent{Width::micrometres(62'500)}); // trim 2.5, twice 30
    CHECK(Pieces{connection}.all().front().reserved == reserved());
    CHECK(Pieces{connection}.ofBelt(shop.toothed).front().reserved == reserved());

    SECTION("void") {
        tickets.setMounting(tickets.at(first).mountings.front().id, MountingState::Void, {});
        CHECK(reserved() == mm(0));
    }
    SECTION("cut") {
        const MovementId cut = shop.record(shop.cutOf(sleeve, line, 2));
        tickets.setMounting(tickets.at(first).mountings.front().id, MountingState::Cut, cut);
        CHECK(reserved() == mm(0));
        CHECK(tickets.at(first).mountings.front().movement == cut);
    }
    SECTION("a cut mounting names its movement") {
        CHECK_THROWS_AS(tickets.setMounting(tickets.at(first).mountings.front().id, MountingState::Cut, {}),
                        StoreError);
    }
    SECTION("two tickets on one sleeve") {
        shop.ticket(shop.order(shop.toothed, mm(30), 1), sleeve);
        CHECK(reserved() == mm(95)); // 62.5 and 32.5
    }
}

TEST_CASE("A ready belt that an open ticket takes is reserved whole", "[store][tickets]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    const PieceId ready = shop.receive(shop.toothed, mm(30), Money::minor(2400), cutting::PieceKind::Ready);
    const LineId line = shop.order(shop.toothed, mm(30), 1);
    const OrderId order = Orders{connection}.orderOf(line);
    Tickets tickets{connection};
    Transaction transaction{connection};
    const TicketId id =
        tickets.add({TicketId{0}, "", order, TicketState::Open, shop.now, {}, {{ready, line}}});
    transaction.commit();
    CHECK(Pieces{connection}.at(ready).reserved == mm(30));
    CHECK(tickets.at(id).taken.front() == std::pair{ready, line});
    tickets.setState(id, TicketState::Void);
    CHECK(Pieces{connection}.at(ready).reserved == mm(0));
}
