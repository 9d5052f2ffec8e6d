#pragma once

#include "core/cutting/planner/state.h"

namespace riband::cutting::planner {

/// A choice of belts by its width and its price; `node` leads to the belts themselves.
struct Choice {
    std::int64_t gross;
    std::int64_t price;
    std::int32_t node;
};
/// Wider and dearer from one to the next: what is wider and not dearer is never of use, since a mounting
/// never gets cheaper by leaving less.
using Choices = std::vector<Choice>;

/// All choices of belts worth making at given prices, for every piece at once: the bounded knapsack by
/// lists of undominated choices (Nemhauser and Ullmann), items in the order of their width.
class Knapsack {
public:
    /// `prices` of a belt of each item, all positive. False from `ok` if it was stopped.
    Knapsack(const Model& model, const State& state, const std::vector<std::int64_t>& prices,
             Stopper& stopper);

    bool ok() const { return ok_; }
    /// Choices whose widest belt asks for the same reserve. All belts of at least stub - end share one group.
    struct Group {
        std::int64_t reserve;
        Choices choices;
    };
    const std::vector<Group>& groups() const { return groups_; }
    /// The dearest choice of items before `item` that is no wider than `room`.
    std::int64_t bestBefore(std::size_t item, std::int64_t room) const;
    Counts countsOf(std::int32_t node) const;

private:
    struct Node {
        std::int32_t parent;
        std::uint32_t item;
        std::int64_t count;
    };
    Choices plus(const Choices& from, std::size_t item, std::int64_t count);
    Choices atLeastOne(const Choices& from, std::size_t item);
    void add(std::size_t item);

    const Model& model_;
    const State& state_;
    const std::vector<std::int64_t>& prices_;
    Stopper& stopper_;
    std::int64_t room_ = 0; ///< of the widest piece
    bool oneGroup_ = false;
    bool ok_ = true;
    std::vector<Node> nodes_;
    std::vector<Group> groups_;
    std::vector<Choices> before_; ///< choices of the items before each
};

} // namespace riband::cutting::planner
