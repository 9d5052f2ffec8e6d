#include "core/shop/reason.h"

#include <algorithm>

namespace riband::shop {

namespace {

using cutting::PieceKind;
using Kind = Reason::Kind;

/// All belts that are cut, as if in one mounting.
struct Need {
    Extent width;  ///< trim, kerfs and belts
    Extent widest; ///< of the belts
};

Need needOf(const cutting::Problem& problem, const cutting::Plan& plan) {
    Need need{problem.rules.trim, Extent::none(problem.rules.unit())};
    for (const cutting::Mounting& mounting : plan.mountings)
        for (const cutting::Cut& cut : mounting.cuts) {
            const Extent belt = problem.lines[cut.line].extent;
            need.width = need.width + (belt + problem.rules.kerf) * cut.count;
            need.widest = std::max(need.widest, belt);
        }
    return need;
}

/// The pieces, but for the plan's own first, that could give everything alone; the smallest first.
std::vector<cutting::Piece> rivalsOf(const cutting::Problem& problem, const cutting::Plan& plan) {
    const Need need = needOf(problem, plan);
    const Extent least = need.width + problem.rules.reserve(need.widest);
    std::vector<cutting::Piece> rivals;
    for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
        const cutting::Piece& piece = problem.pieces[i];
        if (i != plan.mountings.front().piece && piece.kind != PieceKind::Ready && piece.extent >= least)
            rivals.push_back(piece);
    }
    std::sort(rivals.begin(), rivals.end(), [](const cutting::Piece& a, const cutting::Piece& b) {
        return a.extent != b.extent ? a.extent < b.extent : a.born < b.born;
    });
    return rivals;
}

bool isDead(const cutting::Problem& problem, Extent left) { return problem.worth->of(left.count()) == 0; }

bool hasRemnant(const std::vector<cutting::Piece>& pieces) {
    return std::any_of(pieces.begin(), pieces.end(),
                       [](const cutting::Piece& piece) { return piece.kind == PieceKind::Remnant; });
}

Reason besideRival(const cutting::Problem& problem, const cutting::Mounting& mounting,
                   const cutting::Piece& rival) {
    const cutting::Piece& chosen = problem.pieces[mounting.piece];
    const Extent left = mounting.left;
    const Extent rivalLeft = rival.extent - (chosen.extent - left);
    if (chosen.extent < rival.extent) return {Kind::SmallestThatFits, left, ""};
    if (isDead(problem, rivalLeft)) return {Kind::AvoidsDead, rivalLeft, rival.code};
    if (chosen.born < rival.born) return {Kind::Oldest, left, rival.code};
    if (chosen.extent == rival.extent) return {Kind::SmallestThatFits, left, ""};
    return {Kind::KeepsWider, left, rival.code};
}

Reason ofOneMounting(const cutting::Problem& problem, const cutting::Plan& plan) {
    const cutting::Mounting& mounting = plan.mountings.front();
    const std::vector<cutting::Piece> rivals = rivalsOf(problem, plan);
    const bool sleeve = problem.pieces[mounting.piece].kind == PieceKind::Sleeve;
    if (sleeve && !hasRemnant(rivals)) return {Kind::NewSleeve, mounting.left, ""};
    if (isDead(problem, mounting.left)) return {Kind::Finishes, mounting.left, ""};
    if (rivals.empty()) return {Kind::OnlyPiece, mounting.left, ""};
    return besideRival(problem, mounting, rivals.front());
}

/// Several mountings although one would do use up what is of no more use.
Reason ofSeveral(const cutting::Problem& problem, const cutting::Plan& plan) {
    const auto count = static_cast<std::int64_t>(plan.mountings.size());
    const bool oneWouldDo = !rivalsOf(problem, plan).empty();
    return {oneWouldDo ? Kind::Finishes : Kind::SeveralPieces, plan.scrapped, "", count};
}

std::int64_t beltsMissing(const cutting::Plan& plan) {
    std::int64_t belts = 0;
    for (const cutting::Unserved& unserved : plan.unserved)
        belts += unserved.count;
    return belts;
}

} // namespace

Reason reasonOf(const cutting::Problem& problem, const cutting::Plan& plan) {
    const Extent none = Extent::none(problem.rules.unit());
    if (!plan.unserved.empty()) return {Kind::Unserved, none, "", beltsMissing(plan)};
    if (plan.mountings.empty())
        return {Kind::FromShelf, none, "", static_cast<std::int64_t>(plan.taken.size())};
    return plan.mountings.size() > 1 ? ofSeveral(problem, plan) : ofOneMounting(problem, plan);
}

} // namespace riband::shop
