#include "tests/core/shop/random_shop.h"

#include "core/shop/shelf_ticket.h"

namespace riband::shop {

using store::Account;
using store::OrderState;

namespace {

constexpr OrderState living[] = {OrderState::Parked, OrderState::Quoted, OrderState::Open, OrderState::Ready};

} // namespace

void RandomShop::act() {
    const std::string before = shop_.everything();
    try {
        switch (number(0, 25)) {
        case 0:
        case 1:
            return deliver();
        case 2:
        case 3:
        case 4:
            return newOrder();
        case 5:
        case 6:
        case 7:
            return cut();
        case 8:
            return miscut();
        case 9:
            return changeMind();
        case 10:
            return giveUp();
        case 11:
            return collect();
        case 12:
            return throwAway();
        case 13:
            return takeBack();
        case 14:
            return divide();
        case 15:
            return putElsewhere();
        case 16:
            return undoAny();
        case 17:
            return goodsIn();
        case 18:
        case 19:
        case 20:
        case 21:
        case 22:
        case 23:
            return count();
        case 24:
            return fillShelf();
        default:
            return planAgain();
        }
    } catch (const Refusal&) {
        ++refused_;
        CHECK(shop_.everything() == before);
    }
}

std::int64_t RandomShop::number(std::int64_t from, std::int64_t to) {
    return std::uniform_int_distribution<std::int64_t>{from, to}(random_);
}

const belt::Belt& RandomShop::anyBelt() {
    const belt::Belt* belts[] = {&shop_.h8m1200, &shop_.t5x500, &shop_.pj1194};
    return *belts[number(0, 2)];
}

Extent RandomShop::anyWidth(Unit unit) {
    if (oneIn(30)) return Extent::none(unit);
    if (oneIn(30)) return unit == Unit::Rib ? mm(30) : ribs(4);
    if (unit == Unit::Rib) return ribs(number(2, 10));
    return oneIn(4) ? um(number(6'000, 60'000)) : mm(10 * number(1, 5));
}

std::optional<store::Order> RandomShop::anyOrder() {
    std::vector<store::Order> orders;
    for (const OrderState state : living)
        for (const store::Order& order : store::Orders{shop_.connection}.inState(state))
            orders.push_back(order);
    const store::Order* order = any(orders);
    return order ? std::optional{*order} : std::nullopt;
}

void RandomShop::deliver() {
    const belt::Belt& belt = anyBelt();
    const bool ribbed = unitOf(belt) == Unit::Rib;
    const Extent width = ribbed ? ribs(number(20, 60)) : mm(number(80, 400));
    Delivery delivery{.belt = belt,
                      .sleeves = static_cast<int>(number(0, 2)),
                      .extent = oneIn(10) ? anyWidth(unitOf(belt)) : width,
                      .costEach = Money::minor(number(0, 9'999))};
    if (oneIn(4)) delivery.kind = cutting::PieceKind::Remnant;
    if (oneIn(6)) {
        delivery.kind = cutting::PieceKind::Ready;
        delivery.extent = ribbed ? ribs(6) : mm(30);
    }
    receive(shop_.shop, {delivery});
    std::int64_t& bought = bought_[unitOf(belt) == Unit::Rib];
    bought += delivery.extent.count() * delivery.sleeves;
}

void RandomShop::newOrder() {
    Draft draft;
    for (std::int64_t lines = number(1, 3); lines > 0; --lines) {
        const belt::Belt& belt = anyBelt();
        draft.lines.push_back(TestShop::line(belt, anyWidth(unitOf(belt)), number(oneIn(20) ? 0 : 1, 4)));
    }
    if (oneIn(8)) {
        park(shop_.shop, draft);
        return;
    }
    order(shop_.shop, draft);
}

std::optional<BenchMounting> RandomShop::anyMounting() {
    const std::vector<BenchMounting> rows = bench(shop_.shop);
    const BenchMounting* row = any(rows);
    return row ? std::optional{*row} : std::nullopt;
}

Extent RandomShop::measured(Extent planned) {
    const bool ribbed = planned.unit() == Unit::Rib;
    std::int64_t left = planned.count() + (ribbed ? number(-1, 1) : number(-3'000, 3'000));
    if (oneIn(10)) left = planned.count() / 2;
    return Extent::of(planned.unit(), std::max<std::int64_t>(left, 0));
}

void RandomShop::cut() {
    const std::optional<BenchMounting> row = anyMounting();
    if (!row) return newOrder();
    CutRecord record{row->mounting.id};
    if (!oneIn(3)) record.left = measured(row->mounting.left);
    if (oneIn(10)) record.keepRest = false;
    if (oneIn(4)) putOnCutter(shop_.shop, record.mounting, store::CutterId{number(1, 3)});
    if (oneIn(8)) record.forShelf = {{row->stops.front(), 1}};
    voided_ += recordCut(shop_.shop, record).voided.size();
    ++cuts_;
}

void RandomShop::miscut() {
    const std::optional<BenchMounting> row = anyMounting();
    if (!row) return deliver();
    Miscut miscut{row->mounting.id, {}, row->stops.front(), measured(row->mounting.left), "drifted"};
    for (const store::TicketCut& cut : row->mounting.cuts)
        miscut.good.push_back(number(0, cut.count));
    recordMiscut(shop_.shop, miscut);
}

void RandomShop::fillShelf() {
    if (const auto row = oneIn(3) ? anyMounting() : std::nullopt)
        return giveUpForShelf(shop_.shop, row->mounting.id);
    const std::vector<store::StockPiece> pieces = store::Pieces{shop_.connection}.all();
    const store::StockPiece* piece = any(pieces);
    if (!piece) return;
    cutForShelf(shop_.shop, piece->id, anyWidth(piece->extent.unit()), number(0, 3));
    ++forShelf_;
}

void RandomShop::changeMind() {
    const std::optional<store::Order> order = anyOrder();
    if (!order) return;
    const store::OrderLine& line = *any(order->lines);
    const Extent width = oneIn(2) ? line.extent : anyWidth(line.extent.unit());
    change(shop_.shop, line.id, width, number(oneIn(5) ? 0 : 1, 4));
}

void RandomShop::giveUp() {
    const std::optional<store::Order> order = anyOrder();
    if (order) cancel(shop_.shop, order->id);
}

void RandomShop::takeBack() {
    std::vector<store::MountingId> cut;
    for (const store::TicketState state : {store::TicketState::Open, store::TicketState::Cut})
        for (const store::Ticket& ticket : store::Tickets{shop_.connection}.inState(state))
            for (const store::TicketMounting& mounting : ticket.mountings)
                cut.push_back(mounting.id);
    if (!cut.empty()) undoCut(shop_.shop, oneIn(2) ? cut.back() : *any(cut));
}

void RandomShop::collect() {
    const std::optional<store::Order> order = anyOrder();
    if (order) handOver(shop_.shop, order->id);
}

void RandomShop::throwAway() {
    const std::vector<store::StockPiece> pieces = store::Pieces{shop_.connection}.all();
    const store::StockPiece* piece = any(pieces);
    if (!piece) return;
    const Extent all = piece->extent;
    const Extent part = oneIn(2) ? all : Extent::of(all.unit(), number(1, all.count()));
    scrap(shop_.shop, piece->id, part, store::ScrapReason::Damaged, "");
}

void RandomShop::divide() {
    const std::vector<store::StockPiece> pieces = store::Pieces{shop_.connection}.all();
    const store::StockPiece* piece = any(pieces);
    if (!piece) return;
    const Extent all = piece->extent;
    split(shop_.shop, piece->id, Extent::of(all.unit(), number(1, all.count())), "S1");
}

void RandomShop::putElsewhere() {
    const std::vector<store::StockPiece> pieces = store::Pieces{shop_.connection}.all();
    const store::StockPiece* piece = any(pieces);
    if (!piece) return;
    if (oneIn(3)) return undoMove(shop_.shop, piece->id);
    moveAll(shop_.shop,
            {{piece->code, "B" + std::to_string(number(1, 5))}, {oneIn(5) ? "000-0" : piece->code, ""}});
}

void RandomShop::undoAny() {
    const auto all = store::Ledger{shop_.connection}.between(Moment{}, shop_.time + std::chrono::hours{1});
    if (all.empty()) return;
    const store::RecordedMovement mistake = oneIn(2) ? all.back() : *any(all);
    const std::optional<Refusal> why = whyNotUndone(shop_.shop, mistake.id);
    try {
        undo(shop_.shop, mistake.id);
        CHECK_FALSE(why);
    } catch (const Refusal& refusal) {
        REQUIRE(why);
        CHECK(why->why() == refusal.why());
        throw;
    }
    ++undone_;
    const Unit unit = store::Catalogue{shop_.connection}.at(mistake.movement.about().belt).unit;
    for (const store::Posting& posting : mistake.movement.postings())
        if (posting.account == Account::Bought || posting.account == Account::Found)
            bought_[unit == Unit::Rib] += posting.amount;
}

void RandomShop::goodsIn() {
    GoodsIn goods{"Mill Supply", "DN", Money::minor(number(-1, 999)), {}, {}};
    for (std::int64_t lines = number(0, 3); lines > 0; --lines) {
        const belt::Belt& belt = anyBelt();
        const bool ribbed = unitOf(belt) == Unit::Rib;
        goods.lines.push_back({.belt = belt,
                               .sleeves = static_cast<int>(number(1, 3)),
                               .extent = ribbed ? ribs(number(20, 60)) : mm(number(80, 400)),
                               .costEach = Money::minor(number(0, 9'999)),
                               .supplierCode = oneIn(2) ? "4006381333931" : ""});
    }
    receiveGoods(shop_.shop, goods);
    for (const Delivery& line : goods.lines)
        bought_[unitOf(line.belt) == Unit::Rib] += line.extent.count() * line.sleeves;
}

void RandomShop::count() {
    const auto sources = [&] {
        std::map<bool, std::int64_t> sum;
        for (const store::Ledger::Balance& balance : store::Ledger{shop_.connection}.balances())
            if (balance.account == Account::Found)
                sum[store::Catalogue{shop_.connection}.at(balance.belt).unit == Unit::Rib] -= balance.amount;
        return sum;
    };
    auto before = sources();
    const belt::Belt& belt = anyBelt();
    counts_.act(belt, unitOf(belt));
    auto after = sources();
    for (const bool ribbed : {false, true})
        bought_[ribbed] += after[ribbed] - before[ribbed];
}

void RandomShop::planAgain() {
    const std::vector<Missing> rows = missing(shop_.shop);
    if (const Missing* row = any(rows)) {
        planMissing(shop_.shop, row->order);
        return;
    }
    std::vector<store::OrderId> open;
    for (const store::Order& order : store::Orders{shop_.connection}.inState(OrderState::Open))
        if (open.size() < 3) open.push_back(order.id);
    together(shop_.shop, open);
}

} // namespace riband::shop
