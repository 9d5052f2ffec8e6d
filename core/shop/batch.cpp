#include "core/shop/batch.h"

#include "core/cutting/setup.h"
#include "core/shop/outlook.h"

#include <algorithm>
#include <set>

namespace riband::shop {

namespace {

/// What waits of one belt.
struct Waiting {
    std::set<store::MountingId> mountings;
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
        const store::StockPiece piece = store::Pieces{shop_.connection}.at(mounting.piece);
        const auto [at, isNew] = byBelt_.try_emplace(piece.belt);
        if (isNew) order_.push_back(piece.belt);
        Waiting& waiting = at->second;
        waiting.widest = isNew ? piece.extent : std::max(waiting.widest, piece.extent);
        waiting.mountings.insert(mounting.id);
        for (const store::TicketCut& cut : mounting.cuts) {
            if (!cut.line) continue;
            waiting.belts[*cut.line] += cut.count;
            const store::OrderId order = store::Orders{shop_.connection}.orderOf(*cut.line);
            if (std::find(waiting.orders.begin(), waiting.orders.end(), order) == waiting.orders.end())
                waiting.orders.push_back(order);
        }
    }

    Promises others(const std::set<store::MountingId>& mountings) const {
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
        const auto setUp = cutting::setUp(belt.belt, waiting.widest, *shop_.tables, settings_.cutter);
        std::string codes;
        for (const store::OrderId order : waiting.orders)
            codes += (codes.empty() ? "" : " ") + store::Orders{shop_.connection}.at(order).code;
        return {waiting.orders, codes, setUp ? std::optional{setUp->shaft} : std::nullopt,
                static_cast<std::int64_t>(waiting.mountings.size()),
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
    std::map<std::optional<std::size_t>, std::size_t> firstOf;
    for (std::size_t i = 0; i < all.size(); ++i)
        firstOf.try_emplace(all[i].shaft, i);
    std::stable_sort(all.begin(), all.end(), [&](const Batch& a, const Batch& b) {
        return firstOf.at(a.shaft) < firstOf.at(b.shaft);
    });
    return all;
}

std::optional<Joint> joint(const Batch& batch, const cutting::Limits& limits) {
    const cutting::Plan plan = suggest(batch.outlook, limits).best.plan;
    const auto mountings = static_cast<std::int64_t>(plan.mountings.size());
    if (!plan.unserved.empty() || mountings >= batch.mountings) return std::nullopt;
    return Joint{mountings, plan.newSleeves,
                 batch.outlook.problem.rules.trim * (batch.mountings - mountings)};
}

} // namespace riband::shop
