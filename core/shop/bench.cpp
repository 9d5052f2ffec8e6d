#include "core/shop/cutting_act.h"
#include "core/shop/kept.h"
#include "core/shop/offers.h"
#include "core/shop/queries.h"

#include "core/store/last_cut.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace riband::shop {

namespace {

/// The belts one by one, in the order of cutting, and where the display would stand if it was zeroed only
/// once, at the trimmed edge: after each belt, with the kerfs before it.
void addStops(BenchMounting& row) {
    Extent blade = Extent::none(row.piece.extent.unit());
    for (const store::TicketCut& cut : row.mounting.cuts)
        for (std::int64_t i = 0; i < cut.count; ++i) {
            if (!row.stops.empty()) blade = blade + row.mounting.kerf;
            blade = blade + cut.extent;
            row.stops.push_back(cut.extent);
            row.cumulative.push_back(blade);
        }
}

/// Reads what the rows of the Bench need once, not once a row.
class BenchReader {
public:
    explicit BenchReader(const Shop& shop)
        : shop_{shop}, settings_{store::Settings{shop.connection}.read()} {}

    void read(const store::Ticket& ticket, std::vector<BenchMounting>& rows, bool plannedOnly) {
        for (const store::TicketMounting& mounting : ticket.mountings)
            if (!plannedOnly || mounting.state == store::MountingState::Planned)
                rows.push_back(rowOf(ticket, mounting));
    }
    const store::ShopSettings& settings() const { return settings_; }

private:
    BenchMounting rowOf(const store::Ticket& ticket, const store::TicketMounting& mounting) {
        const store::StockPiece piece = store::Pieces{shop_.connection}.at(mounting.piece);
        BenchMounting row{.mounting = mounting,
                          .ticket = ticket.code,
                          .order = "",
                          .customer = "",
                          .piece = piece,
                          .belt = beltOf(piece.belt),
                          .stops = {},
                          .cumulative = {},
                          .cutter = settings_.cutterOf(mounting.cutter),
                          .setUp = {},
                          .setUpFault = {},
                          .tolerances = {}};
        nameOrders(ticket, row);
        addStops(row);
        addSetUp(row);
        addTolerances(row, true);
        addTolerances(row, false);
        if (mounting.state == store::MountingState::Planned) expectLeft(row);
        return row;
    }

    const store::StockedBelt& beltOf(store::BeltId id) {
        const auto found = belts_.find(id);
        if (found != belts_.end()) return found->second;
        return belts_.emplace(id, store::Catalogue{shop_.connection}.at(id)).first->second;
    }

    void nameOrders(const store::Ticket& ticket, BenchMounting& row) {
        store::Orders orders{shop_.connection};
        std::set<store::OrderId> ids;
        for (const store::TicketCut& cut : row.mounting.cuts)
            if (cut.line) ids.insert(orders.orderOf(*cut.line));
        if (ids.empty() && ticket.order) ids.insert(*ticket.order);
        for (const store::OrderId id : ids) {
            const store::Order order = orders.at(id);
            row.order += (row.order.empty() ? "" : " ") + order.code;
            if (!order.customerName.empty())
                row.customer += (row.customer.empty() ? "" : ", ") + order.customerName;
        }
    }

    void addSetUp(BenchMounting& row) const {
        const auto found = cutting::setUp(row.belt.belt, row.piece.extent, *shop_.tables, row.cutter.cutter);
        if (found) {
            row.setUp = *found;
            for (const auto remark : notMadeFor(row.cutter.cutter, row.belt)) // what the entry knows of it
                if (std::ranges::find(row.setUp->remarks, remark) == row.setUp->remarks.end())
                    row.setUp->remarks.push_back(remark);
        } else
            row.setUpFault = found.reason();
    }

    void addTolerances(BenchMounting& row, bool ordered) const {
        if (row.belt.unit == Unit::Rib) return;
        for (const store::TicketCut& cut : row.mounting.cuts) {
            if (cut.line.has_value() != ordered || row.toleranceOf(cut.extent)) continue;
            if (const auto found = shop_.tables->widthTolerance(row.belt.belt, cut.extent.width()))
                row.tolerances.push_back({cut.extent, *found});
        }
    }

    static Extent usedBy(const BenchMounting& row) {
        return row.mounting.trim + row.cumulative.back() + row.mounting.kerf;
    }

