#pragma once

#include "core/cutting/plan.h"

/// The inside of the planner; only core/cutting/planner.cpp and this folder include it.
namespace riband::cutting::planner {

/// All belts of one width that must be cut, of whichever lines. `demand` belts.
struct Item {
    std::int64_t width;
    std::int64_t gross;   ///< with its kerf
    std::int64_t reserve; ///< what must stay when it is the widest of a mounting
    std::int64_t demand;
    std::vector<std::size_t> lines; ///< index into Problem::lines
};

/// Pieces of one width and kind: one is as good as another, so the search never tells them apart; the oldest
/// is mounted first.
struct Kind {
    std::int64_t extent;
    bool sleeve;
    std::int64_t worth;
    std::vector<std::size_t> pieces; ///< index into Problem::pieces; older first, then by code
};

/// A problem in bare integers: ready belts taken, equal widths and equal pieces brought together, what fits
/// nowhere left out.
struct Model {
    explicit Model(const Problem& problem);

    const Problem& problem;
    std::int64_t trim, end, stub, mountingCost;
    std::vector<Taken> taken;
    std::vector<Item> items;            ///< narrow first
    std::vector<Kind> kinds;            ///< narrow first
    std::vector<std::int64_t> codeRank; ///< of each piece of the problem among all codes

    std::int64_t worthOf(std::int64_t extent) const { return extent < stub ? 0 : problem.worth->of(extent); }
    /// What is spent by mounting a piece of this kind and leaving `left`.
    std::int64_t spent(const Kind& kind, std::int64_t left) const {
        return kind.worth - worthOf(left) + mountingCost;
    }
    std::int64_t beltsAsked() const;
    std::int64_t widthAsked() const;
};

using Counts = std::vector<std::int64_t>; ///< belts of each item

/// One mounting in the terms of the model.
struct Load {
    std::size_t kind;
    Counts counts;
    std::int64_t left;
};

/// The load of these belts on a piece of this kind; its `left` may break the rules.
Load loadOf(const Model& model, std::size_t kind, Counts counts);
/// Keeps what the widest belt needs.
bool allowed(const Model& model, const Load& load);

using Loads = std::vector<Load>;

/// What makes one plan better than another, in the order of importance.
struct Score {
    std::int64_t unserved = 0; ///< width
    std::int64_t spent = 0;
    std::int64_t sleeves = 0;
    std::int64_t mountings = 0;
    std::int64_t ages = 0;  ///< sum of the days of birth: less is older
    std::int64_t codes = 0; ///< sum of the ranks of the codes
    friend auto operator<=>(const Score&, const Score&) = default;
};
Score scoreOf(const Model& model, const Loads& loads);

/// The plan that does these loads: pieces named, belts given to lines, figures filled in; bound 0, unproven.
Plan planOf(const Model& model, const Loads& loads);

} // namespace riband::cutting::planner
