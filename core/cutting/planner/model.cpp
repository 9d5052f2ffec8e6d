#include "core/cutting/planner/model.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

namespace riband::cutting::planner {

namespace {

/// Indexes of the pieces, older first, then by code.
std::vector<std::size_t> olderFirst(const std::vector<Piece>& pieces) {
    std::vector<std::size_t> order(pieces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return std::tie(pieces[a].born, pieces[a].code) < std::tie(pieces[b].born, pieces[b].code);
    });
    return order;
}

std::vector<std::int64_t> codeRanks(const std::vector<Piece>& pieces) {
    std::vector<std::size_t> order(pieces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return pieces[a].code < pieces[b].code; });
    std::vector<std::int64_t> ranks(pieces.size());
    for (std::size_t rank = 0; rank < order.size(); ++rank)
        ranks[order[rank]] = static_cast<std::int64_t>(rank);
    return ranks;
}

/// Takes ready belts, oldest first, for the lines in their order; what remains of each line is returned.
std::vector<std::int64_t> takeReady(const Problem& problem, const std::vector<std::size_t>& order,
                                    std::vector<Taken>& taken) {
    std::map<std::int64_t, std::vector<std::size_t>> shelf;
    for (const std::size_t i : order)
        if (problem.pieces[i].kind == PieceKind::Ready) shelf[problem.pieces[i].extent.count()].push_back(i);
    std::map<std::int64_t, std::size_t> next;
    std::vector<std::int64_t> remaining;
    for (std::size_t line = 0; line < problem.lines.size(); ++line) {
        const std::int64_t width = problem.lines[line].extent.count();
        std::int64_t quantity = problem.lines[line].quantity;
        const auto& ready = shelf[width];
        for (std::size_t& n = next[width]; quantity > 0 && n < ready.size(); ++n, --quantity)
            taken.push_back({ready[n], line});
        remaining.push_back(quantity);
    }
    return remaining;
}

std::vector<Kind> kindsOf(const Problem& problem, const std::vector<std::size_t>& order) {
    std::map<std::pair<std::int64_t, bool>, std::vector<std::size_t>> groups;
    for (const std::size_t i : order)
        if (problem.pieces[i].kind != PieceKind::Ready)
            groups[{problem.pieces[i].extent.count(), problem.pieces[i].kind == PieceKind::Sleeve}].push_back(
                i);
    std::vector<Kind> kinds;
    for (auto& [key, pieces] : groups)
        kinds.push_back({key.first, key.second, 0, std::move(pieces)});
    return kinds;
}

std::vector<Item> itemsOf(const Problem& problem, const std::vector<std::int64_t>& remaining) {
    std::map<std::int64_t, Item> items;
    for (std::size_t line = 0; line < remaining.size(); ++line) {
        if (remaining[line] == 0) continue;
        const Extent extent = problem.lines[line].extent;
        Item& item = items
                         .try_emplace(extent.count(), Item{extent.count(),
                                                           extent.count() + problem.rules.kerf.count(),
                                                           problem.rules.reserve(extent).count(),
                                                           0,
                                                           {}})
                         .first->second;
        item.demand += remaining[line];
        item.lines.push_back(line);
    }
    std::vector<Item> list;
    for (auto& [width, item] : items)
        list.push_back(std::move(item));
    return list;
}

/// Turns loads into mountings: hands out the pieces of each kind and the belts of each item.
class Writer {
public:
    explicit Writer(const Model& model)
        : model_{model}, nextPiece_(model.kinds.size(), 0), wanted_(model.problem.lines.size(), 0) {
        for (std::size_t line = 0; line < wanted_.size(); ++line)
            wanted_[line] = model.problem.lines[line].quantity;
        for (const Taken& taken : model.taken)
            --wanted_[taken.line];
    }

    Plan write(const Loads& loads) {
        const Unit unit = model_.problem.rules.unit();
        Plan plan{model_.taken,      {}, {}, Extent::none(unit), Extent::none(unit), Extent::none(unit),
                  Extent::none(unit)};
        for (const Taken& taken : plan.taken)
            plan.sold = plan.sold + model_.problem.pieces[taken.piece].extent;
        for (const Load& load : loads)
            add(plan, load);
        for (std::size_t line = 0; line < wanted_.size(); ++line)
            if (wanted_[line] > 0) plan.unserved.push_back({line, wanted_[line], why(line)});
        return plan;
    }

private:
    void add(Plan& plan, const Load& load) {
        const Kind& kind = model_.kinds[load.kind];
        const Unit unit = model_.problem.rules.unit();
        const Extent left = Extent::of(unit, load.left);
        const Rest rest = load.left == 0            ? Rest::Nothing
                          : load.left < model_.stub ? Rest::Scrap
                                                    : Rest::Remnant;
        plan.mountings.push_back({kind.pieces.at(nextPiece_[load.kind]++), cutsOf(plan, load), left, rest});
        plan.trim = plan.trim + model_.problem.rules.trim;
        if (rest == Rest::Scrap) plan.scrapped = plan.scrapped + left;
        plan.newSleeves += kind.sleeve;
        plan.worthSpent += model_.spent(kind, load.left);
    }

