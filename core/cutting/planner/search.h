#pragma once

#include "core/cutting/planner/branch.h"
#include "core/cutting/planner/master.h"

#include <functional>
#include <unordered_map>

namespace riband::cutting::planner {

/// What a search may do and must beat.
struct Goal {
    Aim aim = Aim::Spent;
    State start;
    std::int64_t under = 0;         ///< only ways that cost less than this count
    std::int64_t grain = 1;         ///< all costs are multiples of it
    std::int64_t nodes = unlimited; ///< states that may be looked at
};

struct Found {
    std::optional<Loads> loads; ///< the best under the goal, if any
    std::int64_t cost = 0;      ///< its cost; else `under`
    std::int64_t bound = 0;     ///< no way costs less than this
    bool complete = false;      ///< the whole tree was looked at: bound is the cost
};

/// Depth-first branch and bound: at each state the Lagrangian bound of what is left to do, then all ways to
/// go on with a widest belt (branch.h), the most promising first. A state reached before at no more cost is
/// not looked at twice.
class Search {
public:
    Search(const Model& model, const Goal& goal, Stopper& stopper);
    Found run(const std::function<void(const Loads&)>& better);

private:
    void look(State& state, std::int64_t spent, const Prices& parents);
    void follow(State& state, std::int64_t spent, const Branch& branch, const Prices& prices);
    bool seen(const State& state, std::int64_t spent);
    void finish(std::int64_t spent);
    void complete(const State& state, std::int64_t spent, const Prices& prices);
    void use(State& rest, std::int64_t& spent, Load load);
    std::int64_t enough(std::int64_t spent) const;

    const Model& model_;
    const Goal& goal_;
    Stopper& stopper_;
    std::function<void(const Loads&)> better_;
    Master master_;
    Loads path_;
    Found found_;
    std::int64_t nodes_ = 0;
    int depth_ = 0;
    std::unordered_map<std::string, std::int64_t> seen_;
};

} // namespace riband::cutting::planner
