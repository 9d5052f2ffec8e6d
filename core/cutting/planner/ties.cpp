#include "core/cutting/planner/ties.h"

#include <algorithm>

namespace riband::cutting::planner {

namespace {

/// Puts load `at` on another kind of piece if the plan gets better by it.
bool improve(const Model& model, Loads& loads, Score& score, std::vector<std::size_t>& used, std::size_t at) {
    bool improved = false;
    for (std::size_t kind = 0; kind < model.kinds.size(); ++kind) {
        if (kind == loads[at].kind || used[kind] == model.kinds[kind].pieces.size()) continue;
        Load moved = loadOf(model, kind, loads[at].counts);
        if (!allowed(model, moved)) continue;
        std::swap(loads[at], moved);
        const Score now = scoreOf(model, loads);
        if (now < score) {
            score = now;
            --used[moved.kind];
            ++used[kind];
            improved = true;
        } else {
            std::swap(loads[at], moved);
        }
    }
    return improved;
}

} // namespace

Loads olderPieces(const Model& model, Loads loads) {
    Score score = scoreOf(model, loads);
    std::vector<std::size_t> used(model.kinds.size(), 0);
    for (const Load& load : loads)
        ++used[load.kind];
    constexpr int rounds = 4; // each improves; more than two are hardly ever needed
    for (int round = 0; round < rounds; ++round) {
        bool improved = false;
        for (std::size_t at = 0; at < loads.size(); ++at)
            improved = improve(model, loads, score, used, at) || improved;
        if (!improved) break;
    }
    return loads;
}

} // namespace riband::cutting::planner
