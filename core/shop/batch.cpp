#include "core/shop/batch.h"

#include "core/cutting/setup.h"
#include "core/shop/outlook.h"
#include "core/shop/shelf_fill.h"
#include "core/shop/standing.h"
#include "core/shop/suggest_together.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace riband::shop {

namespace {

/// What waits of one belt.
struct Waiting {
    std::vector<store::TicketMounting> mountings;
    std::vector<store::OrderId> orders;
    std::map<store::LineId, std::int64_t> belts;
    Extent widest = Extent::none(Unit::Micrometre); ///< of the mounted pieces
};

class Collector {
public:
    explicit Collector(const Shop& shop)
        : shop_{shop}, settings_{store::Settings{shop.connection}.read()}, promises_{Promises::read(
                                                                               shop, settings_)} {
        for (const store::Ticket& ticket : store::Tickets{shop.connection}.inState(store::TicketState::Open))
            for (const store::TicketMounting& mounting : ticket.mountings)
                if (mounting.state == store::MountingState::Planned) add(mounting);
    }

    std::vector<Batch> batches() const {
        std::vector<Batch> all;
        for (const store::BeltId belt : order_)
            if (const Waiting& waiting = byBelt_.at(belt); waiting.mountings.size() > 1)
                all.push_back(batchOf(belt, waiting));
        return all;
    }

private:
    void add(const store::TicketMounting& mounting) {
        if (mounting.onlyForShelf())
            return; // no customer waits for it: it gives way, it is not planned again
        const store::StockPiece piece = store::Pieces{shop_.connection}.at(mounting.piece);
        const auto [at, isNew] = byBelt_.try_emplace(piece.belt);
        if (isNew) order_.push_back(piece.belt);
        Waiting& waiting = at->second;
        waiting.widest = isNew ? piece.extent : std::max(waiting.widest, piece.extent);
        waiting.mountings.push_back(mounting);
        for (const store::TicketCut& cut : mounting.cuts) {
            if (!cut.line) continue;
            waiting.belts[*cut.line] += cut.count;
            const store::OrderId order = store::Orders{shop_.connection}.orderOf(*cut.line);
            if (std::find(waiting.orders.begin(), waiting.orders.end(), order) == waiting.orders.end())
                waiting.orders.push_back(order);
        }
    }

    Promises others(const std::vector<store::TicketMounting>& planned) const {
        std::set<store::MountingId> mountings;
        for (const store::TicketMounting& mounting : planned)
            mountings.insert(mounting.id);
        Promises others = Promises::none();
        for (const auto& [piece, onPiece] : promises_.all())
            for (const Promise& promise : onPiece)
                if (!mountings.contains(promise.mounting)) others.add(promise);
        return others;
    }

    std::vector<cutting::Line> linesOf(const Waiting& waiting) const {
        std::vector<cutting::Line> lines;
        store::Orders orders{shop_.connection};
        for (const auto& [id, count] : waiting.belts)
            for (const store::OrderLine& line : orders.at(orders.orderOf(id)).lines)
                if (line.id == id) lines.push_back({std::to_string(id.value()), line.extent, count});
        return lines;
    }

    Batch batchOf(store::BeltId id, const Waiting& waiting) const {
        const store::StockedBelt belt = store::Catalogue{shop_.connection}.at(id);
        std::set<store::CutterId> planned;
        for (const store::TicketMounting& mounting : waiting.mountings)
            planned.insert(mounting.cutter);
        const store::ShopCutter& cutter = settings_.cutterOf(commonOf(planned));
        const auto setUp = cutting::setUp(belt.belt, waiting.widest, *shop_.tables, cutter.cutter);
        std::string codes;
        for (const store::OrderId order : waiting.orders)
            codes += (codes.empty() ? "" : " ") + store::Orders{shop_.connection}.at(order).code;
        return {waiting.orders,
                codes,
                cutter,
                setUp ? std::optional{setUp->shaft} : std::nullopt,
                static_cast<std::int64_t>(waiting.mountings.size()),
                waiting.mountings,
                outlookOf(shop_, belt, settings_, store::Pieces{shop_.connection}.ofBelt(id),
                          others(waiting.mountings), linesOf(waiting))};
    }

    const Shop& shop_;
    const store::ShopSettings settings_;
    const Promises promises_;
    std::map<store::BeltId, Waiting> byBelt_;
    std::vector<store::BeltId> order_; ///< the longest waiting first
};

} // namespace

