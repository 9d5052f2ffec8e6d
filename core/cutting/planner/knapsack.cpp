#include "core/cutting/planner/knapsack.h"

#include <algorithm>

namespace riband::cutting::planner {

namespace {

/// Both lists in one, without what is dominated.
Choices merged(const Choices& a, const Choices& b) {
    Choices all;
    all.reserve(a.size() + b.size());
    auto i = a.begin();
    auto j = b.begin();
    while (i != a.end() || j != b.end()) {
        const bool first =
            j == b.end() ||
            (i != a.end() && (i->gross < j->gross || (i->gross == j->gross && i->price >= j->price)));
        const Choice& next = first ? *i++ : *j++;
        if (all.empty() || next.price > all.back().price) all.push_back(next);
    }
    return all;
}

} // namespace

Knapsack::Knapsack(const Model& model, const State& state, const std::vector<std::int64_t>& prices,
                   Stopper& stopper)
    : model_{model}, state_{state}, prices_{prices}, stopper_{stopper} {
    for (std::size_t kind = 0; kind < model.kinds.size(); ++kind)
        if (state.free[kind] > 0) room_ = model.kinds[kind].extent - model.trim - model.end;
    oneGroup_ = model.items.empty() || model.items.front().reserve == model.items.back().reserve;
    nodes_.push_back({-1, 0, 0});
    before_.push_back({{0, 0, 0}});
    for (std::size_t item = 0; item < model.items.size() && ok_; ++item)
        add(item);
    if (oneGroup_ && !model.items.empty()) {
        const Choices& all = before_.back();
        groups_ = {{model.items[0].reserve, Choices(all.begin() + 1, all.end())}}; // not the empty choice
    }
}

void Knapsack::add(std::size_t item) {
    const Choices& stems = before_.back();
    if (state_.demand[item] == 0) {
        before_.push_back(Choices(stems));
        return;
    }
    const Choices with = atLeastOne(stems, item);
    if (!oneGroup_) {
        if (groups_.empty() || groups_.back().reserve != model_.items[item].reserve)
            groups_.push_back({model_.items[item].reserve, {}});
        groups_.back().choices = merged(groups_.back().choices, with);
    }
    const auto work = static_cast<std::int64_t>(2 * (stems.size() + with.size()));
    before_.push_back(merged(stems, with));
    ok_ = !stopper_.now(work);
}

Choices Knapsack::plus(const Choices& from, std::size_t item, std::int64_t count) {
    const std::int64_t gross = count * model_.items[item].gross;
    const std::int64_t price = count * prices_[item];
    Choices with;
    with.reserve(from.size());
    for (const Choice& choice : from) {
        if (choice.gross + gross > room_) break;
        with.push_back(
            {choice.gross + gross, choice.price + price, static_cast<std::int32_t>(nodes_.size())});
        nodes_.push_back({choice.node, static_cast<std::uint32_t>(item), count});
    }
    return with;
}

/// One belt, then more in portions of 1, 2, 4 ... and a rest, which make every count up to the demand.
Choices Knapsack::atLeastOne(const Choices& from, std::size_t item) {
    Choices with = plus(from, item, 1);
    std::int64_t more = state_.demand[item] - 1;
    for (std::int64_t portion = 1; more > 0 && !with.empty(); portion *= 2) {
        const std::int64_t count = std::min(portion, more);
        more -= count;
        const Choices wider = plus(with, item, count);
        if (wider.empty()) break;
        with = merged(with, wider);
    }
    return with;
}

std::int64_t Knapsack::bestBefore(std::size_t item, std::int64_t room) const {
    const Choices& choices = before_[item];
    const auto above =
        std::upper_bound(choices.begin(), choices.end(), room,
                         [](std::int64_t r, const Choice& choice) { return r < choice.gross; });
    return std::prev(above)->price; // the empty choice is always there
}

Counts Knapsack::countsOf(std::int32_t node) const {
    Counts counts(model_.items.size(), 0);
    for (; nodes_[static_cast<std::size_t>(node)].parent >= 0;
         node = nodes_[static_cast<std::size_t>(node)].parent) {
        const Node& step = nodes_[static_cast<std::size_t>(node)];
        counts[step.item] += step.count;
    }
    return counts;
}

} // namespace riband::cutting::planner
