#include "app/demo/bulk.h"

#include "core/shop/price.h"
#include "core/shop/spread.h"

#include <algorithm>

namespace riband::app {

using store::Account;
using store::Act;
using store::Posting;

Bulk::Bulk(store::Connection& connection, std::uint64_t seed)
    : connection_{connection}, settings_{store::Settings{connection}.read()},
      people_{store::People{connection}.present()}, dice_{seed} {}

void Bulk::record(const Shelf& shelf, Act act, Moment at, std::vector<Posting> postings) {
    std::optional<store::CutterId> cutter;
    if (act == Act::Cut)
        cutter = (shelf.belt.unit == Unit::Rib ? settings_.cutters.back() : settings_.cutters.front()).id;
    store::Ledger{connection_}.record(
        store::Movement{{act, at, someone(), shelf.belt.id, "", std::nullopt, cutter}, std::move(postings)});
    ++movements_;
}

void Bulk::deliver(Shelf& shelf, Moment at) {
    const Date today = dayOf(at);
    const store::NewPiece piece{.belt = shelf.belt.id,
                                .kind = cutting::PieceKind::Sleeve,
                                .parent = std::nullopt,
                                .place = "L" + std::to_string(1 + dice_.below(40)) + "-" +
                                         std::to_string(1 + dice_.below(10)),
                                .received = today,
                                .made = today - std::chrono::days{20 + dice_.below(300)},
                                .batch = "lot " + std::to_string(1000 + dice_.below(9000))};
    std::vector<Posting> postings;
    while (shelf.pieces.size() < shelf.kept) {
        const auto id = store::Pieces{connection_}.add(piece);
        const std::int64_t width = shelf.belt.newSleeve.count();
        const Money cost = shelf.belt.sleeveCost;
        postings.push_back({Account::Bought, id, {}, -width, -cost, {}});
        postings.push_back({Account::Rack, id, {}, width, cost, {}});
        shelf.pieces.push_back({id, piece.kind, shelf.belt.newSleeve, cost});
    }
    record(shelf, Act::Receive, at, std::move(postings));
}

Extent Bulk::used(const Shelf& shelf, Extent width, std::int64_t quantity) const {
    return rules(shelf).trim + (width + rules(shelf).kerf) * quantity;
}

/// Narrower than this nothing listed can be cut any more.
Extent Bulk::least(const Shelf& shelf) const {
    const Extent narrowest = shelf.belt.listed.front();
    return std::max(rules(shelf).stub, used(shelf, narrowest, 1) + rules(shelf).reserve(narrowest));
}

std::optional<std::size_t> Bulk::smallestFor(const Shelf& shelf, Extent width, std::int64_t quantity) const {
    const Extent needed = used(shelf, width, quantity) + rules(shelf).reserve(width);
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < shelf.pieces.size(); ++i)
        if (shelf.pieces[i].extent >= needed &&
            (!best || shelf.pieces[i].extent < shelf.pieces[*best].extent))
            best = i;
    return best;
}

std::optional<Bulk::Sale> Bulk::saleFrom(Shelf& shelf) {
    if (shelf.belt.listed.empty()) return std::nullopt;
    const Extent width = dice_.of(shelf.belt.listed);
    for (std::int64_t quantity = 1 + static_cast<std::int64_t>(dice_.below(4)); quantity > 0; --quantity)
        if (const auto piece = smallestFor(shelf, width, quantity))
            return Sale{&shelf, *piece, width, quantity};
    return std::nullopt;
}

store::OrderLine Bulk::lineOf(const Sale& sale) const {
    const store::StockedBelt& belt = sale.shelf->belt;
    return {.id = store::LineId{0},
            .position = 0,
            .belt = belt.id,
            .extent = sale.width,
            .quantity = sale.quantity,
            .said = belt.designation,
            .price = shop::priceOf(settings_.prices, belt.price, sale.width, sale.quantity),
            .cut = sale.quantity,
            .cancelled = 0};
}