std::vector<Batch> batches(const Shop& shop) {
    std::vector<Batch> all = Collector{shop}.batches();
    const auto shaftOf = [](const Batch& batch) { return std::pair{batch.cutter.id, batch.shaft}; };
    std::map<std::pair<store::CutterId, std::optional<std::size_t>>, std::size_t> firstOf;
    for (std::size_t i = 0; i < all.size(); ++i)
        firstOf.try_emplace(shaftOf(all[i]), i);
    std::stable_sort(all.begin(), all.end(), [&](const Batch& a, const Batch& b) {
        return firstOf.at(shaftOf(a)) < firstOf.at(shaftOf(b));
    });
    return all;
}

namespace {

/// The planned mountings as one way: of those on one piece the last rest counts.
class PlannedNow {
public:
    explicit PlannedNow(const Batch& batch)
        : batch_{batch}, none_{Extent::none(batch.outlook.belt.unit)},
          way_{{{}, {}, {}, none_, none_, none_, none_}, {}} {
        for (const store::TicketMounting& mounting : batch.planned)
            add(mounting);
    }

    double cost(const Future& future) {
        priceWay(batch_.outlook, future.table, way_);
        return way_.cost + again_ * static_cast<double>(future.table.mounting);
    }

private:
    void add(const store::TicketMounting& mounting) {
        const auto& pieces = batch_.outlook.pieces;
        const auto piece = std::find_if(pieces.begin(), pieces.end(),
                                        [&](const auto& each) { return each.id == mounting.piece; });
        if (piece == pieces.end()) return;
        const std::size_t number = on(static_cast<std::size_t>(piece - pieces.begin()));
        Extent& left = way_.plan.mountings[number].left;
        left = left - mounting.trim;
        for (const store::TicketCut& cut : mounting.cuts)
            if (cut.line)
                left = left - (cut.extent + mounting.kerf) * cut.count;
            else
                way_.forShelf[number].insert(way_.forShelf[number].end(), static_cast<std::size_t>(cut.count),
                                             cut.extent);
    }

    std::size_t on(std::size_t piece) {
        auto& mountings = way_.plan.mountings;
        for (std::size_t i = 0; i < mountings.size(); ++i)
            if (mountings[i].piece == piece) {
                ++again_;
                return i;
            }
        mountings.push_back({piece, {}, batch_.outlook.problem.pieces[piece].extent, cutting::Rest::Remnant});
        way_.forShelf.emplace_back();
        return mountings.size() - 1;
    }

    const Batch& batch_;
    Extent none_;
    Way way_;
    int again_ = 0; ///< mountings of a piece that is on the cutter already
};

/// To a tenth of a millimetre, or a rib; an expectation is no finer. Nothing without a table.
std::optional<std::int64_t> savedBy(const Batch& batch, const Suggestion& suggestion) {
    const std::optional<Future> future = futureOf(batch.outlook.past);
    if (!future || future->fault != WorthFault::None) return std::nullopt;
    const double saved = PlannedNow{batch}.cost(*future) - suggestion.best.cost;
    const double step = batch.outlook.belt.unit == Unit::Micrometre ? 100 : 1;
    return std::llround(saved / step) * static_cast<std::int64_t>(step);
}

} // namespace

std::optional<Joint> joint(const Batch& batch, const cutting::Limits& limits, ForShelf shelf) {
    Suggestion suggestion = suggestTogether(batch.outlook, limits);
    if (shelf == ForShelf::None) declineShelf(batch.outlook, suggestion.best);
    const cutting::Plan& plan = suggestion.best.plan;
    const auto mountings = static_cast<std::int64_t>(plan.mountings.size());
    if (!plan.unserved.empty() || mountings >= batch.mountings) return std::nullopt;
    Joint joint{mountings, plan.newSleeves, batch.outlook.problem.rules.trim * (batch.mountings - mountings)};
    if (const auto saved = savedBy(batch, suggestion)) {
        if (*saved < 0) return std::nullopt;
        joint.width = Extent::of(batch.outlook.belt.unit, *saved);
    }
    for (const std::vector<Extent>& belts : suggestion.best.forShelf)
        for (const Extent belt : belts)
            ++joint.forShelf[belt];
    return joint;
}

} // namespace riband::shop
