#include "core/cutting/planner/best_fit.h"

namespace riband::cutting::planner {

namespace {

/// Puts belts one by one; remembers what is mounted and what is still on the rack.
class Filler {
public:
    explicit Filler(const Model& model) : model_{model} {
        for (const Kind& kind : model.kinds)
            free_.push_back(kind.pieces.size());
    }

    /// False if the belt fits nowhere any more.
    bool put(std::size_t item) { return intoMounted(item) || intoNew(item); }
    Loads take() { return std::move(loads_); }

private:
    bool fits(const Load& load, std::size_t item) const {
        // Belts come widest first, so the widest on the load, if any, decides what must stay.
        std::int64_t reserve = model_.items[item].reserve;
        for (std::size_t i = load.counts.size(); i-- > item;)
            if (load.counts[i] > 0) reserve = std::min(reserve, model_.items[i].reserve);
        return load.left - model_.items[item].gross >= reserve;
    }

    bool intoMounted(std::size_t item) {
        Load* tightest = nullptr;
        for (Load& load : loads_)
            if (fits(load, item) && (!tightest || load.left < tightest->left)) tightest = &load;
        if (!tightest) return false;
        ++tightest->counts[item];
        tightest->left -= model_.items[item].gross;
        return true;
    }

    bool intoNew(std::size_t item) {
        for (std::size_t kind = 0; kind < model_.kinds.size(); ++kind) {
            if (free_[kind] == 0) continue;
            Load load = loadOf(model_, kind, Counts(model_.items.size(), 0));
            if (!fits(load, item)) continue;
            --free_[kind];
            ++load.counts[item];
            load.left -= model_.items[item].gross;
            loads_.push_back(std::move(load));
            return true;
        }
        return false;
    }

    const Model& model_;
    std::vector<std::size_t> free_;
    Loads loads_;
};

} // namespace

std::optional<Load> allFrom(const Model& model, std::size_t kind) {
    Counts all;
    for (const Item& item : model.items)
        all.push_back(item.demand);
    Load load = loadOf(model, kind, std::move(all));
    if (!allowed(model, load)) return std::nullopt;
    return load;
}

Loads widestFirst(const Model& model) {
    Filler filler{model};
    for (std::size_t item = model.items.size(); item-- > 0;)
        for (std::int64_t n = 0; n < model.items[item].demand && filler.put(item); ++n) {
        }
    return filler.take();
}

Loads bestFit(const Model& model) {
    for (std::size_t kind = 0; kind < model.kinds.size(); ++kind)
        if (const auto load = allFrom(model, kind)) return {*load};
    return widestFirst(model);
}

} // namespace riband::cutting::planner
