#include "core/shop/chosen_way.h"

#include <algorithm>
#include <set>

namespace riband::shop {

namespace {

using cutting::PieceKind;

std::optional<std::size_t> today(const cutting::Problem& problem, const std::vector<std::string>& codes,
                                 std::size_t then) {
    if (then >= codes.size()) return std::nullopt;
    const auto found = std::find_if(problem.pieces.begin(), problem.pieces.end(),
                                    [&](const cutting::Piece& piece) { return piece.code == codes[then]; });
    if (found == problem.pieces.end()) return std::nullopt;
    return static_cast<std::size_t>(found - problem.pieces.begin());
}

std::int64_t beltsOf(const cutting::Plan& way) {
    auto belts = static_cast<std::int64_t>(way.taken.size());
    for (const cutting::Mounting& mounting : way.mountings)
        for (const cutting::Cut& cut : mounting.cuts)
            belts += cut.count;
    return belts;
}

bool isOfLine(const cutting::Plan& way) {
    const auto ofTaken = [](const cutting::Taken& taken) { return taken.line == 0; };
    const auto ofCut = [](const cutting::Cut& cut) { return cut.line == 0 && cut.count > 0; };
    return std::all_of(way.taken.begin(), way.taken.end(), ofTaken) &&
           std::all_of(way.mountings.begin(), way.mountings.end(), [&](const cutting::Mounting& mounting) {
               return std::all_of(mounting.cuts.begin(), mounting.cuts.end(), ofCut);
           });
}

/// What is left of the piece, or nothing if it can't give that.
std::optional<Extent> leftOf(const cutting::Problem& problem, const cutting::Piece& piece,
                             const cutting::Mounting& mounting) {
    Extent used = problem.rules.trim;
    const Extent belt = problem.lines.front().extent;
    for (const cutting::Cut& cut : mounting.cuts)
        used = used + (belt + problem.rules.kerf) * cut.count;
    if (piece.kind == PieceKind::Ready || used + problem.rules.reserve(belt) > piece.extent)
        return std::nullopt;
    return piece.extent - used;
}

} // namespace

std::optional<cutting::Plan> stillPossible(const cutting::Problem& problem, const cutting::Plan& way,
                                           const std::vector<std::string>& codes) {
    if (!isOfLine(way) || beltsOf(way) != problem.lines.front().quantity) return std::nullopt;
    cutting::Plan plan = way;
    plan.unserved.clear();
    std::set<std::size_t> used;
    for (cutting::Taken& taken : plan.taken) {
        const auto piece = today(problem, codes, taken.piece);
        if (!piece || problem.pieces[*piece].kind != PieceKind::Ready || !used.insert(*piece).second)
            return std::nullopt;
        taken.piece = *piece;
    }
    for (cutting::Mounting& mounting : plan.mountings) {
        const auto piece = today(problem, codes, mounting.piece);
        if (!piece || !used.insert(*piece).second) return std::nullopt;
        const std::optional<Extent> left = leftOf(problem, problem.pieces[*piece], mounting);
        if (!left) return std::nullopt;
        mounting.piece = *piece;
        mounting.left = *left;
    }
    return plan;
}

} // namespace riband::shop
