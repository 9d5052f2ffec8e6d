#include "core/shop/whose.h"

#include "core/shop/standing.h"

#include <algorithm>

namespace riband::shop {

namespace {

/// Reads each order once.
class WhoseReader {
public:
    explicit WhoseReader(const Shop& shop) : shop_{shop} {}

    MountingFor read(const BenchMounting& mounting) {
        MountingFor whose;
        for (const store::TicketCut& cut : mounting.mounting.cuts)
            addCut(cut, whose);
        if (mounting.mounting.state == store::MountingState::Planned) nameOthers(mounting, whose);
        return whose;
    }

private:
    void addCut(const store::TicketCut& cut, MountingFor& whose) {
        if (!cut.line) {
            whose.cuts.push_back({"", "", 0});
            return;
        }
        const store::Order& order = orderOf(*cut.line);
        whose.cuts.push_back({order.code, order.customerName, lineOf(order, *cut.line).position});
        if (order.due && (!whose.due || *order.due < *whose.due)) whose.due = order.due;
    }

    const store::Order& orderOf(store::LineId line) {
        const store::Orders orders{shop_.connection};
        const store::OrderId id = orders.orderOf(line);
        const auto found = orders_.find(id);
        return found != orders_.end() ? found->second : orders_.emplace(id, orders.at(id)).first->second;
    }

    void nameOthers(const BenchMounting& mounting, MountingFor& whose) {
        const store::TicketMounting& own = mounting.mounting;
        const Extent used = own.trim + mounting.cumulative.back() + own.kerf;
        if (mounting.piece.reserved <= used) return; // nothing of it is promised but this
        if (!promises_) promises_ = Promises::read(shop_, store::Settings{shop_.connection}.read());
        for (const Promise& promise : promises_->on(mounting.piece.id))
            if (promise.mounting != own.id) whose.others += (whose.others.empty() ? "" : " ") + promise.code;
    }

    const Shop& shop_;
    std::map<store::OrderId, store::Order> orders_;
    std::optional<Promises> promises_; ///< read when the first piece is promised twice
};

} // namespace

bool MountingFor::isJoint() const {
    std::set<std::string> orders;
    for (const CutFor& each : cuts)
        if (!each.order.empty()) orders.insert(each.order);
    return orders.size() > 1;
}

bool MountingFor::isFor(const std::string& order) const {
    return std::any_of(cuts.begin(), cuts.end(), [&](const CutFor& each) { return each.order == order; });
}

std::vector<MountingFor> whoseAre(const Shop& shop, const std::vector<BenchMounting>& mountings) {
    WhoseReader reader{shop};
    std::vector<MountingFor> all;
    for (const BenchMounting& mounting : mountings)
        all.push_back(reader.read(mounting));
    return all;
}

} // namespace riband::shop