    /// What is left if this mounting is cut now, whatever was cut of the piece or promised of it since it was
    /// planned; other mountings of the piece need even a rest that no listed width can be cut from.
    void expectLeft(BenchMounting& row) const {
        const Extent used = usedBy(row);
        const cutting::Rules& rules = settings_.rulesFor(used.unit());
        const bool othersWait = row.piece.reserved > used;
        row.mounting.left = row.piece.extent > used ? row.piece.extent - used : Extent::none(used.unit());
        row.mounting.restKept =
            row.mounting.left >= (othersWait ? rules.stub : leastKept(rules, row.belt.listed));
    }

    const Shop& shop_;
    const store::ShopSettings settings_;
    std::map<store::BeltId, store::StockedBelt> belts_;
};

constexpr std::size_t noShaft = static_cast<std::size_t>(-1);

/// Where a mounting's shaft stands in the row of its cutter's shafts.
std::pair<store::CutterId, std::size_t> shaftOf(const BenchMounting& row) {
    return {row.cutter.id, row.setUp ? row.setUp->shaft : noShaft};
}

/// What is on a cutter since its last cut, where it is the last one of the shop.
struct OnCutter {
    store::PieceId piece;
    std::pair<store::CutterId, std::size_t> shaft;
};

std::optional<OnCutter> onCutter(const Shop& shop) {
    const std::optional<store::MountingId> last = store::lastCut(shop.connection);
    if (!last) return std::nullopt;
    for (const BenchMounting& row : mountingsOf(shop, store::Tickets{shop.connection}.ofMounting(*last).id))
        if (row.mounting.id == *last && row.setUp) return OnCutter{row.piece.id, shaftOf(row)};
    return std::nullopt;
}

/// Each shaft is put on once: its mountings lie together, the shaft that is on the cutter first, then that of
/// the longest waiting; on it the piece that is there already. Those that fit none come last. The cutters one
/// after the other in the order of the shop.
void groupByShaft(std::vector<BenchMounting>& rows, const std::vector<store::ShopCutter>& cutters,
                  const std::optional<OnCutter>& on) {
    std::map<store::CutterId, std::size_t> place;
    for (const store::ShopCutter& each : cutters)
        place.emplace(each.id, place.size());
    std::map<std::pair<store::CutterId, std::size_t>, std::size_t> firstOf;
    for (std::size_t i = 0; i < rows.size(); ++i)
        firstOf.try_emplace(shaftOf(rows[i]), rows[i].setUp ? i + 1 : rows.size() + 1);
    if (on) firstOf[on->shaft] = 0;
    const auto orderOf = [&](const BenchMounting& row) {
        return std::tuple{place.at(row.cutter.id), firstOf.at(shaftOf(row)),
                          !on || row.piece.id != on->piece};
    };
    std::stable_sort(rows.begin(), rows.end(),
                     [&](const BenchMounting& a, const BenchMounting& b) { return orderOf(a) < orderOf(b); });
}

} // namespace

const belt::WidthTolerance* BenchMounting::toleranceOf(Extent extent) const {
    for (const Tolerated& each : tolerances)
        if (each.extent == extent) return &each.tolerance;
    return nullptr;
}

std::vector<Extent> BenchMounting::forShelf() const {
    std::vector<Extent> belts;
    for (const store::TicketCut& cut : mounting.cuts)
        if (!cut.line) belts.insert(belts.end(), static_cast<std::size_t>(cut.count), cut.extent);
    return belts;
}

std::vector<BenchMounting> bench(const Shop& shop) {
    BenchReader reader{shop};
    std::vector<BenchMounting> rows;
    for (const store::Ticket& ticket : store::Tickets{shop.connection}.inState(store::TicketState::Open))
        reader.read(ticket, rows, true);
    if (!rows.empty()) groupByShaft(rows, reader.settings().cutters, onCutter(shop));
    return rows;
}

void putOnCutter(const Shop& shop, store::MountingId id, store::CutterId cutter) {
    store::Transaction transaction{shop.connection};
    const CuttingAct act{shop, id};
    const std::vector<store::ShopCutter> cutters = store::Settings{shop.connection}.read().cutters;
    if (std::none_of(cutters.begin(), cutters.end(),
                     [&](const store::ShopCutter& each) { return each.id == cutter; }))
        throw Refusal{Refusal::Why::NoSuchCutter, std::to_string(cutter.value())};
    store::Tickets{shop.connection}.setCutter(act.mounting.id, cutter);
    transaction.commit();
}

std::vector<BenchMounting> mountingsOf(const Shop& shop, store::TicketId ticket) {
    BenchReader reader{shop};
    std::vector<BenchMounting> rows;
    reader.read(store::Tickets{shop.connection}.at(ticket), rows, false);
    return rows;
}

} // namespace riband::shop