std::vector<store::LineId> Bulk::order(const std::vector<Sale>& sales, Moment at) {
    store::Order order{.id = store::OrderId{0},
                       .code = "",
                       .state = store::OrderState::HandedOver,
                       .customer = std::nullopt,
                       .customerName = "",
                       .person = someone(),
                       .made = at,
                       .due = std::nullopt,
                       .note = "",
                       .lines = {}};
    for (const Sale& sale : sales)
        order.lines.push_back(lineOf(sale));
    store::Orders orders{connection_};
    std::vector<store::LineId> lines;
    for (const auto& line : orders.at(orders.add(order)).lines)
        lines.push_back(line.id);
    return lines;
}

/// Trim, kerf, belts and rest, with the piece's cost spread over them as the shop's own cut does.
void Bulk::cut(const Sale& sale, store::LineId line, Moment at) {
    Shelf& shelf = *sale.shelf;
    LivePiece& piece = shelf.pieces[sale.piece];
    const std::int64_t trim = rules(shelf).trim.count(), kerf = rules(shelf).kerf.count() * sale.quantity;
    const std::int64_t belts = sale.width.count() * sale.quantity;
    const Extent rest = piece.extent - used(shelf, sale.width, sale.quantity);
    const bool dead = rest < least(shelf);
    const auto cost = shop::spread(piece.cost, {trim, kerf, belts, rest.count()});
    const Money gone = dead ? piece.cost : piece.cost - cost[3];
    const std::int64_t away = dead ? piece.extent.count() : piece.extent.count() - rest.count();
    std::vector<Posting> postings{{Account::Rack, piece.id, {}, -away, -gone, {}},
                                  {Account::Trim, piece.id, {}, trim, cost[0], {}},
                                  {Account::Sold, piece.id, line, belts, cost[2], {}}};
    if (kerf > 0) postings.push_back({Account::Kerf, piece.id, {}, kerf, cost[1], {}});
    if (dead && !rest.isNone()) {
        const bool end = rest <= rules(shelf).end;
        postings.push_back({end ? Account::End : Account::Scrap,
                            piece.id,
                            {},
                            rest.count(),
                            cost[3],
                            end ? std::nullopt : std::optional{store::ScrapReason::Stub}});
    }
    record(shelf, Act::Cut, at, std::move(postings));
    if (piece.kind == cutting::PieceKind::Sleeve) store::Pieces{connection_}.becomeRemnant(piece.id);
    piece = {piece.id, cutting::PieceKind::Remnant, rest, piece.cost - gone};
    if (!dead) return;
    shelf.justLost = shelf.pieces.size() == shelf.kept;
    shelf.pieces.erase(shelf.pieces.begin() + static_cast<std::ptrdiff_t>(sale.piece));
}

bool Bulk::sell(const std::vector<Shelf*>& shelves, Moment at) {
    std::vector<Sale> sales;
    for (Shelf* shelf : shelves)
        if (const auto sale = saleFrom(*shelf)) sales.push_back(*sale);
    if (sales.empty()) return false;
    const auto lines = order(sales, at);
    for (std::size_t i = 0; i < sales.size(); ++i)
        cut(sales[i], lines[i], at);
    return true;
}

void Bulk::trimEdge(Shelf& shelf, Moment at) {
    const auto widest =
        std::max_element(shelf.pieces.begin(), shelf.pieces.end(),
                         [](const LivePiece& a, const LivePiece& b) { return a.extent < b.extent; });
    const Extent strip = rules(shelf).trim;
    const auto cost = shop::spread(widest->cost, {strip.count(), widest->extent.count() - strip.count()});
    record(shelf, Act::Scrap, at,
           {{Account::Rack, widest->id, {}, -strip.count(), -cost[0], {}},
            {Account::Scrap, widest->id, {}, strip.count(), cost[0], store::ScrapReason::Damaged}});
    widest->extent = widest->extent - strip;
    widest->cost = cost[1];
}

} // namespace riband::app