    std::vector<Cut> cutsOf(Plan& plan, const Load& load) {
        std::vector<Cut> cuts;
        for (std::size_t item = 0; item < load.counts.size(); ++item) {
            std::int64_t belts = load.counts[item];
            for (const std::size_t line : model_.items[item].lines) {
                const std::int64_t given = std::min(belts, wanted_[line]);
                if (given == 0) continue;
                cuts.push_back({line, given});
                wanted_[line] -= given;
                belts -= given;
                plan.sold = plan.sold + model_.problem.lines[line].extent * given;
                plan.kerf = plan.kerf + model_.problem.rules.kerf * given;
            }
        }
        return cuts;
    }

    Unserved::Why why(std::size_t line) const {
        if (model_.kinds.empty()) return Unserved::Why::NoPiece;
        for (const Item& item : model_.items)
            if (std::count(item.lines.begin(), item.lines.end(), line) > 0) return Unserved::Why::NotEnough;
        return Unserved::Why::TooNarrow;
    }

    const Model& model_;
    std::vector<std::size_t> nextPiece_;
    std::vector<std::int64_t> wanted_;
};

} // namespace

Model::Model(const Problem& theProblem)
    : problem{theProblem}, trim{theProblem.rules.trim.count()}, end{theProblem.rules.end.count()},
      stub{theProblem.rules.stub.count()},
      mountingCost{theProblem.mountingCost.count()}, codeRank{codeRanks(theProblem.pieces)} {
    const std::vector<std::size_t> order = olderFirst(problem.pieces);
    items = itemsOf(problem, takeReady(problem, order, taken));
    kinds = kindsOf(problem, order);
    for (Kind& kind : kinds)
        kind.worth = worthOf(kind.extent);
    const std::int64_t widest = kinds.empty() ? -1 : kinds.back().extent;
    std::erase_if(items, [&](const Item& item) { return widest - trim - item.gross < item.reserve; });
}

std::int64_t Model::beltsAsked() const {
    return std::accumulate(items.begin(), items.end(), std::int64_t{0},
                           [](std::int64_t sum, const Item& item) { return sum + item.demand; });
}

std::int64_t Model::widthAsked() const {
    return std::accumulate(items.begin(), items.end(), std::int64_t{0},
                           [](std::int64_t sum, const Item& item) { return sum + item.demand * item.width; });
}

Load loadOf(const Model& model, std::size_t kind, Counts counts) {
    std::int64_t left = model.kinds[kind].extent - model.trim;
    for (std::size_t i = 0; i < counts.size(); ++i)
        left -= counts[i] * model.items[i].gross;
    return {kind, std::move(counts), left};
}

bool allowed(const Model& model, const Load& load) {
    for (std::size_t i = load.counts.size(); i-- > 0;)
        if (load.counts[i] > 0) return load.left >= model.items[i].reserve;
    return false; // nobody mounts a piece for nothing
}

Score scoreOf(const Model& model, const Loads& loads) {
    Score score;
    score.unserved = model.widthAsked();
    std::vector<std::size_t> next(model.kinds.size(), 0);
    for (const Load& load : loads) {
        const Kind& kind = model.kinds[load.kind];
        const std::size_t piece = kind.pieces.at(next[load.kind]++);
        for (std::size_t i = 0; i < load.counts.size(); ++i)
            score.unserved -= load.counts[i] * model.items[i].width;
        score.spent += model.spent(kind, load.left);
        score.sleeves += kind.sleeve;
        score.ages += model.problem.pieces[piece].born.time_since_epoch().count();
        score.codes += model.codeRank[piece];
    }
    score.mountings = static_cast<std::int64_t>(loads.size());
    return score;
}

Plan planOf(const Model& model, const Loads& loads) { return Writer{model}.write(loads); }

} // namespace riband::cutting::planner
