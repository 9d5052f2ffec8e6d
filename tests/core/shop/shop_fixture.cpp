#include "tests/core/shop/shop_fixture.h"

#include "core/store/counts.h"
#include "core/store/verify.h"
#include "tests/core/belt/read_tables.h"

#include <sstream>

namespace riband::shop {

namespace {

constexpr store::OrderState orderStates[] = {store::OrderState::Parked,     store::OrderState::Quoted,
                                             store::OrderState::Open,       store::OrderState::Ready,
                                             store::OrderState::HandedOver, store::OrderState::Cancelled};
constexpr store::TicketState ticketStates[] = {store::TicketState::Open, store::TicketState::Cut,
                                               store::TicketState::Void};

std::shared_ptr<const belt::Tables> tables() { return {std::shared_ptr<void>{}, &belt::theTables()}; }

void print(std::ostream& out, const store::StockPiece& piece) {
    out << "piece " << piece.code << ' ' << static_cast<int>(piece.kind) << ' ' << piece.extent.count() << ' '
        << piece.reserved.count() << ' ' << piece.cost.inMinor() << ' ' << piece.place << '\n';
}

void print(std::ostream& out, const store::RecordedMovement& recorded) {
    const store::Movement& movement = recorded.movement;
    out << "movement " << recorded.id.value() << ' ' << static_cast<int>(movement.about().act) << '\n';
    for (const store::Posting& posting : movement.postings())
        out << "  " << static_cast<int>(posting.account) << ' '
            << (posting.piece ? posting.piece->value() : 0) << ' '
            << (posting.line ? posting.line->value() : 0) << ' ' << posting.amount << ' '
            << posting.cost.inMinor() << '\n';
}

void print(std::ostream& out, const store::Order& order) {
    out << "order " << order.code << ' ' << static_cast<int>(order.state) << ' ' << order.customerName
        << '\n';
    for (const store::OrderLine& line : order.lines)
        out << "  " << line.id.value() << ' ' << line.extent.count() << ' ' << line.quantity << ' '
            << line.cut << ' ' << line.cancelled << ' ' << line.price.total.inMinor() << '\n';
}

void print(std::ostream& out, const store::Ticket& ticket) {
    out << "ticket " << ticket.code << ' ' << static_cast<int>(ticket.state) << ' ' << ticket.taken.size()
        << '\n';
    for (const store::TicketMounting& mounting : ticket.mountings)
        out << "  " << mounting.id.value() << ' ' << mounting.piece.value() << ' '
            << static_cast<int>(mounting.state) << ' ' << mounting.cuts.size() << '\n';
}

void print(std::ostream& out, const store::StockedBelt& belt) {
    out << "belt " << belt.designation << ' ' << belt.sleeveCost.inMinor() << ' ' << belt.listed.size()
        << '\n';
}

} // namespace

TestShop::TestShop()
    : time{Date{std::chrono::year{2026} / 3 / 2} + std::chrono::hours{9}},
      shop{connection, tables(), store::People{connection}.add("AB", "A. Binder", store::Role::Clerk),
           [this] { return time += std::chrono::minutes{1}; }},
      h8m1200{"H8M", Teeth{150}, Length::millimetres(1200), ""},
      t5x500{"T5", Teeth{100}, Length::millimetres(500), ""}, pj1194{"PJ", std::nullopt,
                                                                     Length::millimetres(1194), ""} {
    for (const belt::Belt& belt : {h8m1200, t5x500, pj1194}) {
        store::StockedBelt kept = keep(shop, belt);
        kept.price = WidthPrice::thousandths(51'000); // 0.51 a millimetre or rib
        store::Catalogue{connection}.change(kept);
    }
}

store::PieceId TestShop::piece(const belt::Belt& belt, Extent extent, cutting::PieceKind kind,
                               std::int64_t cost, int daysOld) {
    Delivery delivery{.belt = belt, .extent = extent, .costEach = Money::minor(cost), .kind = kind};
    delivery.made = dayOf(time) - std::chrono::days{daysOld};
    return receive(shop, {delivery}).front();
}

store::PieceId TestShop::remnant(const belt::Belt& belt, Extent extent, int daysOld) {
    return piece(belt, extent, cutting::PieceKind::Remnant, 0, daysOld);
}

store::PieceId TestShop::ready(const belt::Belt& belt, Extent extent) {
    return piece(belt, extent, cutting::PieceKind::Ready);
}

DraftLine TestShop::line(const belt::Belt& belt, Extent extent, std::int64_t quantity) {
    return {belt, extent, quantity, "as said", std::nullopt, {}};
}

Ordered TestShop::order(const std::vector<DraftLine>& lines) {
    return shop::order(shop, Draft{lines, "", "", std::nullopt, ""});
}

Ordered TestShop::order(const belt::Belt& belt, Extent extent, std::int64_t quantity) {
    return order({line(belt, extent, quantity)});
}

Suggestion TestShop::suggestFor(const belt::Belt& belt, Extent extent, std::int64_t quantity) {
    return suggest(lookAt(shop, belt, {{extent, quantity}}));
}

store::StockPiece TestShop::at(store::PieceId id) { return store::Pieces{connection}.at(id); }
store::Order TestShop::at(store::OrderId id) { return store::Orders{connection}.at(id); }
store::Ticket TestShop::at(store::TicketId id) { return store::Tickets{connection}.at(id); }

store::OrderLine TestShop::lineOf(store::OrderId order) {
    const std::vector<store::OrderLine> lines = at(order).lines;
    REQUIRE(lines.size() == 1);
    return lines.front();
}

store::TicketMounting TestShop::mountingOf(const Ordered& ordered) {
    REQUIRE(ordered.ticket);
    const std::vector<store::TicketMounting> mountings = at(*ordered.ticket).mountings;
    REQUIRE(mountings.size() == 1);
    return mountings.front();
}

store::CutterId TestShop::addCutter(const std::string& name) {
    store::Transaction transaction{connection};
    store::ShopSettings settings = store::Settings{connection}.read();
    settings.cutters.push_back({store::CutterId{0}, {name}});
    store::Settings{connection}.write(settings);
    transaction.commit();
    return store::Settings{connection}.read().cutters.back().id;
}

CutDone TestShop::cutAll(const Ordered& ordered) {
    return recordCut(shop, {mountingOf(ordered).id, {}, {}, ""});
}

std::int64_t TestShop::widthOn(store::Account account) {
    std::int64_t sum = 0;
    for (const store::Ledger::Balance& balance : store::Ledger{connection}.balances())
        if (balance.account == account) sum += balance.amount;
    return sum;
}

std::int64_t TestShop::costOn(store::Account account) {
    std::int64_t sum = 0;
    for (const store::Ledger::Balance& balance : store::Ledger{connection}.balances())
        if (balance.account == account) sum += balance.cost.inMinor();
    return sum;
}

std::string TestShop::everything() {
    std::ostringstream out;
    for (const store::StockedBelt& belt : store::Catalogue{connection}.all())
        print(out, belt);
    for (const store::StockPiece& piece : store::Pieces{connection}.all())
        print(out, piece);
    for (const std::string& place : store::Pieces{connection}.places())
        out << place << '\n';
    for (const store::ArrivedDelivery& delivery : store::Goods{connection}.deliveries(1000))
        out << "delivery " << delivery.id.value() << ' ' << delivery.freight.inMinor() << '\n';
    for (const store::ExpectedDelivery& expected : store::Goods{connection}.expected())
        for (const store::ExpectedLine& line : expected.lines)
            out << "expected " << expected.id.value() << ' ' << line.position << ' ' << line.arrived << '\n';
    for (const store::OrderState state : orderStates)
        for (const store::Order& order : store::Orders{connection}.inState(state))
            print(out, order);
    for (const store::TicketState state : ticketStates)
        for (const store::Ticket& ticket : store::Tickets{connection}.inState(state))
            print(out, ticket);
    const Moment end = time + std::chrono::hours{24};
    for (const store::RecordedMovement& recorded : store::Ledger{connection}.between(Moment{}, end))
        print(out, recorded);
    const store::Counts counts{connection};
    for (const store::Count& count : counts.all())
        out << "count " << count.id.value() << ' ' << count.place << ' ' << count.closed.has_value() << '\n';
    for (const store::Scan& scan : counts.allScans())
        out << "scan " << scan.id.value() << ' ' << scan.book.count() << ' ' << scan.measured.count() << '\n';
    for (const store::Settlement& settled : counts.settlements())
        out << "settlement " << settled.id.value() << ' ' << static_cast<int>(settled.explanation) << '\n';
    return out.str();
}

std::vector<std::string> TestShop::disagreements() {
    std::vector<std::string> found;
    for (const store::Disagreement& each : store::verify(connection).disagreements)
        found.push_back(each.where + ": " + std::to_string(static_cast<int>(each.kind)) + " book " +
                        std::to_string(each.book) + " found " + std::to_string(each.found) + " " +
                        each.detail);
    return found;
}

void checkRefused(TestShop& shop, Refusal::Why why, const std::function<void()>& act) {
    const std::string before = shop.everything();
    try {
        act();
        FAIL("was not refused");
    } catch (const Refusal& refusal) {
        INFO(refusal.detail());
        CHECK(static_cast<int>(refusal.why()) == static_cast<int>(why));
    }
    CHECK(shop.everything() == before);
}

} // namespace riband::shop
